import type { NotSeenReason } from "@evenhand/shared/answer";

/** Why an entry has its outcome, as a stable code; `sentence` puts it in words. */
export type Reason =
  // readings
  | "within-delta"
  | "not-settled"
  | "beyond-chance"
  | "beyond-delta"
  | "drifts-between-days"
  // colors
  | "same-color"
  | "color-within-delta"
  | "color-not-settled"
  | "color-beyond-chance"
  | "color-beyond-delta"
  | "metallic-from-one-angle"
  | "other-geometry"
  // grades
  | "same-grade"
  | "grades-overlap"
  | "grade-within-wider"
  | "grades-near"
  | "grades-apart"
  | "grades-far-apart"
  | "unknown-scale"
  // working, presence, choice
  | "same-answer"
  | "other-answer"
  | "works-at-times"
  | "changed-between-days"
  | "changed-bad-between-days"
  | "not-known-by-either"
  | "not-known-by-statement"
  | "not-known-by-inspection"
  | "found-bad-not-known"
  // codes
  | "same-code"
  | "one-look-alike"
  | "two-exchanged"
  | "other-code"
  // faults
  | "same-fault"
  | "extent-not-given"
  | "extent-not-settled"
  | "extent-beyond-chance"
  | "extent-beyond-delta"
  | "disclosed-not-found"
  | "denied-found"
  | "denied-by-both"
  | "denied-not-contradicted"
  | "nothing-claimed"
  // silence
  | "not-reported"
  | "stated-not-inspected"
  | "not-known-nor-stated"
  | `not-seen-${NotSeenReason}`
  | "found-bad-not-stated"
  | "found-bad-statement-unseen"
  | "seen-sound-not-stated"
  | "seen-sound-statement-unseen"
  // answers of two kinds
  | "other-kind";
