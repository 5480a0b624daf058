// Source: Sharma, Wu, Dalal (2005), table 1: 34 pairs, printed to four decimals.
import { describe, expect, it } from "vitest";
import { colorDifference } from "@evenhand/handbook/color-difference";
import published from "../../fixtures/published/ciede2000-sharma.json" with { type: "json" };

const pairs = published.pairs.map(
  ([L1 = 0, a1 = 0, b1 = 0, L2 = 0, a2 = 0, b2 = 0, expected = 0], index) => ({
    number: index + 1,
    one: { L: L1, a: a1, b: b1 },
    other: { L: L2, a: a2, b: b2 },
    expected,
  }),
);

describe("CIEDE2000", () => {
  it("has all 34 pairs", () => {
    expect(pairs).toHaveLength(34);
  });

  it.each(pairs)("pair $number: $expected, both ways round", ({ one, other, expected }) => {
    expect(colorDifference(one, other)).toBeCloseTo(expected, 4);
    expect(colorDifference(other, one)).toBeCloseTo(expected, 4);
  });
});
