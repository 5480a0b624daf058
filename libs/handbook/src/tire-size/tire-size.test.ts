import { describe, expect, it } from "vitest";
import { findTireSize } from "./index.ts";

const brief = (text: string) => {
  const size = findTireSize(text);
  return size && [size.form, size.key, size.rim, size.construction, Number(size.diameter.value.toFixed(2))];
};

describe("findTireSize", () => {
  it.each([
    ["P205/75R15", ["metric", "205/75-15", 15, "radial", 27.11]],
    ["205/75 R 15 97S", ["metric", "205/75-15", 15, "radial", 27.11]],
    ["205/70VR14", ["metric", "205/70-14", 14, "radial", 25.3]],
    ["p205/75sr15", ["metric", "205/75-15", 15, "radial", 27.11]],
    ["205/55ZR16 91W", ["metric", "205/55-16", 16, "radial", 24.88]],
    ["T125/70D15", ["metric", "125/70-15", 15, "bias", 21.89]],
    ["215/70-14", ["metric", "215/70-14", 14, "bias", 25.85]],
    ["P225/70B15", ["metric", "225/70-15", 15, "bias-belted", 27.4]],
    ["LT235/75R15 104/101S", ["metric", "LT235/75-15", 15, "radial", 28.88]],
    ["LT235/75R15C", ["metric", "LT235/75-15", 15, "radial", 28.88]],
    ["235/75R15LT", ["metric", "LT235/75-15", 15, "radial", 28.88]],
    ["195/75R16C", ["metric", "LT195/75-16", 16, "radial", 27.52]],
    ["165R15", ["metric", "165-15", 15, "radial", 25.65]],
    ["165SR15 86S", ["metric", "165-15", 15, "radial", 25.65]],
    ["165-15", ["metric", "165-15", 15, "bias", 25.65]],
    ["31x10.50R15LT", ["flotation", "31x10.5-15", 15, "radial", 31]],
    ["31×10.50-15 LT C", ["flotation", "31x10.5-15", 15, "bias", 31]],
    ["G78-15", ["alphanumeric", "G78-15", 15, undefined, 28]],
    ["g 78 15", ["alphanumeric", "G78-15", 15, undefined, 28]],
    ["GR78-15", ["alphanumeric", "G78-15", 15, "radial", 28]],
    ["F78-14", ["alphanumeric", "F78-14", 14, undefined, 26.5]],
    ["H78-15", ["alphanumeric", "H78-15", 15, undefined, 28.54]],
    ["J78-15", ["alphanumeric", "J78-15", 15, undefined, 29.08]],
    ["E78-14B", ["alphanumeric", "E78-14", 14, undefined, 25.96]],
    ["FR70-14", ["alphanumeric", "F70-14", 14, "radial", 25.84]],
    ["A78-13", ["alphanumeric", "A78-13", 13, undefined, 22.8]],
    ["L78-16LT", ["alphanumeric", "L78-16", 16, undefined, 31.16]],
    ["6.95-14", ["numeric", "6.95-14", 14, undefined, 25.12]],
    ["695-14", ["numeric", "6.95-14", 14, undefined, 25.12]],
    ["6.70-15", ["numeric", "6.70-15", 15, undefined, 27.06]],
    ["7.50x16", ["numeric", "7.50-16", 16, undefined, 29.5]],
    ["5.60 SR 15", ["numeric", "5.60-15", 15, "radial", 25.08]],
    ["10.00-20", ["numeric", "10.00-20", 20, undefined, 38]],
  ])("reads %s", (text, expected) => {
    expect(brief(text)).toEqual(expected);
  });

  it.each([
    "205/75",
    "205/75R",
    "205-75-15",
    "I78-15",
    "O78-15",
    "P205/75R150S97",
    "xP205/75R15",
    "P205/75R15 97S extra",
    "165R15 and",
    "G78",
    "G7-15",
    "xG78-15",
    "G78-15Z",
    "6.95",
    "x6.95-14",
    "31x10.50",
    "X31x10.50R15",
    "31x10.50R15 no",
    "",
  ])("does not read %s", (text) => {
    expect(findTireSize(text)).toBeUndefined();
  });

  it("knows older sizes only roughly, and metric ones exactly", () => {
    expect(findTireSize("P205/75R15")?.diameter.standardUncertainty).toBe(0);
    expect(findTireSize("G78-15")?.diameter.standardUncertainty).toBeCloseTo((0.02 * 28) / Math.sqrt(3), 12);
    expect(findTireSize("165R15")?.diameter.standardUncertainty).toBeGreaterThan(0.29);
  });
});
