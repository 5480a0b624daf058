import { type Access, anyone, dealer } from "./grants.ts";

export const siteAccess = {
  "sites.create": { method: "POST", path: "/sites", who: [dealer("own")], scope: "vehicles", once: "key" },
  "sites.list": { method: "GET", path: "/sites", who: [dealer("own")], scope: "read" },
  "sites.get": { method: "GET", path: "/sites/:id", who: [dealer("own")], scope: "read" },
  "sites.change": {
    method: "PATCH",
    path: "/sites/:id",
    who: [dealer("own")],
    scope: "vehicles",
    ifMatch: true,
  },
  "sites.days": { method: "GET", path: "/sites/:id/days", who: [dealer("own")], scope: "read" },
  "carPlace.get": { method: "GET", path: "/vehicles/:id/place", who: [anyone("may-see")], scope: "read" },
  "carPlace.put": {
    method: "PUT",
    path: "/vehicles/:id/place",
    who: [dealer("own")],
    scope: "vehicles",
    once: "content",
  },
} as const satisfies Readonly<Record<string, Access>>;
