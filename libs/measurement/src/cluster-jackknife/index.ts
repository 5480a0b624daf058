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
 * @param figure of all clusters, and of all but one
 * @throws {RangeError} with fewer than two clusters, or where a figure is no number
 * @example clusterJackknife([2, 4, 6], (values) => mean(values)) // { estimate: 4, standardError: 1.154…, low: -0.968…, high: 8.968…, clusters: 3 }
 */
export const clusterJackknife = <Cluster>(
  clusters: readonly Cluster[],
  figure: (clusters: readonly Cluster[]) => number,
  confidence = 0.95,
): Jackknifed => {
  const n = clusters.length;
  if (n < LEAST_CLUSTERS) throw new RangeError("A jackknife over clusters needs at least two of them.");
  const estimate = figure(clusters);
  const without = clusters.map((_, left) => figure(clusters.filter((_other, index) => index !== left)));
  if (![estimate, ...without].every(Number.isFinite)) throw new RangeError("A figure is no number.");
  const center = without.reduce((sum, one) => sum + one, 0) / n;
  const squares = without.reduce((sum, one) => sum + (one - center) ** 2, 0);
  const standardError = Math.sqrt(((n - 1) / n) * squares);
  const reach = coverageFactor(n - 1, confidence) * standardError;
  return { estimate, standardError, low: estimate - reach, high: estimate + reach, clusters: n };
};
