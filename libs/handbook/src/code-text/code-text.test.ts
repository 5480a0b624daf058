import { describe, expect, it } from "vitest";
import { datesIn, isSameCode, normalizeCode, tireSizeText } from "./index.ts";

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

const day = (year: number, month: number, of?: number) => ({ year, month, day: of });

describe("a date", () => {
  it.each([
    ["Mar 14 1989", [day(1989, 3, 14)]],
    ["14 March '89", [day(1989, 3, 14)]],
    ["May 1963", [day(1963, 5)]],
    ["1963-05", [day(1963, 5)]],
    ["5/63", [day(1963, 5)]],
    ["1958-03-14", [day(1958, 3, 14)]],
    ["3/14/58", [day(1958, 3, 14)]],
    ["14.3.1958", [day(1958, 3, 14)]],
    ["3/4/58", [day(1958, 3, 4), day(1958, 4, 3)]],
    ["12/12/58", [day(1958, 12, 12), day(1958, 12, 12)]],
    ["1958-13-14", []],
    ["1963-13", []],
    ["13/63", []],
    ["Mar 32 1989", []],
    ["Mar 14 5 1989", []],
    ["Mar 14", [day(1914, 3)]],
    ["14 Abc 1989", []],
    ["3/14/5", []],
    ["1 2 3 4", []],
    ["19580314", []],
  ])("%s", (text, wanted) => {
    expect(datesIn(text)).toEqual(wanted);
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
