import type { Estimate } from "../estimate/index.ts";

/**
 * Arithmetic mean.
 *
 * @throws {RangeError} for an empty list
 * @example mean([6, 6, 5]) // 5.666666666666667
 */
export const mean = (values: readonly number[]): number => {
  if (values.length === 0) throw new RangeError("A mean needs at least one value.");
  let sum = 0;
  // By index: a list of whole numbers and one of fractions are two kinds to the machine, and walking both makes garbage.
  for (let index = 0; index < values.length; index += 1) sum += values[index] ?? 0;
  return sum / values.length;
};

/**
 * Experimental standard deviation, with n − 1 (JCGM 100:2008, equation 4). In the unit of the values.
 *
 * @throws {RangeError} for fewer than two values
 * @example sampleStandardDeviation([2, 4, 4, 4, 5, 5, 7, 9]) // 2.138089935299395
 */
export const sampleStandardDeviation = (values: readonly number[]): number => {
  if (values.length < 2) throw new RangeError("A standard deviation needs at least two values.");
  const center = mean(values);
  let squares = 0;
  for (let index = 0; index < values.length; index += 1) squares += ((values[index] ?? 0) - center) ** 2;
  return Math.sqrt(squares / (values.length - 1));
};

/**
 * Experimental standard deviation of the mean, s/√n (JCGM 100:2008, equation 5). In the unit of the values.
 *
 * @throws {RangeError} for fewer than two values
 * @example standardDeviationOfMean([1, 2, 3, 4]) // 0.6454972243679028
 */
export const standardDeviationOfMean = (values: readonly number[]): number =>
  sampleStandardDeviation(values) / Math.sqrt(values.length);

/**
 * A type A evaluation: mean, standard deviation of the mean, and n − 1 degrees of freedom
 * (JCGM 100:2008, 4.2).
 *
 * @throws {RangeError} for fewer than two values
 * @example typeA([1, 2, 3, 4]) // { value: 2.5, standardUncertainty: 0.6454972243679028, degreesOfFreedom: 3 }
 */
export const typeA = (values: readonly number[]): Estimate => ({
  value: mean(values),
  standardUncertainty: standardDeviationOfMean(values),
  degreesOfFreedom: values.length - 1,
});
