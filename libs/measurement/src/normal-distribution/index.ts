import cdf from "@stdlib/stats-base-dists-normal-cdf";
import quantile from "@stdlib/stats-base-dists-normal-quantile";

/**
 * Probability that a standard normal variable is at most `z`.
 *
 * @example normalCdf(1.959963984540054) // 0.975
 */
export const normalCdf = (z: number): number => cdf(z, 0, 1);

/**
 * Density of a standard normal variable at `z`, φ(z).
 *
 * @example normalDensity(0) // 0.3989422804014327
 */
export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/**
 * The value a standard normal variable stays under with the given probability.
 *
 * @param probability from 0 to 1
 * @example normalQuantile(0.975) // 1.9599639845400538
 */
export const normalQuantile = (probability: number): number => quantile(probability, 0, 1);
