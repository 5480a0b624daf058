import { describe, expect, it } from "vitest";
import { judgeRatio, ratiosWithin, ratioZone } from "./index.ts";

const makers = [2.73, 3.23, 3.58, 3.73];

describe("ratioZone", () => {
  it.each([
    [3.58, makers, 3.405, 3.655],
    [3.23, makers, 2.98, 3.405],
    [2.73, makers, 2.48, 2.98],
    [3.73, makers, 3.655, 3.805],
    [3.57, makers, 3.4, 3.65],
    [3.5, [], 3.4125, 3.5875],
    [3.5, undefined, 3.4125, 3.5875],
    [3.5, [3.5, 3.514], 3.4125, 3.5875],
    [3.5, [3.516], 3.492, 3.508],
  ])("%f among %j: from %f to %f", (claimed, list, low, high) => {
    const zone = ratioZone({ claimed, makers: list }, 0.025);
    expect(zone.low).toBeCloseTo(low, 9);
    expect(zone.high).toBeCloseTo(high, 9);
  });
});

describe("judgeRatio", () => {
  it.each([
    [3.5, 3.6, "claimed-ratio"],
    [3.3, 3.6, "cannot-separate"],
    [3.1, 3.3, "other-ratio"],
    [3.7, 3.8, "other-ratio"],
  ])("%f to %f: %s", (low, high, reason) => {
    expect(judgeRatio({ low, high }, { claimed: 3.58, makers }, 0.025)).toBe(reason);
  });
});

describe("ratiosWithin", () => {
  it("quotes those within, ends included", () => {
    expect(ratiosWithin({ low: 3.23, high: 3.58 }, makers)).toEqual(["3.23", "3.58"]);
    expect(ratiosWithin({ low: 3.24, high: 3.57 }, makers)).toEqual([]);
    expect(ratiosWithin({ low: 0, high: 9 })).toEqual([]);
  });
});
