import { describe, expect, it } from "vitest";
import { signedRankQuantile } from "./signed-rank.ts";

/** Counted out: every rank is in the sum or not, each with ½. */
const counted = (probability: number, items: number): number => {
  const chances = new Float64Array((items * (items + 1)) / 2 + 1);
  chances[0] = 1;
  for (let rank = 1; rank <= items; rank += 1) {
    for (let total = chances.length - 1; total >= 0; total -= 1) {
      chances[total] = ((chances[total] ?? 0) + (chances[total - rank] ?? 0)) / 2;
    }
  }
  let [total, below] = [0, chances[0] ?? 0];
  while (below < probability) {
    total += 1;
    below += chances[total] ?? 1;
  }
  return total;
};

describe("signedRankQuantile", () => {
  it("has the result its example states", () => {
    expect(signedRankQuantile(0.025, 10)).toBe(9);
  });

  it.each([51, 60, 75, 99, 100, 101, 106, 128, 150, 177, 200, 250, 300])(
    "is the counted one for %d items",
    (items) => {
      expect(signedRankQuantile(0.025, items)).toBe(counted(0.025, items));
      expect(signedRankQuantile(0.05, items)).toBe(counted(0.05, items));
    },
  );
});
