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

/** What a purchase turns on. */
export const decisive: ReadonlySet<Severity | null> = new Set(["halt", "danger", "worth"]);
