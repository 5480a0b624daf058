import { type Access, buyer, dealer, inspector } from "./grants.ts";

export const comparisonAccess = {
  "comparisons.create": {
    method: "POST",
    path: "/vehicles/:id/comparisons",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "reports",
    once: "key",
  },
  "comparisons.list": {
    method: "GET",
    path: "/comparisons",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "read",
  },
  "comparisons.get": {
    method: "GET",
    path: "/comparisons/:id",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "read",
  },
  "comparisons.document": {
    method: "GET",
    path: "/comparisons/:id/document",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "read",
  },
  "comparisons.answer": {
    method: "GET",
    path: "/comparisons/:id/answer",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "read",
  },
  "comparisons.paper": {
    method: "GET",
    path: "/comparisons/:id/answer.pdf",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "read",
  },
  "comparisons.cost": {
    method: "GET",
    path: "/comparisons/:id/cost",
    who: [buyer("party")],
    scope: "read",
  },
} as const satisfies Readonly<Record<string, Access>>;
