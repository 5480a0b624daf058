import type { Estimate } from "../estimate/index.ts";
import { lossOf } from "../welch-satterthwaite/index.ts";

/**
 * The difference a − b of two independent estimates, with its standard uncertainty and effective degrees of
 * freedom (JCGM 100:2008, equations 10 and G.2b). Leave shared contributions out of both beforehand: what
 * carries one instrument on both sides cancels in a difference.
 *
 * @example
 * difference(estimate(10, 3), estimate(4, 4))
 * // { value: 6, standardUncertainty: 5, degreesOfFreedom: Infinity }
 */
export const difference = (a: Estimate, b: Estimate): Estimate => {
  // What combineUncertainty and welchSatterthwaite give for the two, without a list of them.
  const variance = a.standardUncertainty ** 2 + b.standardUncertainty ** 2;
  const loss =
    lossOf(a.standardUncertainty, variance, a.degreesOfFreedom) +
    lossOf(b.standardUncertainty, variance, b.degreesOfFreedom);
  return {
    value: a.value - b.value,
    standardUncertainty: Math.sqrt(variance),
    degreesOfFreedom: 1 / loss,
  };
};
