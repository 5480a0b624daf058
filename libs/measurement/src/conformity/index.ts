import type { Estimate } from "../estimate/index.ts";
import { studentTail } from "../student-tail/index.ts";

/** Limits a quantity has to keep; either may be left out. Equality passes. */
export type Limits = { readonly lower?: number; readonly upper?: number };

export type ConformityCall = "meets" | "marginal" | "fails";

/** Beyond this, e to its negative power is too little to change the last digit of a number near 1. */
const NOTHING = 40;

/**
 * Whether the tail beyond `t` is lost beside 1, so that what the library would be asked for is known: 1 − 1e-17 is 1. Student's
 * density at x is at most x/t of itself beyond t, so that its tail is at most 0.4/t · ν/(ν − 1) · (1 + t²/ν) to the power of
 * −(ν − 1)/2; that of the normal at most 0.4/t · e to the power of −t²/2.
 */
const isBeyondDoubt = (t: number, degreesOfFreedom: number): boolean =>
  t * t > 2 * NOTHING &&
  (degreesOfFreedom === Number.POSITIVE_INFINITY ||
    (degreesOfFreedom >= 2 &&
      ((degreesOfFreedom - 1) / 2) * Math.log1p((t * t) / degreesOfFreedom) > NOTHING));

/** Probability that a quantity lies within a limit that is `margin` away from it. Without uncertainty it either does or does not. */
const probabilityWithin = (
  margin: number,
  { standardUncertainty, degreesOfFreedom }: Omit<Estimate, "value">,
): number => {
  if (standardUncertainty === 0) return margin >= 0 ? 1 : 0;
  const t = margin / standardUncertainty;
  if (isBeyondDoubt(t, degreesOfFreedom)) return t > 0 ? 1 : 0;
  const tail = studentTail(Math.abs(t), degreesOfFreedom);
  return t > 0 ? 1 - tail : tail;
};

/**
 * Probability that a quantity keeps its limits, given what was measured (JCGM 106:2012, 7.2 to 7.4, from memory), with the
 * Student distribution of the estimate's own degrees of freedom: the same one its expanded uncertainty uses. To 2e-12.
 *
 * @param limits in the unit of the estimate; with none given the probability is 1
 * @example probabilityOfConformity(estimate(509.7, 8.6), { lower: 490 }) // 0.98901…
 */
export const probabilityOfConformity = (
  estimate: Estimate,
  limits: Limits,
  value: number = estimate.value,
): number => {
  const below = limits.upper === undefined ? 1 : probabilityWithin(limits.upper - value, estimate);
  const above = limits.lower === undefined ? 1 : probabilityWithin(value - limits.lower, estimate);
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
