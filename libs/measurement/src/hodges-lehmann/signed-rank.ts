import { normalQuantile } from "../normal-distribution/index.ts";

/** Up to here the distribution of the rank sum is counted out; beyond, the normal is as good as exact. */
const MOST_COUNTED = 50;

/** P(T = t) of Wilcoxon's signed-rank sum for t = 0, 1, …: each rank in or out with ½. */
const probabilities = (items: number): Float64Array => {
  const chances = new Float64Array((items * (items + 1)) / 2 + 1);
  chances[0] = 1;
  for (let rank = 1; rank <= items; rank += 1) {
    for (let total = chances.length - 1; total >= 0; total -= 1) {
      const without = chances[total] ?? 0;
      chances[total] = (without + (chances[total - rank] ?? 0)) / 2;
    }
  }
  return chances;
};

const countedQuantile = (probability: number, items: number): number => {
  const chances = probabilities(items);
  let total = 0;
  // Halves of halves add up without rounding, so that all together they are exactly 1.
  for (let below = chances[0] ?? 1; below < probability; below += chances[total] ?? 1) total += 1;
  return total;
};

const normalApproximation = (probability: number, items: number): number => {
  const center = (items * (items + 1)) / 4;
  const deviation = Math.sqrt((items * (items + 1) * (2 * items + 1)) / 24);
  return Math.ceil(center + normalQuantile(probability) * deviation - 0.5);
};

/**
 * The smallest value Wilcoxon's signed-rank sum stays at or under with the given probability, if neither side
 * is favored: counted out to 50 items, then normal with continuity correction (Hollander and Wolfe, 3.1).
 *
 * @example signedRankQuantile(0.025, 10) // 9
 */
export const signedRankQuantile = (probability: number, items: number): number =>
  items <= MOST_COUNTED ? countedQuantile(probability, items) : normalApproximation(probability, items);
