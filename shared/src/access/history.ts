import { type Access, inspector } from "./grants.ts";

export const historyAccess = {
  "firmHistory.get": {
    method: "GET",
    path: "/organizations/:id/history",
    who: [inspector("own")],
    scope: "read",
  },
} as const satisfies Readonly<Record<string, Access>>;
