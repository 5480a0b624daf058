import { type Access, dealer, inspector } from "./grants.ts";

export const instrumentAccess = {
  "firmInstruments.get": {
    method: "GET",
    path: "/organizations/:id/instruments",
    who: [dealer("own"), inspector("own")],
    scope: "read",
  },
  "firmInstruments.put": {
    method: "PUT",
    path: "/organizations/:id/instruments",
    who: [dealer("admin"), inspector("admin")],
    once: "content",
    ifMatch: true,
  },
} as const satisfies Readonly<Record<string, Access>>;
