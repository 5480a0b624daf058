import { contribution } from "../combine-uncertainty/index.ts";
import type { Component } from "../combine-uncertainty/index.ts";

/**
 * What one component takes off the certainty of a combined variance: the square of its share, over its degrees of freedom.
 *
 * @throws {RangeError} when the degrees of freedom are not positive
 * @example lossOf(1, 2, 4) // 0.0625
 */
export const lossOf = (standardUncertainty: number, variance: number, degreesOfFreedom: number): number => {
  if (!(degreesOfFreedom > 0))
    throw new RangeError(`Degrees of freedom must be positive: ${degreesOfFreedom}`);
  // Shares of the variance rather than fourth powers, which leave the range of doubles for small units.
  const share = variance === 0 ? 0 : standardUncertainty ** 2 / variance;
  return share ** 2 / degreesOfFreedom;
};

/**
 * Effective degrees of freedom of a combined uncertainty: u⁴ / Σ (cᵢ·uᵢ)⁴/νᵢ, not rounded
 * (Welch–Satterthwaite; JCGM 100:2008, equation G.2b). Infinity when no component with finite degrees of
 * freedom contributes.
 *
 * @throws {RangeError} when a component's degrees of freedom are not positive
 * @example
 * welchSatterthwaite([
 *   { standardUncertainty: 1, degreesOfFreedom: 4 },
 *   { standardUncertainty: 1, degreesOfFreedom: 4 },
 * ]) // 8
 */
export const welchSatterthwaite = (components: readonly Component[]): number => {
  let variance = 0;
  for (const component of components) variance += contribution(component) ** 2;
  let loss = 0;
  for (const component of components) {
    loss += lossOf(contribution(component), variance, component.degreesOfFreedom ?? Number.POSITIVE_INFINITY);
  }
  return 1 / loss;
};
