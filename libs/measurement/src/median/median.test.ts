import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { median } from "./index.ts";

describe("median", () => {
  it("has the results its examples state", () => {
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 2, 3])).toBe(2.5);
  });

  it("sorts by value, not as text, and leaves the list alone", () => {
    const values = [10, 9, -2, -10, 1];
    expect(median(values)).toBe(1);
    expect(values).toEqual([10, 9, -2, -10, 1]);
    expect(median([5])).toBe(5);
    expect(median([5, 7])).toBe(6);
  });

  it("refuses an empty list", () => {
    expect(() => median([])).toThrow(new RangeError("A median needs at least one value."));
  });

  it("has as many values below as above", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1 }), (values) => {
        const middle = median(values);
        const below = values.filter((value) => value < middle).length;
        const above = values.filter((value) => value > middle).length;
        expect(below).toBeLessThanOrEqual(values.length / 2);
        expect(above).toBeLessThanOrEqual(values.length / 2);
      }),
      { numRuns: 1000 },
    );
  });
});
