import { describe, expect, it } from "vitest";
import { datesIn, isYearOf } from "./index.ts";

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

describe("a year alone", () => {
  it.each([
    ["2019", "06/2019", true],
    ["done 2021", "2021", true],
    ["72", "1972", true],
    ["'72", "May 1972", true],
    ["2018", "06/2019", false],
    ["06/2019", "2019", false],
    ["7 of 2019", "2019", false],
    ["4417", "2019", false],
  ])("%s, of %s: %s", (year, other, is) => {
    expect(isYearOf(year, other)).toBe(is);
  });
});
