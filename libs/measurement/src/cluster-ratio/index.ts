import { betaQuantile } from "../beta-distribution/index.ts";
import { normalQuantile } from "../normal-distribution/index.ts";
import { coverageFactor } from "../student-factor/index.ts";

/** What moves together: all statements of one car, all answers on one item. */
export type Cluster = { readonly total: number; readonly count: number };

export type ClusterRatio = {
  readonly estimate: number;
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
  readonly clusters: number;
  readonly count: number;
};

export type ClusterShare = ClusterRatio & {
  /** Rao and Scott's d: the variance over that of as many independent trials. */
  readonly designEffect: number;
  /** How many independent trials it is worth; never more than there are. */
  readonly effectiveCount: number;
};

const LEAST_CLUSTERS = 2;

const check = (clusters: readonly Cluster[]): readonly Cluster[] => {
  if (!clusters.every(({ total, count }) => Number.isFinite(total) && Number.isFinite(count) && count >= 0)) {
    throw new RangeError("Totals must be numbers, counts numbers from 0.");
  }
  const counted = clusters.filter(({ count }) => count > 0);
  if (counted.length < LEAST_CLUSTERS)
    throw new RangeError("A ratio over clusters needs at least two of them.");
  return counted;
};

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

const ratioOf = (clusters: readonly Cluster[]) => {
  const n = clusters.length;
  const count = sumOf(clusters.map((cluster) => cluster.count));
  const estimate = sumOf(clusters.map(({ total }) => total)) / count;
  const squares = sumOf(clusters.map((cluster) => (cluster.total - estimate * cluster.count) ** 2));
  return { n, count, estimate, variance: ((n / (n - 1)) * squares) / count ** 2 };
};

/**
 * A mean over things that move together in clusters: the ratio R = Σ total / Σ count with v(R) = n/(n − 1)·Σ (total − R·count)²/(Σ count)²
 * (Cochran 1977, 6.3 and 3.12, numbers of the sections from memory) and Student's t with n − 1 degrees of freedom. The single things need not be independent, only the
 * clusters: a hundred answers on one item are one item.
 *
 * @param clusters empty ones are left out
 * @throws {RangeError} with fewer than two clusters, or counts under 0
 * @example
 * clusterRatio([{ total: 2, count: 4 }, { total: 3, count: 4 }, { total: 1, count: 4 }])
 * // { estimate: 0.5, standardError: 0.144…, low: -0.121…, high: 1.121…, clusters: 3, count: 12 }
 */
export const clusterRatio = (clusters: readonly Cluster[], confidence = 0.95): ClusterRatio => {
  const { n, count, estimate, variance } = ratioOf(check(clusters));
  const standardError = Math.sqrt(variance);
  const reach = coverageFactor(n - 1, confidence) * standardError;
  return { estimate, standardError, low: estimate - reach, high: estimate + reach, clusters: n, count };
};

/**
 * A share counted in clusters: of all tested statements of a dealer's cars, those that fell. The estimate and its variance are those of
 * `clusterRatio`; the design effect d = v/(R(1 − R)/Σ count) says how many independent trials they are worth, Σ count/d (Rao and Scott
 * 1992), and with so many the interval is Jeffreys', narrowed to what t with n − 1 degrees of freedom allows (Korn and Graubard 1998). So it stays within 0 and
 * 1, and a share of 0 has an interval too. Where all clusters are alike d would be 0 or unknown: it is never taken under 1, and where
 * nothing or everything fell a cluster counts as one trial (Kish: (Σ count)²/Σ count²), which flatters nobody.
 *
 * @throws {RangeError} with fewer than two clusters, or a total outside 0 to its count
 * @example
 * clusterShare([{ total: 0, count: 9 }, { total: 0, count: 9 }, { total: 9, count: 9 }, { total: 9, count: 9 }]).effectiveCount // 3
 */
export const clusterShare = (clusters: readonly Cluster[], confidence = 0.95): ClusterShare => {
  const counted = check(clusters);
  if (counted.some(({ total, count }) => total < 0 || total > count)) {
    throw new RangeError("A share's totals must be from 0 to their counts.");
  }
  const { n, count, estimate, variance } = ratioOf(counted);
  const binomial = (estimate * (1 - estimate)) / count;
  const kish = sumOf(counted.map((cluster) => cluster.count ** 2)) / count;
  const designEffect = binomial === 0 ? kish : variance / binomial;
  const effectiveCount = count / Math.max(1, designEffect);
  const normal = normalQuantile((1 + confidence) / 2);
  const allowed = effectiveCount * (normal / coverageFactor(n - 1, confidence)) ** 2;
  const [a, b] = [estimate * allowed + 0.5, (1 - estimate) * allowed + 0.5];
  return {
    estimate,
    standardError: Math.sqrt(variance),
    low: estimate === 0 ? 0 : betaQuantile((1 - confidence) / 2, a, b),
    high: estimate === 1 ? 1 : betaQuantile((1 + confidence) / 2, a, b),
    clusters: n,
    count,
    designEffect,
    effectiveCount,
  };
};
