import type { Comparison } from "@evenhand/shared/comparison";

/**
 * How many lines are listed: what every outcome counts together.
 *
 * @example listedOf({ agree: 2, consistent: 0, doubtful: 1, differ: 0, unseen: 0, unstated: 0, incomparable: 0 }) // 3
 */
export const listedOf = (tally: Comparison["tally"]): number =>
  Object.values(tally).reduce((sum, count) => sum + count, 0);
