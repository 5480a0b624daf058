import { type Access, anyone, buyer, dealer, inspector, operator } from "./grants.ts";

export const chainAccess = {
  // Whoever holds a receipt must be able to check it, with an account or without.
  "recordKeys.list": { method: "GET", path: "/record/keys", public: true, who: [] },
  "receipts.get": { method: "GET", path: "/receipts/:id", who: [anyone("may-see")], scope: "read" },
  "exports.get": {
    method: "GET",
    path: "/organizations/:id/export",
    who: [dealer("admin"), inspector("admin"), buyer("admin"), operator("admin")],
  },
} as const satisfies Readonly<Record<string, Access>>;
