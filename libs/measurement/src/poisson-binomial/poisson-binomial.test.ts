import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { poissonBinomialTail } from "./index.ts";

/** By every outcome there is. */
const byHand = (chances: readonly number[], successes: number): number => {
  let sum = 0;
  for (let outcome = 0; outcome < 2 ** chances.length; outcome += 1) {
    const hits = chances.map((_, index) => Math.floor(outcome / 2 ** index) % 2 === 1);
    if (hits.filter(Boolean).length < successes) continue;
    sum += chances.reduce(
      (product, chance, index) => product * (hits[index] === true ? chance : 1 - chance),
      1,
    );
  }
  return sum;
};

describe("poissonBinomialTail", () => {
  it("is what all outcomes add up to", () => {
    const chance = fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(0, 1));
    fc.assert(
      fc.property(
        fc.array(chance, { maxLength: 8 }),
        fc.integer({ min: -1, max: 9 }),
        (chances, successes) => {
          expect(poissonBinomialTail(chances, successes)).toBeCloseTo(byHand(chances, successes), 12);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("keeps its digits in the far tail", () => {
    expect(
      poissonBinomialTail(
        Array.from({ length: 20 }, () => 0.01),
        20,
      ) / 1e-40,
    ).toBeCloseTo(1, 9);
  });

  it("refuses what is no chance", () => {
    expect(() => poissonBinomialTail([0.5, 1.1], 1)).toThrow(
      new RangeError("A chance must lie between 0 and 1: 1.1"),
    );
    expect(() => poissonBinomialTail([-0.1], 0)).toThrow(RangeError);
  });
});
