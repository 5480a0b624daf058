import cdf from "@stdlib/stats-base-dists-f-cdf";
import quantile from "@stdlib/stats-base-dists-f-quantile";

/**
 * Stands for infinite degrees of freedom below: the probability is within 1e-8 of theirs, the critical value within 1e-7 of
 * itself (tests/published/distributions.test.ts).
 */
const NEARLY_INFINITE = 1e8;

const finite = (degreesOfFreedom: number): number => Math.min(degreesOfFreedom, NEARLY_INFINITE);

/** A standard deviation and how many degrees of freedom stand behind it. */
export type Spread = { readonly standardDeviation: number; readonly degreesOfFreedom: number };

export type FTest = {
  /** Observed variance over expected variance. */
  readonly ratio: number;
  /** The ratio that chance exceeds with the stated significance. */
  readonly critical: number;
  readonly larger: boolean;
};

/**
 * Critical values by significance and both degrees of freedom: few differ, for readings are few and repeatabilities tabled. Numbers
 * as keys, since writing them out took longer than the test.
 */
const criticalValues = new Map<number, Map<number, Map<number, number>>>();
const MOST_KEPT = 64;

/** The map under a key; one that is not kept where there are too many already. */
const under = <Value>(maps: Map<number, Map<number, Value>>, key: number): Map<number, Value> => {
  const known = maps.get(key);
  if (known !== undefined) return known;
  const made = new Map<number, Value>();
  if (maps.size < MOST_KEPT) maps.set(key, made);
  return made;
};

/**
 * Upper critical value of the ratio of two variances.
 *
 * @param degreesOfFreedom of the variance above, positive
 * @param otherDegreesOfFreedom of the variance below, positive; Infinity where it is known
 * @param significance the chance of a false alarm, one-sided
 * @example fCritical(1, 30) // 7.5624760…
 */
export const fCritical = (
  degreesOfFreedom: number,
  otherDegreesOfFreedom: number,
  significance = 0.01,
): number => {
  const kept = under(under(criticalValues, significance), otherDegreesOfFreedom);
  const known = kept.get(degreesOfFreedom);
  if (known !== undefined) return known;
  const critical = quantile(1 - significance, finite(degreesOfFreedom), finite(otherDegreesOfFreedom));
  if (kept.size < MOST_KEPT) kept.set(degreesOfFreedom, critical);
  return critical;
};

/**
 * Probability of a ratio of variances as large as this or larger, if the spreads are equal.
 *
 * @example fUpperTail(9, 2, 30) // 0.000867…
 */
export const fUpperTail = (ratio: number, degreesOfFreedom: number, otherDegreesOfFreedom: number): number =>
  // The reciprocal of an F variable is one with the degrees exchanged; its lower tail keeps its digits.
  cdf(1 / ratio, finite(otherDegreesOfFreedom), finite(degreesOfFreedom));

/**
 * Is an observed spread larger than the expected one by more than chance explains? One-sided F-test of the
 * ratio of variances (NIST/SEMATECH e-Handbook 1.3.5.9). With no degrees of freedom (a single reading) nothing
 * is claimed.
 *
 * @param observed the scatter of the readings themselves
 * @param expected the repeatability the readings should have; its degrees of freedom may be Infinity
 * @param significance the chance of a false alarm, one-sided
 * @throws {RangeError} when a standard deviation is negative
 * @example
 * fTest({ standardDeviation: 3, degreesOfFreedom: 2 }, { standardDeviation: 1, degreesOfFreedom: 30 })
 * // { ratio: 9, critical: 5.390…, larger: true }
 */
export const fTest = (observed: Spread, expected: Spread, significance = 0.01): FTest => {
  if (!(observed.standardDeviation >= 0 && expected.standardDeviation >= 0)) {
    throw new RangeError("Standard deviations must be numbers from 0.");
  }
  if (!(observed.degreesOfFreedom > 0) || observed.standardDeviation === 0) {
    return { ratio: 0, critical: Number.POSITIVE_INFINITY, larger: false };
  }
  const ratio = (observed.standardDeviation / expected.standardDeviation) ** 2;
  const critical = fCritical(observed.degreesOfFreedom, expected.degreesOfFreedom, significance);
  return { ratio, critical, larger: ratio > critical };
};
