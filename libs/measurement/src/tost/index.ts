import type { Estimate } from "../estimate/index.ts";
import { coverageFactor } from "../student-factor/index.ts";
import { studentCdf } from "../student-distribution/index.ts";

export type Tost = {
  /** Against the lower bound, and its one-sided p-value. */
  readonly tLower: number;
  readonly pLower: number;
  /** Against the upper bound, and its one-sided p-value. */
  readonly tUpper: number;
  readonly pUpper: number;
  /** The larger of the two: the test's own. */
  readonly pValue: number;
  readonly equivalent: boolean;
  /** The interval at 1 − 2·significance: within the bounds exactly when equivalent. */
  readonly low: number;
  readonly high: number;
};

/**
 * Two one-sided tests for equivalence (Schuirmann 1987): is the difference shown to lie between the bounds?
 *
 * @param difference with its standard error and degrees of freedom
 * @param low lower bound of what does not matter
 * @param high upper bound; both in the unit of the difference
 * @param significance of each one-sided test
 * @throws {RangeError} when the bounds are the wrong way round
 * @example tost({ value: 0, standardUncertainty: 1, degreesOfFreedom: 30 }, -3, 3).equivalent // true
 */
export const tost = (difference: Estimate, low: number, high: number, significance = 0.05): Tost => {
  if (!(low < high)) throw new RangeError(`The lower bound must lie under the upper one: ${low}, ${high}`);
  const { value, standardUncertainty, degreesOfFreedom } = difference;
  const tLower = (value - low) / standardUncertainty;
  const tUpper = (value - high) / standardUncertainty;
  const pLower = studentCdf(-tLower, degreesOfFreedom);
  const pUpper = studentCdf(tUpper, degreesOfFreedom);
  const pValue = Math.max(pLower, pUpper);
  const reach = coverageFactor(degreesOfFreedom, 1 - 2 * significance) * standardUncertainty;
  return {
    tLower,
    pLower,
    tUpper,
    pUpper,
    pValue,
    equivalent: pValue < significance,
    low: value - reach,
    high: value + reach,
  };
};
