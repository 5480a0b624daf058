/**
 * E_n number: a difference over the root sum of squares of both sides' *expanded* uncertainties at k = 2
 * (ISO/IEC 17043:2010, B.3.1.3; ISO 13528:2015, 9.7; clauses from memory). Without any uncertainty it is 0 for no difference and
 * otherwise infinite.
 *
 * @param difference Δ, in the unit of the uncertainties
 * @throws {RangeError} when an uncertainty is negative
 * @example eNumber(3, 3, 4) // 0.6
 */
export const eNumber = (
  difference: number,
  expandedUncertaintyA: number,
  expandedUncertaintyB: number,
): number => {
  if (!(expandedUncertaintyA >= 0 && expandedUncertaintyB >= 0)) {
    throw new RangeError(
      `Expanded uncertainties must be numbers from 0: ${expandedUncertaintyA}, ${expandedUncertaintyB}`,
    );
  }
  if (difference === 0) return 0;
  // The root of one square is the number itself; readings are told with one interval, and the root is slow.
  return expandedUncertaintyB === 0
    ? difference / expandedUncertaintyA
    : difference / Math.hypot(expandedUncertaintyA, expandedUncertaintyB);
};

/**
 * How an E_n number is read: up to 1 in size satisfactory, else unsatisfactory (ISO/IEC 17043:2010, B.4.1.1, from
 * memory).
 *
 * @example readENumber(-1) // "satisfactory"
 */
export const readENumber = (number: number): "satisfactory" | "unsatisfactory" =>
  Math.abs(number) <= 1 ? "satisfactory" : "unsatisfactory";
