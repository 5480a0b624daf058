/**
 * Middle value; the mean of the two middle ones where their number is even.
 *
 * @throws {RangeError} for an empty list
 * @example median([3, 1, 2]) // 2
 * @example median([4, 1, 2, 3]) // 2.5
 */
export const median = (values: readonly number[]): number => {
  if (values.length === 0) throw new RangeError("A median needs at least one value.");
  const sorted = Float64Array.from(values).sort();
  const upper = sorted.length >> 1;
  const high = sorted[upper] ?? Number.NaN;
  return sorted.length % 2 === 1 ? high : ((sorted[upper - 1] ?? Number.NaN) + high) / 2;
};
