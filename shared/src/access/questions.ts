import { type Access, buyer, dealer } from "./grants.ts";

export const questionAccess = {
  "questions.create": {
    method: "POST",
    path: "/vehicles/:id/questions",
    who: [buyer("may-see")],
    scope: "orders",
    once: "key",
  },
  "questions.list": { method: "GET", path: "/questions", who: [buyer("own"), dealer("own")], scope: "read" },
  "questions.get": {
    method: "GET",
    path: "/questions/:id",
    who: [buyer("own"), dealer("own")],
    scope: "read",
  },
  "questions.change": {
    method: "PATCH",
    path: "/questions/:id",
    who: [buyer("own")],
    scope: "orders",
    ifMatch: true,
  },
  "questions.answer": {
    method: "POST",
    path: "/questions/:id/answer",
    who: [dealer("own")],
    scope: "reports",
    once: "key",
    ifMatch: true,
  },
} as const satisfies Readonly<Record<string, Access>>;
