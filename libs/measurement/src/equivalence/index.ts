/** How two readings stand to each other, from mildest to firmest. */
export type IntervalOutcome = "agree" | "consistent" | "doubtful" | "differ";

/**
 * What is smaller than this share of δ is rounding and counts as nothing, so that the same readings written
 * in other units are never judged otherwise.
 */
export const ROUNDING_SHARE = 1e-9;

/**
 * Judges a difference by its interval [Δ − U, Δ + U] against the difference that matters:
 *
 * - wholly within [−δ, δ]: **agree**
 * - wholly outside it: **differ**
 * - otherwise, holding 0: **consistent**
 * - otherwise: **doubtful**
 *
 * This is two one-sided tests (Schuirmann 1987) at 2.5 % each for "agree", with a test for difference beside
 * it; touching δ is within it, and so is 1e-9·δ beyond, which is rounding.
 *
 * @param difference Δ = A − B
 * @param expandedUncertainty U of that difference; may be Infinity
 * @param delta the difference that matters; all three in one unit
 * @throws {RangeError} when Δ is not a number, or U or δ is negative
 * @example classifyInterval(0.5, 0.3, 1) // "agree"
 * @example classifyInterval(1.5, 0.4, 1) // "differ"
 * @example classifyInterval(0.5, 0.6, 1) // "consistent"
 * @example classifyInterval(0.8, 0.6, 1) // "doubtful"
 */
export const classifyInterval = (
  difference: number,
  expandedUncertainty: number,
  delta: number,
): IntervalOutcome => {
  if (!Number.isFinite(difference)) throw new RangeError(`The difference must be a number: ${difference}`);
  if (!(expandedUncertainty >= 0)) {
    throw new RangeError(`The uncertainty must be a number from 0: ${expandedUncertainty}`);
  }
  if (!(delta >= 0)) throw new RangeError(`The difference that matters must be a number from 0: ${delta}`);
  const rounding = ROUNDING_SHARE * delta;
  const distance = Math.abs(difference);
  if (distance + expandedUncertainty <= delta + rounding) return "agree";
  if (distance - expandedUncertainty > delta + rounding) return "differ";
  return distance <= expandedUncertainty + rounding ? "consistent" : "doubtful";
};
