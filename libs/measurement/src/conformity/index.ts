import type { Estimate } from "../estimate/index.ts";
import { studentCdf } from "../student-distribution/index.ts";

/** Limits a quantity has to keep; either may be left out. Equality passes. */
export type Limits = { readonly lower?: number; readonly upper?: number };

export type ConformityCall = "meets" | "marginal" | "fails";

/** Probability that the quantity is at most `limit`. Without uncertainty it either is or is not. */
const probabilityAtMost = (limit: number, estimate: Estimate): number => {
  if (estimate.standardUncertainty === 0) return estimate.value <= limit ? 1 : 0;
  return studentCdf((limit - estimate.value) / estimate.standardUncertainty, estimate.degreesOfFreedom);
};

const probabilityAtLeast = (limit: number, estimate: Estimate): number =>
  probabilityAtMost(-limit, { ...estimate, value: -estimate.value });

/**
 * Probability that a quantity keeps its limits, given what was measured (JCGM 106:2012, 7.2 to 7.4, from memory), with the
 * Student distribution of the estimate's own degrees of freedom: the same one its expanded uncertainty uses.
 *
 * @param limits in the unit of the estimate; with none given the probability is 1
 * @example probabilityOfConformity(estimate(509.7, 8.6), { lower: 490 }) // 0.98901…
 */
export const probabilityOfConformity = (estimate: Estimate, limits: Limits): number => {
  const below = limits.upper === undefined ? 1 : probabilityAtMost(limits.upper, estimate);
  const above = limits.lower === undefined ? 1 : probabilityAtLeast(limits.lower, estimate);
  return Math.max(0, below + above - 1);
};

/**
 * How a probability of conformity is called: meets from 95 %, fails up to 5 %, else marginal.
 *
 * @param probability from 0 to 1
 * @example callConformity(0.97) // "meets"
 */
export const callConformity = (probability: number): ConformityCall => {
  if (probability >= 0.95) return "meets";
  return probability <= 0.05 ? "fails" : "marginal";
};
