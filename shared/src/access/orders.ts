import { type Access, buyer, inspector } from "./grants.ts";

export const orderAccess = {
  "orders.create": {
    method: "POST",
    path: "/vehicles/:id/orders",
    who: [buyer("may-see")],
    scope: "orders",
    once: "key",
  },
  "orders.list": { method: "GET", path: "/orders", who: [buyer("party"), inspector("party")], scope: "read" },
  "orders.get": {
    method: "GET",
    path: "/orders/:id",
    who: [buyer("party"), inspector("party")],
    scope: "read",
  },
  "orders.accept": {
    method: "POST",
    path: "/orders/:id/acceptance",
    who: [inspector("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "orders.decline": {
    method: "POST",
    path: "/orders/:id/refusal",
    who: [inspector("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "orders.cancel": {
    method: "POST",
    path: "/orders/:id/cancellation",
    who: [buyer("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
} as const satisfies Readonly<Record<string, Access>>;
