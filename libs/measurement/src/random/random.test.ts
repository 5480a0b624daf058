import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mean, sampleStandardDeviation } from "../type-a/index.ts";
import { normalDeviate, seededRandom } from "./index.ts";

const draw = (seed: number): number[] => Array.from({ length: 5 }, seededRandom(seed));

describe("seededRandom", () => {
  it("gives the same sequence for the same seed, and another for another", () => {
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
  });

  it("gives numbers from 0 to under 1, evenly", () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const drawn = Array.from({ length: 20 }, seededRandom(seed));
        expect(drawn.every((value) => value >= 0 && value < 1)).toBe(true);
        expect(new Set(drawn).size).toBe(20);
      }),
      { numRuns: 1000 },
    );
    const many = Array.from({ length: 20_000 }, seededRandom(1));
    expect(mean(many)).toBeCloseTo(0.5, 2);
    expect(sampleStandardDeviation(many)).toBeCloseTo(1 / Math.sqrt(12), 2);
  });
});

describe("normalDeviate", () => {
  it("has the result its example states", () => {
    expect(normalDeviate(() => 0.975)).toBe(1.9599639845400538);
  });

  it("is finite at 0, and the lowest there", () => {
    expect(normalDeviate(() => 0)).toBeGreaterThan(-9);
    expect(normalDeviate(() => 0)).toBeLessThan(normalDeviate(() => 2 ** -53));
  });

  it("has mean 0 and deviation 1", () => {
    const random = seededRandom(4);
    const many = Array.from({ length: 20_000 }, () => normalDeviate(random));
    expect(Math.abs(mean(many))).toBeLessThan(0.02);
    expect(sampleStandardDeviation(many)).toBeCloseTo(1, 1);
  });
});
