import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { betaCdf, betaQuantile } from "./index.ts";

const shape = fc.double({ min: 0.5, max: 200, noNaN: true });

describe("beta distribution", () => {
  it("has the results its examples state", () => {
    expect(betaCdf(0.5, 2, 2)).toBe(0.5);
    expect(betaQuantile(0.5, 2, 2)).toBeCloseTo(0.5, 14);
  });

  it("has quantiles that its probabilities undo", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), shape, shape, (p, alpha, beta) => {
        expect(betaCdf(betaQuantile(p, alpha, beta), alpha, beta)).toBeCloseTo(p, 8);
      }),
      { numRuns: 1000 },
    );
  });
});
