import type { Spread } from "../f-test/index.ts";

/** d₀: how many readings' worth the item's own repeatability weighs beside the scatter seen (about 6). */
export const PRIOR_DEGREES = 6;

/**
 * The scatter of a few readings, drawn toward the repeatability such readings have: s̃² = (d₀·s₀² + ν·s²)/(d₀ + ν), never under s₀²
 * (Smyth 2004, "moderated" variance: the reciprocal of the mean that 1/σ² has after both were seen).
 *
 * Two or three readings tell little of their scatter, and a test that lets it count or not has an edge: one digit more and the
 * uncertainty doubles. Here it grows without a step from s₀ on. Readings that happen to lie close gain nothing by it.
 *
 * Degrees of freedom pass without a step from those of s₀ to d₀ + ν, by the share of s̃² that is more than s₀².
 *
 * @param seen s and ν of the readings themselves; without degrees of freedom nothing was seen
 * @param expected s₀ and its degrees of freedom, which may be Infinity
 * @returns s̃ with its degrees of freedom
 * @throws {RangeError} when a standard deviation or d₀ is negative
 * @example
 * moderatedVariance({ standardDeviation: 3, degreesOfFreedom: 2 }, { standardDeviation: 1, degreesOfFreedom: 30 })
 * // { standardDeviation: 1.732…, degreesOfFreedom: 10.58… }
 */
export const moderatedVariance = (seen: Spread, expected: Spread, priorDegrees = PRIOR_DEGREES): Spread => {
  if (!(seen.standardDeviation >= 0 && expected.standardDeviation >= 0)) {
    throw new RangeError("Standard deviations must be numbers from 0.");
  }
  if (!(priorDegrees >= 0))
    throw new RangeError(`The prior's degrees of freedom must be from 0: ${priorDegrees}`);
  if (!(seen.degreesOfFreedom > 0) || seen.standardDeviation <= expected.standardDeviation) return expected;
  const degrees = priorDegrees + seen.degreesOfFreedom;
  const declared = expected.standardDeviation ** 2;
  const variance = (priorDegrees * declared + seen.degreesOfFreedom * seen.standardDeviation ** 2) / degrees;
  const excess = 1 - declared / variance;
  return {
    standardDeviation: Math.sqrt(variance),
    degreesOfFreedom: 1 / ((1 - excess) / expected.degreesOfFreedom + excess / degrees),
  };
};
