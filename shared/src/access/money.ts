import { type Access, buyer } from "./grants.ts";

/** What a case comes to in money is its buyer's alone. */
export const moneyAccess = {
  "lookFirst.get": {
    method: "GET",
    path: "/vehicles/:id/look-first",
    who: [buyer("may-see")],
    scope: "read",
  },
  "landedCost.get": {
    method: "GET",
    path: "/cases/:id/landed-cost",
    who: [buyer("own")],
    scope: "read",
  },
  "landedCost.put": {
    method: "PUT",
    path: "/cases/:id/landed-cost",
    who: [buyer("own")],
    once: "content",
    ifMatch: true,
  },
  "landedCost.history": {
    method: "GET",
    path: "/cases/:id/landed-cost/history",
    who: [buyer("own")],
    scope: "read",
  },
  "beforeMoney.get": {
    method: "GET",
    path: "/cases/:id/before-money",
    who: [buyer("own")],
    scope: "read",
  },
  "beforeMoney.put": {
    method: "PUT",
    path: "/cases/:id/before-money",
    who: [buyer("own")],
    once: "content",
    ifMatch: true,
  },
  "transportRates.get": { method: "GET", path: "/transport-rates", who: [buyer("own")], scope: "read" },
  "transportRates.put": {
    method: "PUT",
    path: "/transport-rates",
    who: [buyer("own")],
    once: "content",
    ifMatch: true,
  },
} as const satisfies Readonly<Record<string, Access>>;
