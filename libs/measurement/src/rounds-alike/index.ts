import { normalCdf, normalDensity } from "../normal-distribution/index.ts";

/**
 * The chance that two readings of one thing, which differ by noise, are rounded to the same figure, wherever between two figures the
 * truth lies: the mean of 1 − |d|/r over what they differ by, with z = r/u: 2Φ(z) − 1 − (2/z)·(φ(0) − φ(z)). Where the two things differ
 * it is less.
 *
 * @param step r, what both round to; Infinity where anything is rounded to one figure
 * @param standardUncertainty u of the difference of the two
 * @throws {RangeError} when either is negative
 * @example roundsAlike(1, 1) // 0.3687…
 */
export const roundsAlike = (step: number, standardUncertainty: number): number => {
  if (!(step >= 0 && standardUncertainty >= 0)) {
    throw new RangeError("A step and a standard uncertainty must be numbers from 0.");
  }
  if (standardUncertainty === 0 || step === Number.POSITIVE_INFINITY) return 1;
  if (step === 0) return 0;
  const z = step / standardUncertainty;
  return 2 * normalCdf(z) - 1 - (2 / z) * (normalDensity(0) - normalDensity(z));
};
