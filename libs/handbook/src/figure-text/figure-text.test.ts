import { describe, expect, it } from "vitest";
import { figureText, rangeFigureText } from "./index.ts";

describe("figureText", () => {
  it.each([
    [3.2284, "1", 0.0313, "3.228 ± 0.063"],
    [3.2284, "1", 0.5, "3.2 ± 1.0"],
    [3.2284, "1", 0.0049, "3.2284 ± 0.0098"],
    [3.2284, "1", 0.00499, "3.228 ± 0.010"],
    [46_200.4, "mi", 61, "46,200 ± 122 mi"],
    [2, "1/32in", 0.3, "(2.00 ± 0.60)⁄32 in"],
    [5, "%", 1, "5.0 ± 2.0%"],
    [-0.3, "in", 0.01, "−0.300 ± 0.020 in"],
    [-0.2, "%", 5.5, "0 ± 11%"],
    [-0.0001, "in", 0.02, "0.000 ± 0.040 in"],
    [-0.6, "%", 5.5, "−1 ± 11%"],
  ])("%f %s with %f: %s", (value, unit, standardUncertainty, expected) => {
    expect(figureText({ value, unit, standardUncertainty })).toBe(expected);
  });

  it.each([
    [27.1063, "in", "27.106 in"],
    [0.1875, "in", "0.1875 in"],
    [349.847757, "in3", "349.85 in³"],
    [1967, "a", "1967"],
    [2.25, "a", "2.3"],
    [123_456_789, "mi", "123,456,789 mi"],
    [12, "d", "12"],
    [2, "1/32in", "2⁄32 in"],
    [0.75, "1", "0.75"],
    [5, "%", "5%"],
    [0.000012345678, "in", "0.000012346 in"],
  ])("%f %s alone: %s", (value, unit, expected) => {
    expect(figureText({ value, unit })).toBe(expected);
  });
});

describe("rangeFigureText", () => {
  it.each([
    [3.1042, 3.3391, "1", "3.10 to 3.34"],
    [29.0001, 28.9, "a", "29.0 to 28.9"],
    [33, 33, "d", "33"],
    [5.991, 6.007, "a", "6.0"],
    [20, 47, "d", "20 to 47"],
    [1, 2.5, "mm", "1.0 to 2.5 mm"],
  ])("%f to %f %s: %s", (low, high, unit, expected) => {
    expect(rangeFigureText({ low: Math.min(low, high), high: Math.max(low, high), unit })).toBe(
      low > high ? "28.9 to 29.0" : expected,
    );
  });
});
