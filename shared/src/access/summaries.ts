import { type Access, buyer, dealer, inspector } from "./grants.ts";

export const summaryAccess = {
  "costTable.get": {
    method: "GET",
    path: "/cost-table",
    who: [buyer("own"), inspector("own")],
    scope: "read",
  },
  "costTable.history": {
    method: "GET",
    path: "/cost-table/history",
    who: [buyer("own"), inspector("own")],
    scope: "read",
  },
  "costTable.offered": { method: "GET", path: "/cost-table/offered", who: [buyer("own")], scope: "read" },
  "costTable.put": {
    method: "PUT",
    path: "/cost-table",
    who: [buyer("own"), inspector("own")],
    once: "content",
    ifMatch: true,
  },

  "summaries.create": {
    method: "POST",
    path: "/comparisons/:id/summaries",
    who: [buyer("party")],
    once: "key",
  },
  "summaries.list": { method: "GET", path: "/summaries", who: [buyer("own")], scope: "read" },
  "summaries.get": { method: "GET", path: "/summaries/:id", who: [buyer("own")], scope: "read" },
  "summaries.document": {
    method: "GET",
    path: "/summaries/:id/document",
    who: [buyer("own")],
    scope: "read",
  },
  "summaries.paper": {
    method: "GET",
    path: "/summaries/:id/summary.pdf",
    who: [buyer("own")],
    scope: "read",
  },
  "summaries.draft": {
    method: "PUT",
    path: "/summaries/:id/draft",
    who: [buyer("own")],
    once: "content",
    ifMatch: true,
  },
  "summaries.decide": { method: "POST", path: "/summaries/:id/decision", who: [buyer("own")], once: "key" },

  "decisions.list": { method: "GET", path: "/decisions", who: [buyer("own"), dealer("own")], scope: "read" },
  "decisions.get": {
    method: "GET",
    path: "/decisions/:id",
    who: [buyer("own"), dealer("own")],
    scope: "read",
  },
  "decisions.answer": {
    method: "POST",
    path: "/decisions/:id/answer",
    who: [dealer("own")],
    once: "key",
    ifMatch: true,
  },
  "decisions.reply": {
    method: "POST",
    path: "/decisions/:id/reply",
    who: [buyer("own")],
    once: "key",
    ifMatch: true,
  },
} as const satisfies Readonly<Record<string, Access>>;
