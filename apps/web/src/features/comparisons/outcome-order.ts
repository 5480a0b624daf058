import type { Outcome } from "@evenhand/shared/outcome";

/** From the most pressing to the least: the order of the counts and of the ink's weight. */
export const outcomeOrder: readonly Outcome[] = [
  "differ",
  "unstated",
  "doubtful",
  "unseen",
  "incomparable",
  "consistent",
  "agree",
];
