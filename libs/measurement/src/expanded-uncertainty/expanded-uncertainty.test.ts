import { describe, expect, it } from "vitest";
import { coverageFactor } from "../student-factor/index.ts";
import { expandedUncertainty } from "./index.ts";

describe("expandedUncertainty", () => {
  it("has the result its example states", () => {
    expect(expandedUncertainty({ standardUncertainty: 2, degreesOfFreedom: 30 })).toBeCloseTo(4.0845449, 7);
  });

  it("reads the coverage", () => {
    const U = expandedUncertainty({ standardUncertainty: 2, degreesOfFreedom: 5 }, 0.99);
    expect(U).toBe(2 * coverageFactor(5, 0.99));
  });

  it("is 0 without uncertainty, whatever the degrees of freedom", () => {
    expect(expandedUncertainty({ standardUncertainty: 0, degreesOfFreedom: Infinity })).toBe(0);
    expect(expandedUncertainty({ standardUncertainty: 0, degreesOfFreedom: Number.NaN })).toBe(0);
  });
});
