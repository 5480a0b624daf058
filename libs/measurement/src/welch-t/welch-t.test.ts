import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pooledDifference, summarize, tTest, welchDifference } from "./index.ts";

const a = { mean: 3, standardDeviation: 2, size: 4 };
const b = { mean: 1, standardDeviation: 2, size: 4 };

describe("Welch's and the pooled t", () => {
  it("has the results its examples state", () => {
    expect(summarize([1, 2, 3])).toEqual({ mean: 2, standardDeviation: 1, size: 3 });
    expect(welchDifference(a, b)).toMatchObject({ value: 2, degreesOfFreedom: 6 });
    expect(welchDifference(a, b).standardUncertainty).toBeCloseTo(Math.SQRT2, 12);
    expect(pooledDifference(a, b)).toMatchObject({ value: 2, degreesOfFreedom: 6 });
    expect(pooledDifference(a, b).standardUncertainty).toBeCloseTo(Math.SQRT2, 12);
    const { t, degreesOfFreedom, pValue } = tTest({ value: 2, standardUncertainty: 1, degreesOfFreedom: 1 });
    expect([t, degreesOfFreedom]).toEqual([2, 1]);
    expect(pValue).toBeCloseTo(1 - (2 / Math.PI) * Math.atan(2), 10);
  });

  it("pools by degrees of freedom where sizes and spreads differ", () => {
    const pooled = pooledDifference(
      { mean: 5, standardDeviation: 1, size: 3 },
      { mean: 4, standardDeviation: 2, size: 5 },
    );
    expect(pooled.degreesOfFreedom).toBe(6);
    expect(pooled.standardUncertainty).toBeCloseTo(Math.sqrt(((2 * 1 + 4 * 4) / 6) * (1 / 3 + 1 / 5)), 12);
  });

  it("measures from the supposed difference", () => {
    const estimate = { value: 2, standardUncertainty: 0.5, degreesOfFreedom: 9 };
    expect(tTest(estimate, 3).t).toBe(-2);
    expect(tTest(estimate, 3).pValue).toBe(tTest(estimate, 1).pValue);
    expect(tTest(estimate, 2).pValue).toBeCloseTo(1, 12);
  });

  it("never has more degrees of freedom than the pooled test", () => {
    const summary = fc.record({
      mean: fc.double({ min: -10, max: 10, noNaN: true }),
      standardDeviation: fc.double({ min: 0.1, max: 10, noNaN: true }),
      size: fc.integer({ min: 2, max: 50 }),
    });
    fc.assert(
      fc.property(summary, summary, (one, other) => {
        expect(welchDifference(one, other).degreesOfFreedom).toBeLessThanOrEqual(
          pooledDifference(one, other).degreesOfFreedom * (1 + 1e-9),
        );
      }),
      { numRuns: 1000 },
    );
  });
});
