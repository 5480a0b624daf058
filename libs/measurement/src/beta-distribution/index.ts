import cdf from "@stdlib/stats-base-dists-beta-cdf";
import quantile from "@stdlib/stats-base-dists-beta-quantile";

/**
 * Probability that a beta variable is at most `x`.
 *
 * @example betaCdf(0.5, 2, 2) // 0.5
 */
export const betaCdf = (x: number, alpha: number, beta: number): number => cdf(x, alpha, beta);

/**
 * The value a beta variable stays under with the given probability.
 *
 * @example betaQuantile(0.5, 2, 2) // 0.5
 */
export const betaQuantile = (probability: number, alpha: number, beta: number): number =>
  quantile(probability, alpha, beta);
