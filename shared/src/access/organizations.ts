import { type Access, anyone, buyer, dealer, inspector, operator } from "./grants.ts";

export const organizationAccess = {
  "organizations.list": { method: "GET", path: "/organizations", who: [anyone("own")], scope: "read" },
  "organizations.create": { method: "POST", path: "/organizations", who: [operator("any")], once: "key" },
  "organizations.members": {
    method: "GET",
    path: "/organizations/:id/members",
    who: [dealer("own"), inspector("own"), buyer("own"), operator("any")],
    scope: "read",
  },
  // An administrator changes others; anybody may leave. The last administrator stays.
  "inspectors.list": {
    method: "GET",
    path: "/inspectors",
    who: [buyer("any"), operator("any")],
    scope: "read",
  },
} as const satisfies Readonly<Record<string, Access>>;
