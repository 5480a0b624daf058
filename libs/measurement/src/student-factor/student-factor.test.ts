import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { studentQuantile } from "../student-distribution/index.ts";
import { coverageFactor } from "./index.ts";

describe("coverageFactor", () => {
  it("has the results its examples state", () => {
    expect(coverageFactor(30)).toBeCloseTo(2.042272456, 9);
    expect(coverageFactor(Infinity, 0.95)).toBeCloseTo(1.959963985, 9);
  });

  it("holds 95 % unless told otherwise", () => {
    expect(coverageFactor(7)).toBe(coverageFactor(7, 0.95));
  });

  it("is the two-sided quantile at any degrees of freedom and coverage", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 1e6, noNaN: true }),
        fc.double({ min: 0.5, max: 0.999, noNaN: true }),
        (degreesOfFreedom, coverage) => {
          const quantile = studentQuantile((1 + coverage) / 2, degreesOfFreedom);
          expect(coverageFactor(degreesOfFreedom, coverage) / quantile).toBeCloseTo(1, 8);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("answers the same when asked again, after many other coverages", () => {
    const first = coverageFactor(12.5, 0.93);
    const others = Array.from({ length: 40 }, (_, i) => coverageFactor(12.5, 0.8 + i / 1000));
    expect(others).toEqual(Array.from({ length: 40 }, (_, i) => coverageFactor(12.5, 0.8 + i / 1000)));
    expect(coverageFactor(12.5, 0.93)).toBe(first);
  });

  it("falls as degrees of freedom rise", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.6, max: 1e4, noNaN: true }),
        fc.double({ min: 1.001, max: 3, noNaN: true }),
        (degreesOfFreedom, more) => {
          expect(coverageFactor(degreesOfFreedom * more)).toBeLessThan(coverageFactor(degreesOfFreedom));
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("is continuous where the series begins", () => {
    expect(coverageFactor(0.999999)).toBeCloseTo(coverageFactor(1), 3);
    expect(coverageFactor(1)).toBeCloseTo(12.706204736, 8);
    expect(coverageFactor(0.5)).toBeCloseTo(studentQuantile(0.975, 0.5), 6);
  });

  it.each([
    [0, 0.95, "Degrees of freedom must be positive: 0"],
    [Number.NaN, 0.95, "Degrees of freedom must be positive: NaN"],
    [3, 0, "The coverage must lie between 0 and 1: 0"],
    [3, 1, "The coverage must lie between 0 and 1: 1"],
  ])("refuses %d, %d", (degreesOfFreedom, coverage, message) => {
    expect(() => coverageFactor(degreesOfFreedom, coverage)).toThrow(new RangeError(message));
  });
});
