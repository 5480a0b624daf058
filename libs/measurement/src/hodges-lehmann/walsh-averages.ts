/** The averages of pairs parted at a bound: how many are at most it, and the values nearest it on both sides. */
type Parted = { readonly count: number; readonly largestWithin: number; readonly smallestBeyond: number };

/**
 * Rows are the lower value of a pair, and what is at most the bound in a row ends earlier in the next one.
 *
 * @param bound under the largest value, so that the last row at the latest lies beyond it
 */
const part = (sorted: Float64Array, bound: number): Parted => {
  let [count, largestWithin, smallestBeyond] = [0, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let end = sorted.length;
  for (let row = 0; ; row += 1) {
    const value = sorted[row] ?? Number.NaN;
    while (end > row) {
      const average = (value + (sorted[end - 1] ?? Number.NaN)) / 2;
      if (average <= bound) {
        largestWithin = Math.max(largestWithin, average);
        break;
      }
      smallestBeyond = Math.min(smallestBeyond, average);
      end -= 1;
    }
    // From here on every row lies wholly beyond, and this one's first average is the nearest of them.
    if (end <= row) return { count, largestWithin, smallestBeyond: Math.min(smallestBeyond, value) };
    count += end - row;
  }
};

/**
 * The k-th smallest of the n(n + 1)/2 averages of pairs (each value with itself included), found by halving
 * and counting: four hundred items have eighty thousand averages, which are never laid out.
 *
 * @param sorted rising, not empty
 * @param k from 1
 */
export const walshAverage = (sorted: Float64Array, k: number): number => {
  let low = sorted[0] ?? Number.NaN;
  let high = sorted[sorted.length - 1] ?? Number.NaN;
  while (low < high) {
    const middle = low + (high - low) / 2;
    // Between neighboring numbers the middle may round up to the higher one, which would part nothing off.
    const { count, largestWithin, smallestBeyond } = part(sorted, middle < high ? middle : low);
    if (count >= k) high = largestWithin;
    else low = smallestBeyond;
  }
  return low;
};
