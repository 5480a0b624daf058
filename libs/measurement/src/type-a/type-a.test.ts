import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mean, sampleStandardDeviation, standardDeviationOfMean, typeA } from "./index.ts";

const samples = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 2, maxLength: 30 });

describe("type A evaluation", () => {
  it("has the results its examples state", () => {
    expect(mean([6, 6, 5])).toBe(5.666666666666667);
    expect(sampleStandardDeviation([2, 4, 4, 4, 5, 5, 7, 9])).toBe(2.138089935299395);
    expect(standardDeviationOfMean([1, 2, 3, 4])).toBe(0.6454972243679028);
    expect(typeA([1, 2, 3, 4])).toEqual({
      value: 2.5,
      standardUncertainty: 0.6454972243679028,
      degreesOfFreedom: 3,
    });
  });

  it("has no spread for equal values", () => {
    expect(typeA([0.1, 0.1])).toEqual({ value: 0.1, standardUncertainty: 0, degreesOfFreedom: 1 });
  });

  it("refuses too few values", () => {
    expect(() => mean([])).toThrow(new RangeError("A mean needs at least one value."));
    expect(mean([3])).toBe(3);
    const refusal = new RangeError("A standard deviation needs at least two values.");
    expect(() => sampleStandardDeviation([3])).toThrow(refusal);
    expect(() => typeA([3])).toThrow(refusal);
  });

  it("moves with its values and stretches with them", () => {
    fc.assert(
      fc.property(samples, fc.double({ min: -100, max: 100, noNaN: true }), (values, shift) => {
        const [before, after] = [typeA(values), typeA(values.map((value) => 3 * value + shift))];
        expect(after.value).toBeCloseTo(3 * before.value + shift, 8);
        expect(after.standardUncertainty).toBeCloseTo(3 * before.standardUncertainty, 8);
        expect(before.value).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
        expect(before.value).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });
});
