import { chassisPattern } from "@evenhand/handbook/chassis-pattern";
import { dateCandidates } from "@evenhand/handbook/date-code";
import { dayOf } from "@evenhand/handbook/day";
import { partialVin } from "@evenhand/handbook/partial-vin";
import { describe, expect, it } from "vitest";
import { chassisPatternWrong, dateFormWrong, stampWrong } from "./code-forms";

describe("a form of chassis numbers", () => {
  it.each(["T[MN]###[RW]#####", "", "@@ ##-##", "???"])("takes %j", (pattern) => {
    expect(chassisPatternWrong(pattern)).toBeUndefined();
  });

  it.each([
    ["1[35", "brackets"],
    ["1]35", "brackets"],
    ["1[]5", "brackets"],
    ["[[1]]", "brackets"],
    ["[A-F]##", "bracket-range"],
  ])("refuses %j", (pattern, reason) => {
    expect(chassisPatternWrong(pattern)).toBe(reason);
  });

  it("refuses a range because the rule reads it as two letters", () => {
    expect(chassisPattern({ number: "C12", pattern: "[A-F]##" }).reason).toBe("does-not-match");
    expect(chassisPattern({ number: "C12", pattern: "[ABCDEF]##" }).reason).toBe("matches");
  });
});

describe("a stamp that follows from the chassis number", () => {
  it.each(["{6}{4-5}{7-11}", "", "ABC", "{ 7 - 11 }"])("takes %j", (derivation) => {
    expect(stampWrong(derivation)).toBeUndefined();
  });

  it.each(["{", "1{6", "{}", "{x}", "{0}", "{9-3}", "{1}}"])("refuses %j", (derivation) => {
    expect(stampWrong(derivation)).toBe("braces");
  });

  it("is read with spaces as the rule reads it", () => {
    const read = partialVin({ stamp: "20871", chassisNumber: "TM467R20871", derivation: "{ 7 - 11 }" });
    expect(read.reason).toBe("equal");
  });
});

describe("a form of dates", () => {
  it.each(["M d y", "N-d-yy", "yyyy w", "y"])("takes %j", (form) => {
    expect(dateFormWrong(form)).toBeUndefined();
  });

  it.each([
    ["d", "no-year"],
    ["", "no-year"],
    ["y M y", "part-of-date-twice"],
    ["yy yyyy", "part-of-date-twice"],
    ["M m y", "part-of-date-twice"],
    ["d d y", "part-of-date-twice"],
  ])("refuses %j", (form, reason) => {
    expect(dateFormWrong(form)).toBe(reason);
  });

  it("refuses what the rule can read nothing by", () => {
    const within = { first: dayOf(1955, 1, 1), last: dayOf(1979, 12, 31) };
    expect(dateCandidates("15", "d", within, 1967)).toEqual([]);
    expect(dateCandidates("A 15", "M d", within, 1967)).toHaveLength(1);
    expect(dateCandidates("5 5 7", "d d y", within)).toEqual([]);
    expect(dateCandidates("A 15 7", "M d y", within)).toHaveLength(3);
  });
});
