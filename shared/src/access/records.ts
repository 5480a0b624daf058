import { type Access, buyer, dealer, operator } from "./grants.ts";

export const recordAccess = {
  "dealerRecords.get": {
    method: "GET",
    path: "/organizations/:id/record",
    // Not for inspectors: what others found of a dealer is not to sway what is found now.
    who: [dealer("any"), buyer("any"), operator("any")],
    scope: "read",
  },
} as const satisfies Readonly<Record<string, Access>>;
