import { type Access, dealer, inspector } from "./grants.ts";

export const handbookAccess = {
  "firmHandbook.get": {
    method: "GET",
    path: "/organizations/:id/handbook",
    who: [dealer("own"), inspector("own")],
    scope: "read",
  },
  "firmHandbook.put": {
    method: "PUT",
    path: "/organizations/:id/handbook",
    who: [dealer("admin"), inspector("admin")],
    once: "content",
    ifMatch: true,
  },
} as const satisfies Readonly<Record<string, Access>>;
