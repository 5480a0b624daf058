import type { Mark } from "@evenhand/shared/comparison";
import type { Outcome, Standing } from "@evenhand/shared/outcome";
import type { Severity } from "@evenhand/shared/severity";

// The terms as lists of their own: the contracts' schemas would bring the whole validator to the first page.

/** From the most pressing to the least: the order of the counts and of the ink's weight. */
export const outcomeOrder = [
  "differ",
  "unstated",
  "doubtful",
  "unseen",
  "incomparable",
  "consistent",
  "agree",
] as const satisfies readonly Outcome[];

export const standings = [
  "contradicted-by-figures",
  "differs",
  "not-mentioned",
  "in-doubt",
  "agreed-fault",
  "unseen",
  "not-comparable",
  "too-coarse",
  "not-contradicted",
  "confirmed",
] as const satisfies readonly Standing[];

/** Marks that a line's standing and sentence do not say already. */
export const marks = [
  "both-bad",
  "over-limit",
  "by-eye",
  "hedged",
  "second-hand",
  "no-yardstick",
  "only-as-declared",
  "perhaps-unit",
  "perhaps-other-side",
  "looked-twice",
] as const satisfies readonly Mark[];

/** What a purchase turns on. */
export const decisive: ReadonlySet<Severity | null> = new Set(["halt", "danger", "worth"]);
