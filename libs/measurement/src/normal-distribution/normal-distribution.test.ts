import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalCdf, normalQuantile } from "./index.ts";

describe("normal distribution", () => {
  it("has the results its examples state", () => {
    expect(normalCdf(1.959963984540054)).toBeCloseTo(0.975, 15);
    expect(normalQuantile(0.975)).toBe(1.9599639845400538);
    expect(normalCdf(0)).toBe(0.5);
  });

  it("has quantiles that its probabilities undo", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (p) => {
        expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 12);
      }),
      { numRuns: 1000 },
    );
  });
});
