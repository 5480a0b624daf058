import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalCdf, normalQuantile } from "../normal-distribution/index.ts";
import { studentCdf, studentQuantile } from "./index.ts";

const degrees = fc.double({ min: 0.8, max: 1e4, noNaN: true });

describe("Student's distribution", () => {
  it("has the results its examples state", () => {
    expect(studentCdf(1, 1)).toBeCloseTo(0.75, 15);
    expect(studentQuantile(0.975, 30)).toBeCloseTo(2.0422724563, 10);
  });

  it("is the normal where the degrees of freedom are infinite", () => {
    expect(studentCdf(1.3, Infinity)).toBe(normalCdf(1.3));
    expect(studentQuantile(0.9, Infinity)).toBe(normalQuantile(0.9));
  });

  it("has quantiles that its probabilities undo, and is symmetric", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1 - 1e-4, noNaN: true }), degrees, (p, v) => {
        expect(studentCdf(studentQuantile(p, v), v)).toBeCloseTo(p, 9);
        expect(studentCdf(p, v) + studentCdf(-p, v)).toBeCloseTo(1, 12);
      }),
      { numRuns: 1000 },
    );
  });
});
