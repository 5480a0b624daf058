import { describe, expect, it } from "vitest";
import { isSameCode, normalizeCode, tireSizeText } from "./index.ts";

describe("a tire's size", () => {
  it.each([
    ["P205/75 R15 97S", "205/75R15"],
    ["205/75r15", "205/75R15"],
    ["LT 235/85R16", "235/85R16"],
    ["6.00 x 16", "6.00-16"],
    ["6.00 × 16 (tubed)", "6.00-16"],
    ["6.50-16", "6.50-16"],
    ["G78-14", "G78-14"],
    ["GR78-14", "GR78R14"],
    ["E78 B14", "E78B14"],
    ["7.50 D 20", "7.50D20"],
    ["185/80HR15", "185/80R15"],
    ["something else", "SOMETHINGELSE"],
  ])("%s means %s", (text, wanted) => {
    expect(tireSizeText(text)).toBe(wanted);
  });
});

describe("one code, written in two ways", () => {
  it.each([
    ["date-code", "1958-03-14", "14 Mar 1958", true],
    ["date-code", "1958-03", "March 14 1958", true],
    ["date-code", "March 14 1958", "1958-03", true],
    ["date-code", "1958-03-14", "1958-03-15", false],
    ["date-code", "1958-03-14", "1958-04-14", false],
    ["date-code", "1958-03-14", "1959-03-14", false],
    ["text", "built  in May 1963", "BUILT IN MAY 1963", true],
    ["text", "no date", "another", false],
    ["tire-size", "P205/75 R15 97S", "205/75R15", true],
    ["tire-size", "205/75R15", "195/75R15", false],
    ["tire-identification", "DOT AB12 XYZ 0322", "0322", true],
    ["tire-identification", "0322", "DOT AB12 XYZ 0312", false],
    ["tire-identification", "AB12XYZ 322", "322", true],
    ["tire-identification", "AB12XYZ 322", "22", false],
    ["casting-number", "7B-11802-C", "7B11802", true],
    ["casting-number", "7B-11802-C", "118", false],
    ["paint-code", "7B-11802-C", "7B11802", false],
    ["vin", "I1111 1111-11111111", "11111111111111111", true],
    ["chassis-number", "BT1100/24417", "BT 1100-24417", true],
    ["vin", "QT7140118", "QT7140119", false],
  ] as const)("%s: %s and %s: %s", (system, a, b, wanted) => {
    expect(isSameCode(system, a, b)).toBe(wanted);
    expect(isSameCode(system, b, a)).toBe(wanted);
  });

  it("keeps what is nothing but marks, and the marks of free text", () => {
    expect(normalizeCode("casting-number", "--")).toBe("--");
    expect(normalizeCode("text", " two-tone,  red / white ")).toBe("TWO-TONE, RED / WHITE");
  });
});
