import { signedRankQuantile } from "./signed-rank.ts";
import { walshAverage } from "./walsh-averages.ts";

/** `tooFew`: no interval of these averages reaches the confidence, so nothing is said. */
export type HodgesLehmann =
  | {
      readonly kind: "estimated";
      readonly shift: number;
      readonly low: number;
      readonly high: number;
      readonly items: number;
    }
  | { readonly kind: "tooFew"; readonly items: number; readonly least: number };

/** All signs alike has a chance of 2^−n; under half of 1 − confidence an interval exists. */
const leastItems = (confidence: number): number => Math.ceil(Math.log2(2 / (1 - confidence)));

const middleAverage = (sorted: Float64Array, averages: number): number =>
  (walshAverage(sorted, Math.ceil(averages / 2)) + walshAverage(sorted, Math.floor(averages / 2) + 1)) / 2;

/**
 * By how much paired answers are shifted: the median of all averages of two differences (Hodges and Lehmann
 * 1963), with the interval that inverts Wilcoxon's signed-rank test (Hollander and Wolfe, Nonparametric
 * Statistical Methods, 3.2 and 3.3). In the unit of the differences. The interval holds the shift at least as
 * often as stated.
 *
 * @param differences of pairs, in any order; zeros count
 * @returns `tooFew` only when no interval can reach the confidence (under 6 items at 95 %); the floor of ten
 *   items for a report is the caller's
 * @throws {RangeError} when a difference is not a finite number
 * @example
 * hodgesLehmann([1, 2, 3, 4, 5, 6, 7]) // { kind: "estimated", shift: 4, low: 2, high: 6, items: 7 }
 */
export const hodgesLehmann = (differences: readonly number[], confidence = 0.95): HodgesLehmann => {
  if (!differences.every(Number.isFinite)) throw new RangeError("Differences must be finite numbers.");
  const items = differences.length;
  const least = leastItems(confidence);
  if (items < least) return { kind: "tooFew", items, least };
  const sorted = Float64Array.from(differences).sort();
  const averages = (items * (items + 1)) / 2;
  const cut = Math.max(1, signedRankQuantile((1 - confidence) / 2, items));
  return {
    kind: "estimated",
    shift: middleAverage(sorted, averages),
    low: walshAverage(sorted, cut),
    high: walshAverage(sorted, averages + 1 - cut),
    items,
  };
};
