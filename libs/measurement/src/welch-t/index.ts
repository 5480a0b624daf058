import { mean, sampleStandardDeviation } from "../type-a/index.ts";
import type { Estimate } from "../estimate/index.ts";
import { difference } from "../difference/index.ts";
import { studentCdf } from "../student-distribution/index.ts";

/** What a sample is summed up by: its mean, its standard deviation (with n − 1), its size. */
export type SampleSummary = {
  readonly mean: number;
  readonly standardDeviation: number;
  readonly size: number;
};

/**
 * Sums a sample up.
 *
 * @throws {RangeError} for fewer than two values
 * @example summarize([1, 2, 3]) // { mean: 2, standardDeviation: 1, size: 3 }
 */
export const summarize = (values: readonly number[]): SampleSummary => ({
  mean: mean(values),
  standardDeviation: sampleStandardDeviation(values),
  size: values.length,
});

const estimateOfMean = ({ mean: value, standardDeviation, size }: SampleSummary): Estimate => ({
  value,
  standardUncertainty: standardDeviation / Math.sqrt(size),
  degreesOfFreedom: size - 1,
});

/**
 * The difference of two means with unequal spreads allowed (Welch 1947): its standard error and effective
 * degrees of freedom.
 *
 * @example
 * welchDifference({ mean: 3, standardDeviation: 2, size: 4 }, { mean: 1, standardDeviation: 2, size: 4 })
 * // { value: 2, standardUncertainty: 1.414…, degreesOfFreedom: 6 }
 */
export const welchDifference = (a: SampleSummary, b: SampleSummary): Estimate =>
  difference(estimateOfMean(a), estimateOfMean(b));

/**
 * The difference of two means whose spreads are taken as equal: pooled standard deviation, n₁ + n₂ − 2 degrees
 * of freedom (NIST/SEMATECH e-Handbook 1.3.5.3).
 *
 * @example
 * pooledDifference({ mean: 3, standardDeviation: 2, size: 4 }, { mean: 1, standardDeviation: 2, size: 4 })
 * // { value: 2, standardUncertainty: 1.414…, degreesOfFreedom: 6 }
 */
export const pooledDifference = (a: SampleSummary, b: SampleSummary): Estimate => {
  const degreesOfFreedom = a.size + b.size - 2;
  const squares = (a.size - 1) * a.standardDeviation ** 2 + (b.size - 1) * b.standardDeviation ** 2;
  return {
    value: a.mean - b.mean,
    standardUncertainty: Math.sqrt((squares / degreesOfFreedom) * (1 / a.size + 1 / b.size)),
    degreesOfFreedom,
  };
};

export type TTest = { readonly t: number; readonly degreesOfFreedom: number; readonly pValue: number };

/**
 * Student's t of a difference and its two-sided p-value. Given {@link welchDifference} it is Welch's test.
 *
 * @param supposed the difference if nothing is going on
 * @example tTest({ value: 2, standardUncertainty: 1, degreesOfFreedom: 1 }) // { t: 2, …, pValue: 0.2951672… }
 */
export const tTest = (estimate: Estimate, supposed = 0): TTest => {
  const t = (estimate.value - supposed) / estimate.standardUncertainty;
  return {
    t,
    degreesOfFreedom: estimate.degreesOfFreedom,
    pValue: 2 * studentCdf(-Math.abs(t), estimate.degreesOfFreedom),
  };
};
