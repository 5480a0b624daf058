/** Where among rising values one stands that is among them; the first of those alike. */
const placeOf = (value: number, rising: Float64Array): number => {
  let [low, high] = [0, rising.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? Number.NaN) < value) low = middle + 1;
    else high = middle;
  }
  return low;
};

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
  const rising = new Float64Array(pValues).sort();
  const qValues = new Float64Array(rising.length);
  let least = 1;
  for (let place = rising.length - 1; place >= 0; place -= 1) {
    least = Math.min(least, ((rising[place] ?? Number.NaN) * rising.length) / (place + 1));
    qValues[place] = least;
  }
  return pValues.map((p) => qValues[placeOf(p, rising)] ?? 1);
};
