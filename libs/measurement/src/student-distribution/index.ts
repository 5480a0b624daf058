import cdf from "@stdlib/stats-base-dists-t-cdf";
import quantile from "@stdlib/stats-base-dists-t-quantile";
import { normalCdf, normalQuantile } from "../normal-distribution/index.ts";

/**
 * Probability that a Student variable is at most `t`. Infinite degrees of freedom give the normal.
 *
 * @param degreesOfFreedom positive, need not be whole
 * @example studentCdf(1, 1) // 0.75
 */
export const studentCdf = (t: number, degreesOfFreedom: number): number =>
  degreesOfFreedom === Number.POSITIVE_INFINITY ? normalCdf(t) : cdf(t, degreesOfFreedom);

/**
 * The value a Student variable stays under with the given probability.
 *
 * @param probability from 0 to 1
 * @param degreesOfFreedom positive, need not be whole; Infinity gives the normal quantile
 * @example studentQuantile(0.975, 30) // 2.0422724563012378
 */
export const studentQuantile = (probability: number, degreesOfFreedom: number): number =>
  degreesOfFreedom === Number.POSITIVE_INFINITY
    ? normalQuantile(probability)
    : quantile(probability, degreesOfFreedom);
