import { type Access, anyone, dealer } from "./grants.ts";

export const vehicleAccess = {
  "vehicles.list": { method: "GET", path: "/vehicles", who: [anyone("may-see")], scope: "read" },
  "vehicles.create": {
    method: "POST",
    path: "/vehicles",
    who: [dealer("own")],
    scope: "vehicles",
    once: "key",
  },
  "vehicles.get": { method: "GET", path: "/vehicles/:id", who: [anyone("may-see")], scope: "read" },
  "vehicles.change": {
    method: "PATCH",
    path: "/vehicles/:id",
    who: [dealer("own")],
    scope: "vehicles",
    ifMatch: true,
  },
} as const satisfies Readonly<Record<string, Access>>;
