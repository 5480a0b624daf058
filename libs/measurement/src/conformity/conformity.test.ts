import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { estimate } from "../estimate/index.ts";
import { studentCdf } from "../student-distribution/index.ts";
import { callConformity, probabilityOfConformity } from "./index.ts";

describe("probabilityOfConformity", () => {
  it("has the results its examples state", () => {
    expect(probabilityOfConformity(estimate(509.7, 8.6), { lower: 490 })).toBeCloseTo(0.98901, 5);
    expect(callConformity(0.97)).toBe("meets");
  });

  it("uses Student's distribution of the estimate's own degrees of freedom", () => {
    expect(probabilityOfConformity(estimate(11, 1, 1), { lower: 10 })).toBeCloseTo(0.75, 12);
    expect(probabilityOfConformity(estimate(9, 1, 1), { upper: 10 })).toBeCloseTo(0.75, 12);
    expect(probabilityOfConformity(estimate(10, 1, 1), { lower: 9, upper: 11 })).toBeCloseTo(0.5, 12);
    expect(probabilityOfConformity(estimate(12, 2, 1), { lower: 10 })).toBeCloseTo(0.75, 12);
  });

  it("passes equality where nothing is uncertain", () => {
    const figures = [1.99, 2, 3, 4, 4.01].map((value) =>
      probabilityOfConformity(estimate(value, 0), { lower: 2, upper: 4 }),
    );
    expect(figures).toEqual([0, 1, 1, 1, 0]);
  });

  it("is 1 without limits", () => {
    expect(probabilityOfConformity(estimate(3, 1), {})).toBe(1);
  });

  it("is to 2e-12 what the distribution function gives, however far the limit lies", () => {
    const degrees = fc.oneof(fc.double({ min: 1, max: 300, noNaN: true }), fc.constant(Infinity));
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), degrees, (t, degreesOfFreedom) => {
        const expected = studentCdf(t, degreesOfFreedom) + 1 - 1;
        const quantity = estimate(0, 1, degreesOfFreedom);
        const figures = [{ upper: t }, { lower: -t }].map((limits) =>
          probabilityOfConformity(quantity, limits),
        );
        for (const figure of figures) expect(Math.abs(figure - expected)).toBeLessThan(2e-12);
      }),
      { numRuns: 2000 },
    );
  });

  it("is never below 0, nor more with both limits than with either", () => {
    const values = fc.double({ min: -20, max: 20, noNaN: true });
    fc.assert(
      fc.property(
        values,
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        values,
        fc.double({ min: 0, max: 10, noNaN: true }),
        (value, uncertainty, lower, width) => {
          const quantity = estimate(value, uncertainty, 7);
          const upper = lower + width;
          const both = probabilityOfConformity(quantity, { lower, upper });
          const [above, below] = [{ lower }, { upper }].map((limits) =>
            probabilityOfConformity(quantity, limits),
          );
          expect(both).toBeGreaterThanOrEqual(0);
          expect(both).toBeLessThanOrEqual(Math.min(above ?? 0, below ?? 0) + 1e-12);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe("callConformity", () => {
  it.each([
    [1, "meets"],
    [0.95, "meets"],
    [0.9499, "marginal"],
    [0.5, "marginal"],
    [0.0501, "marginal"],
    [0.05, "fails"],
    [0, "fails"],
  ])("%d: %s", (probability, call) => {
    expect(callConformity(probability)).toBe(call);
  });
});
