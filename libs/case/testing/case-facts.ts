import type { CaseFacts, CaseVisit } from "../src/case-of/index.ts";

/** A case in which nothing has happened yet, as the buyer knows it. */
export const facts = (more: Partial<CaseFacts> = {}): CaseFacts => ({
  by: "buyer",
  vehicle: "car",
  listed: true,
  briefed: false,
  questions: { drafted: null, asked: null, answered: null, published: null },
  visits: [],
  comparison: null,
  releases: { open: [], ended: 0 },
  summary: null,
  decision: null,
  handOver: null,
  ...more,
});

export const visit = (state: CaseVisit["state"], more: Partial<CaseVisit> = {}): CaseVisit => ({
  state,
  appointment: state === "asked-for" || state === "taken-on" ? null : "visit",
  order: "order",
  deadline: null,
  start: state === "asked-for" || state === "taken-on" ? null : "2027-05-04T14:00:00Z",
  draft: null,
  proposed: false,
  ...more,
});

/** Lines being settled: so many in a state. */
export const settling = (
  state: CaseFacts["releases"]["open"][number]["state"],
  count = 1,
  until: string | null = null,
): CaseFacts["releases"] => ({ open: [{ state, count, until }], ended: 0 });

/** A bought car with its whole list before money moves answered; who carries it stands in a state. */
export const carried = (
  state: NonNullable<NonNullable<CaseFacts["handOver"]>["carried"]>["state"],
  more: { readonly differs?: boolean; readonly until?: string } = {},
): CaseFacts["handOver"] => ({
  case: "case",
  unanswered: 0,
  carried: { id: "carried", state, until: null, differs: false, ...more },
});
