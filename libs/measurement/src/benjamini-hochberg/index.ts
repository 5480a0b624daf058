/**
 * q-value of each p-value: the smallest false discovery rate at which it would be called a discovery
 * (Benjamini and Hochberg 1995), in the order given.
 *
 * @param pValues from 0 to 1
 * @throws {RangeError} for a p-value out of range
 * @example benjaminiHochberg([0.01, 0.04, 0.03]) // [0.03, 0.04, 0.04]
 */
export const benjaminiHochberg = (pValues: readonly number[]): number[] => {
  if (pValues.some((p) => !(p >= 0 && p <= 1))) throw new RangeError("p-values lie between 0 and 1.");
  const fromLargest = pValues.map((p, index) => ({ p, index })).sort((a, b) => b.p - a.p);
  const qValues = pValues.map(() => 1);
  let least = 1;
  for (const [place, { p, index }] of fromLargest.entries()) {
    least = Math.min(least, (p * pValues.length) / (pValues.length - place));
    qValues[index] = least;
  }
  return qValues;
};
