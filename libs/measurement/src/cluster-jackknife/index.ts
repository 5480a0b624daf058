import { coverageFactor } from "../student-factor/index.ts";

/** A figure with the interval that leaving out one cluster after another gives it. */
export type Jackknifed = {
  readonly estimate: number;
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
  readonly clusters: number;
};

const LEAST_CLUSTERS = 2;

/**
 * The delete-one jackknife over clusters, for figures that are no plain mean (a coefficient of agreement): v = (G − 1)/G·Σ (θ₋g − θ̄)²
 * over the G figures of everything but one cluster, and Student's t with G − 1 degrees of freedom (Efron and Tibshirani 1993, chapter 11,
 * number of the chapter from memory). Only the clusters need be independent: all places of one item err together.
 *
 * @param estimate the figure of all clusters
 * @param without for each cluster the figure of everything but that one
 * @throws {RangeError} with fewer than two clusters, or where a figure is no number
 * @example clusterJackknife(4, [5, 4, 3]) // { estimate: 4, standardError: 1.154…, low: -0.968…, high: 8.968…, clusters: 3 }
 */
export const clusterJackknife = (
  estimate: number,
  without: readonly number[],
  confidence = 0.95,
): Jackknifed => {
  const n = without.length;
  if (n < LEAST_CLUSTERS) throw new RangeError("A jackknife over clusters needs at least two of them.");
  if (![estimate, ...without].every(Number.isFinite)) throw new RangeError("A figure is no number.");
  const center = without.reduce((sum, one) => sum + one, 0) / n;
  const squares = without.reduce((sum, one) => sum + (one - center) ** 2, 0);
  const standardError = Math.sqrt(((n - 1) / n) * squares);
  const reach = coverageFactor(n - 1, confidence) * standardError;
  return { estimate, standardError, low: estimate - reach, high: estimate + reach, clusters: n };
};
