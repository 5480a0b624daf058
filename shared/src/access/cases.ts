import { type Access, buyer, dealer, inspector, operator } from "./grants.ts";

export const caseAccess = {
  "cases.list": {
    method: "GET",
    path: "/cases",
    who: [buyer("own"), dealer("own"), inspector("party"), operator("any")],
    scope: "read",
  },
  // An operator has states and counts, and reads contents only by opening a complaint.
  "cases.get": {
    method: "GET",
    path: "/cases/:id",
    who: [buyer("own"), dealer("party"), inspector("party")],
    scope: "read",
  },
  "cases.ofPart": {
    method: "GET",
    path: "/case-parts/:id/cases",
    who: [buyer("own"), dealer("party"), inspector("party")],
    scope: "read",
  },
  "cases.evidence": {
    method: "GET",
    path: "/cases/:id/evidence",
    who: [buyer("own"), dealer("party"), inspector("party")],
    scope: "read",
  },
  "cases.letDealerFirst": {
    method: "PUT",
    path: "/cases/:id/dealer-first",
    who: [buyer("own")],
    once: "content",
  },
} as const satisfies Readonly<Record<string, Access>>;
