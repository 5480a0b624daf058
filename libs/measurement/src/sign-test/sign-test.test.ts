import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { signTest } from "./index.ts";

describe("signTest", () => {
  it("has the result its example states", () => {
    expect(signTest([1, 1, 1, 1, 1, 1, 1, 1, -1, 0])).toEqual({
      positive: 8,
      negative: 1,
      ties: 1,
      pValue: 0.0390625,
    });
  });

  it("is 1 where the signs are even or nothing takes part", () => {
    expect(signTest([1, -1]).pValue).toBe(1);
    expect(signTest([])).toEqual({ positive: 0, negative: 0, ties: 0, pValue: 1 });
    expect(signTest([0, 0, 0])).toEqual({ positive: 0, negative: 0, ties: 3, pValue: 1 });
  });

  it("is the share of all patterns of signs at least as uneven", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -2, max: 2 }), { maxLength: 10 }), (differences) => {
        const signs = differences.filter((difference) => difference !== 0);
        const uneven = Math.abs(signs.reduce((sum, sign) => sum + Math.sign(sign), 0));
        const patterns = Array.from({ length: 2 ** signs.length }, (_, pattern) => {
          const ones = pattern.toString(2).replaceAll("0", "").length;
          return Math.abs(2 * ones - signs.length);
        });
        const atLeast = patterns.filter((pattern) => pattern >= uneven).length;
        expect(signTest(differences).pValue).toBeCloseTo(atLeast / patterns.length, 12);
      }),
      { numRuns: 1000 },
    );
  });
});
