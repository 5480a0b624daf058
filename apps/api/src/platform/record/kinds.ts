/** What a record tells of, in two words each: the thing, and what became of it. Each stands in `docs/record.md`. */
export const recordKinds = [
  "report.sealed",
  "listing.published",
  "listing.withdrawn",
  "release.laid",
  "release.moved",
  "question.asked",
  "question.answered",
  "visit.moved",
  "order.made",
  "order.moved",
  "summary.made",
  "decision.made",
  "decision.answered",
  "admission.decided",
  "complaint.made",
  "complaint.answered",
  "money.moved",
  "handover.moved",
] as const;
export type RecordKind = (typeof recordKinds)[number];
