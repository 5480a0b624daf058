import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { classifyInterval } from "../equivalence/index.ts";
import { coverageFactor } from "../student-factor/index.ts";
import { tost } from "./index.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("tost", () => {
  it("has the result its example states", () => {
    expect(tost({ value: 0, standardUncertainty: 1, degreesOfFreedom: 30 }, -3, 3).equivalent).toBe(true);
  });

  it("has the statistics of both tests, and the larger p-value as its own", () => {
    const result = tost({ value: 1, standardUncertainty: 2, degreesOfFreedom: 1 }, -3, 5);
    expect(result.tLower).toBe(2);
    expect(result.tUpper).toBe(-2);
    expect(result.pLower).toBeCloseTo(0.5 - Math.atan(2) / Math.PI, 10);
    expect(result.pUpper).toBeCloseTo(0.5 - Math.atan(2) / Math.PI, 10);
    expect(tost({ value: 2, standardUncertainty: 1, degreesOfFreedom: 9 }, -3, 5).pValue).toBe(
      tost({ value: 2, standardUncertainty: 1, degreesOfFreedom: 9 }, -3, 5).pUpper,
    );
    expect(result.low).toBeCloseTo(1 - 2 * coverageFactor(1, 0.9), 10);
    expect(result.high).toBeCloseTo(1 + 2 * coverageFactor(1, 0.9), 10);
    expect(result.equivalent).toBe(false);
  });

  it("is not equivalent where the p-value is the significance itself", () => {
    const estimate = { value: 0, standardUncertainty: 1, degreesOfFreedom: 1 };
    const { pValue } = tost(estimate, -1, 1);
    expect(pValue).toBeCloseTo(0.25, 12);
    expect(tost(estimate, -1, 1, pValue).equivalent).toBe(false);
    expect(tost(estimate, -1, 1, pValue + 1e-9).equivalent).toBe(true);
  });

  it("refuses bounds the wrong way round or none between them", () => {
    const estimate = { value: 0, standardUncertainty: 1, degreesOfFreedom: 30 };
    const refusal = new RangeError("The lower bound must lie under the upper one: 1, 1");
    expect(() => tost(estimate, 1, 1)).toThrow(refusal);
    expect(() => tost(estimate, 2, 1)).toThrow(RangeError);
  });

  it("is equivalent exactly when its interval lies within the bounds, and as the interval rule says", () => {
    fc.assert(
      fc.property(
        between(-2, 2),
        between(0.05, 2),
        between(2, 100),
        between(0.1, 3),
        fc.constantFrom(0.025, 0.05, 0.1),
        (value, standardUncertainty, degreesOfFreedom, delta, significance) => {
          const result = tost({ value, standardUncertainty, degreesOfFreedom }, -delta, delta, significance);
          fc.pre(Math.abs(result.pValue - significance) > 1e-9);
          expect(result.equivalent).toBe(result.low > -delta && result.high < delta);
          const U = coverageFactor(degreesOfFreedom, 1 - 2 * significance) * standardUncertainty;
          expect(result.equivalent).toBe(classifyInterval(value, U, delta) === "agree");
        },
      ),
      { numRuns: 1000 },
    );
  });
});
