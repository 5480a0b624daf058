import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { coverageFactor } from "../student-factor/index.ts";
import { sampleStandardDeviation } from "../type-a/index.ts";
import { PRIOR_DEGREES, moderatedVariance } from "./index.ts";

const spread = (standardDeviation: number, degreesOfFreedom: number) => ({
  standardDeviation,
  degreesOfFreedom,
});
const size = fc.double({ min: 1e-3, max: 50, noNaN: true });
const few = fc.integer({ min: 1, max: 5 });

/** U of one reading whose samples scatter so, where s₀ = 1. */
const U = (s: number, nu: number): number => {
  const moderated = moderatedVariance(spread(s, nu), spread(1, 30));
  return coverageFactor(moderated.degreesOfFreedom) * moderated.standardDeviation;
};

describe("moderatedVariance", () => {
  it("weighs both by their degrees of freedom, six for the prior", () => {
    const { standardDeviation, degreesOfFreedom } = moderatedVariance(spread(3, 2), spread(1, 30));
    expect(standardDeviation ** 2).toBeCloseTo((6 * 1 + 2 * 9) / 8, 12);
    expect(degreesOfFreedom).toBeCloseTo(1 / (1 / 3 / 30 + 2 / 3 / 8), 12);
    expect(PRIOR_DEGREES).toBe(6);
    expect(moderatedVariance(spread(3, 2), spread(1, 30), 0).standardDeviation).toBe(3);
    expect(moderatedVariance(spread(3, 2), spread(1, Infinity)).degreesOfFreedom).toBeCloseTo(12, 12);
  });

  it("is never under s₀, and s₀ itself where nothing more was seen", () => {
    const expected = spread(1, 30);
    for (const seen of [spread(0, 2), spread(1, 2), spread(9, 0), spread(9, Number.NaN)]) {
      expect(moderatedVariance(seen, expected)).toBe(expected);
    }
    fc.assert(
      fc.property(size, few, size, (s, nu, declared) => {
        const { standardDeviation } = moderatedVariance(spread(s, nu), spread(declared, 30));
        expect(standardDeviation).toBeGreaterThanOrEqual(declared);
        expect(standardDeviation).toBeLessThanOrEqual(Math.max(declared, s) * (1 + 1e-12));
      }),
      { numRuns: 1000 },
    );
  });

  it("takes no step: a little more scatter is a little more uncertainty, never less", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), few, (s, nu) => {
        const [here, farther] = [U(s, nu), U(s + 1e-6, nu)];
        expect(farther).toBeGreaterThanOrEqual(here - 1e-12);
        expect(farther - here).toBeLessThan(1e-5);
      }),
      { numRuns: 1000 },
    );
  });

  it("takes what scatters without any repeatability at its own", () => {
    const { standardDeviation, degreesOfFreedom } = moderatedVariance(spread(2, 2), spread(0, 30));
    expect(standardDeviation).toBeCloseTo(Math.sqrt((2 * 4) / 8), 12);
    expect(degreesOfFreedom).toBeCloseTo(8, 12);
  });

  it("holds the truth of three readings as often as it says, where they scatter as declared", () => {
    const random = seededRandom(8);
    let held = 0;
    for (let round = 0; round < 8000; round += 1) {
      const values = Array.from({ length: 3 }, () => normalDeviate(random));
      const seen = spread(sampleStandardDeviation(values), 2);
      const { standardDeviation, degreesOfFreedom } = moderatedVariance(seen, spread(1, Infinity));
      const mean = values.reduce((sum, value) => sum + value, 0) / 3;
      if (Math.abs(mean) <= (coverageFactor(degreesOfFreedom) * standardDeviation) / Math.sqrt(3)) held += 1;
    }
    expect(held / 8000).toBeGreaterThan(0.945);
    expect(held / 8000).toBeLessThan(0.975);
  });

  it("refuses what is negative", () => {
    const refusal = new RangeError("Standard deviations must be numbers from 0.");
    expect(() => moderatedVariance(spread(-1, 2), spread(1, 30))).toThrow(refusal);
    expect(() => moderatedVariance(spread(1, 2), spread(-1, 30))).toThrow(refusal);
    expect(() => moderatedVariance(spread(1, 2), spread(1, 30), -1)).toThrow(
      new RangeError("The prior's degrees of freedom must be from 0: -1"),
    );
  });
});
