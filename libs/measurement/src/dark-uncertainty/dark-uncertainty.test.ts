import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { derSimonianLaird, pauleMandel } from "./index.ts";
import type { Result } from "./index.ts";

const RUNS = { numRuns: 1000 };
const result = fc.record({
  value: fc.double({ min: -100, max: 100, noNaN: true }),
  standardUncertainty: fc.double({ min: 0.1, max: 20, noNaN: true }),
});
const results = fc.array(result, { minLength: 2, maxLength: 25 });
const METHODS = [derSimonianLaird, pauleMandel];

/** Σ (x − mean)²/(u² + τ²). */
const scatterOf = (all: readonly Result[], mean: number, dark: number): number =>
  all.reduce((sum, { value, standardUncertainty: u }) => sum + (value - mean) ** 2 / (u ** 2 + dark ** 2), 0);

describe.each(METHODS)("%o", (method) => {
  it("is none where results are consistent, and the mean is the weighted one", () => {
    const { dark, mean, standardUncertainty } = method([
      { value: 1, standardUncertainty: 1 },
      { value: 2, standardUncertainty: 2 },
    ]);
    expect(dark).toBe(0);
    expect(mean).toBeCloseTo((1 + 2 / 4) / (1 + 1 / 4), 12);
    expect(standardUncertainty).toBeCloseTo(1 / Math.sqrt(1.25), 12);
  });

  it("is s² less u² where all uncertainties are equal", () => {
    const all = [1, 7, 3, 9].map((value) => ({ value, standardUncertainty: 2 }));
    expect(method(all).dark ** 2).toBeCloseTo(40 / 3 - 4, 9);
    expect(method(all).mean).toBeCloseTo(5, 12);
  });

  it("finds the dark uncertainty that was put in, in the mean of many", () => {
    const random = seededRandom(2);
    let sum = 0;
    for (let round = 0; round < 300; round += 1) {
      const all = Array.from({ length: 20 }, (_, index) => {
        const standardUncertainty = 0.5 + (index % 4) / 2;
        return { value: Math.hypot(standardUncertainty, 2) * normalDeviate(random), standardUncertainty };
      });
      sum += method(all).dark ** 2;
    }
    expect(Math.abs(sum / 300 - 4)).toBeLessThan(0.4);
  });

  it("knows no unit and no zero of the scale", () => {
    fc.assert(
      fc.property(results, (all) => {
        const moved = all.map(({ value, standardUncertainty }) => ({
          value: 10 * value + 7,
          standardUncertainty: 10 * standardUncertainty,
        }));
        const [here, there] = [method(all), method(moved)];
        expect(there.dark).toBeCloseTo(10 * here.dark, 4);
        expect(there.mean).toBeCloseTo(10 * here.mean + 7, 4);
      }),
      RUNS,
    );
  });

  it("refuses one result, and what has no uncertainty", () => {
    const one = { value: 1, standardUncertainty: 1 };
    expect(() => method([one])).toThrow(new RangeError("Dark uncertainty needs at least two results."));
    const refusal = new RangeError("Results must be numbers with positive standard uncertainties.");
    expect(() => method([one, { value: 1, standardUncertainty: 0 }])).toThrow(refusal);
    expect(() => method([one, { value: 1, standardUncertainty: Infinity }])).toThrow(refusal);
    expect(() => method([one, { value: Number.NaN, standardUncertainty: 1 }])).toThrow(refusal);
  });
});

describe("pauleMandel", () => {
  it("makes the weighted scatter what it should be, or leaves it under that", () => {
    fc.assert(
      fc.property(results, (all) => {
        const { dark, mean } = pauleMandel(all);
        const scatter = scatterOf(all, mean, dark);
        const over = scatter / (all.length - 1) - 1;
        expect(over).toBeLessThan(1e-9);
        expect(dark === 0 || over > -1e-9).toBe(true);
      }),
      RUNS,
    );
  });
});
