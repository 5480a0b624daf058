import { fUpperTail } from "../f-test/index.ts";
import type { Spread } from "../f-test/index.ts";

/** The repeats of one reading, and how they should scatter; all in one unit. */
export type Repeats = {
  /** s and ν of the readings. */
  readonly seen: Spread;
  /** s₀, taken as known. */
  readonly repeatability: number;
  /** r of the instrument. */
  readonly resolution: number;
};

export type PooledRepeats =
  | { readonly kind: "tooFew"; readonly degreesOfFreedom: number }
  | {
      readonly kind: "asDeclared" | "scattersMore" | "tooAlike";
      readonly degreesOfFreedom: number;
      /** Σ ν·s²/σ² over Σ ν: 1 where all scatter as declared. */
      readonly ratio: number;
      /** The chance of as much scatter, or of as little, where all is as declared. */
      readonly chanceOfMore: number;
      readonly chanceOfLess: number;
    };

const LEAST_DEGREES = 10;

/** Under rounding as coarse as the scatter itself repeats are alike by themselves. */
const isTested = ({ seen, repeatability, resolution }: Repeats): boolean =>
  seen.degreesOfFreedom > 0 && repeatability > 0 && resolution <= repeatability;

/**
 * Whether the repeats of a whole report scatter as declared: χ² = Σ ν·s²/σ² with σ² = s₀² + r²/12 (Sheppard) against χ² with Σ ν degrees
 * of freedom. A single reading's repeats tell little; those of a report together tell whether somebody's hand is less steady than they
 * say ("scatters more than declared"), or wrote one reading three times ("too alike to be three readings": the idea is
 * Simonsohn's, 2013). Readings rounded more coarsely than they scatter are left out.
 *
 * @param significance the chance of a false alarm, on each side
 * @returns "tooFew" under ten degrees of freedom in all
 * @throws {RangeError} when a standard deviation, s₀ or r is negative
 * @example
 * pooledRepeats(Array(8).fill({ seen: { standardDeviation: 0, degreesOfFreedom: 2 }, repeatability: 1, resolution: 0.1 })).kind
 * // "tooAlike"
 */
export const pooledRepeats = (all: readonly Repeats[], significance = 0.005): PooledRepeats => {
  let [sum, degreesOfFreedom] = [0, 0];
  for (const repeats of all) {
    const { seen, repeatability, resolution } = repeats;
    if (!(seen.standardDeviation >= 0 && repeatability >= 0 && resolution >= 0)) {
      throw new RangeError("Standard deviations, repeatability and resolution must be numbers from 0.");
    }
    if (!isTested(repeats)) continue;
    sum +=
      (seen.degreesOfFreedom * seen.standardDeviation ** 2) / (repeatability ** 2 + resolution ** 2 / 12);
    degreesOfFreedom += seen.degreesOfFreedom;
  }
  if (degreesOfFreedom < LEAST_DEGREES) return { kind: "tooFew", degreesOfFreedom };
  const ratio = sum / degreesOfFreedom;
  // χ²/ν is F with infinitely many degrees below.
  const chanceOfMore = fUpperTail(ratio, degreesOfFreedom, Number.POSITIVE_INFINITY);
  const chanceOfLess = fUpperTail(1 / ratio, Number.POSITIVE_INFINITY, degreesOfFreedom);
  const kind =
    chanceOfMore < significance ? "scattersMore" : chanceOfLess < significance ? "tooAlike" : "asDeclared";
  return { kind, degreesOfFreedom, ratio, chanceOfMore, chanceOfLess };
};
