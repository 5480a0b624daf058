import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalQuantile } from "../normal-distribution/index.ts";
import { NORMAL_CONSISTENCY, mad } from "./index.ts";

describe("mad", () => {
  it("has the result its example states", () => {
    expect(mad([1, 1, 2, 2, 4, 6, 9])).toBe(1);
  });

  it("has a constant that makes it σ of a normal sample", () => {
    expect(NORMAL_CONSISTENCY).toBeCloseTo(1 / normalQuantile(0.75), 12);
  });

  it("does not move with the values, stretches with them, and is not led by one far out", () => {
    const values = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1 });
    fc.assert(
      fc.property(values, fc.integer(), (list, shift) => {
        expect(mad(list.map((value) => value * -2 + (shift % 1000)))).toBe(2 * mad(list));
      }),
      { numRuns: 1000 },
    );
    expect(mad([1, 2, 3, 4, 5])).toBe(mad([1, 2, 3, 4, 5000]));
  });
});
