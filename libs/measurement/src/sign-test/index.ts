import cdf from "@stdlib/stats-base-dists-binomial-cdf";

export type SignTest = {
  readonly positive: number;
  readonly negative: number;
  /** Differences of 0, which take no part. */
  readonly ties: number;
  /** Exact, two-sided; 1 when nothing takes part. */
  readonly pValue: number;
};

/**
 * Exact two-sided sign test: if neither side were favored, how often would the signs fall at least as
 * unevenly? (Arbuthnot 1710; Conover 1999, 3.4.) Says nothing of how many items are enough: that is the
 * caller's, and with five or fewer the p-value cannot reach 5 %.
 *
 * @param differences only their signs are read
 * @example signTest([1, 1, 1, 1, 1, 1, 1, 1, -1, 0]) // { positive: 8, negative: 1, ties: 1, pValue: 0.0390625 }
 */
export const signTest = (differences: readonly number[]): SignTest => {
  const positive = differences.filter((difference) => difference > 0).length;
  const negative = differences.filter((difference) => difference < 0).length;
  const counted = positive + negative;
  return {
    positive,
    negative,
    ties: differences.length - counted,
    pValue: Math.min(1, 2 * cdf(Math.min(positive, negative), counted, 0.5)),
  };
};
