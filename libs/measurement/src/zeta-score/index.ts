/** How a score is read, in the words of ISO/IEC 17043:2010: `questionable` is a warning signal, `unsatisfactory` an action signal. */
export type ScoreReading = "satisfactory" | "questionable" | "unsatisfactory";

/**
 * Zeta score of a difference: Δ over its standard uncertainty, √(u_A² + u_B²) (ISO 13528:2015, 9.6; number of
 * the clause from memory). Without any uncertainty it is 0 for no difference and otherwise infinite.
 *
 * @param difference Δ, in the unit of the uncertainty
 * @param standardUncertainty of the difference
 * @throws {RangeError} when the uncertainty is negative
 * @example zetaScore(0.006, 0.00763627) // 0.7857239…
 */
export const zetaScore = (difference: number, standardUncertainty: number): number => {
  if (!(standardUncertainty >= 0)) {
    throw new RangeError(`The standard uncertainty must be a number from 0: ${standardUncertainty}`);
  }
  return difference === 0 ? 0 : difference / standardUncertainty;
};

/**
 * How a z, z′ or zeta score is read: up to 2 satisfactory, 3 and over unsatisfactory, between them
 * questionable (words and bounds: ISO/IEC 17043:2010, B.4.1.1; the same bounds in ISO 13528:2015, 9.4.2, are called acceptable,
 * warning signal and unacceptable; both from memory).
 *
 * @example readZetaScore(-2.4) // "questionable"
 */
export const readZetaScore = (score: number): ScoreReading => {
  const size = Math.abs(score);
  if (size <= 2) return "satisfactory";
  return size >= 3 ? "unsatisfactory" : "questionable";
};
