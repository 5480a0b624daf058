import { describe, expect, it } from "vitest";
import { compareCode, normalizeCode } from "./index.ts";

const vin = "0EVTL82633A007146";

describe("normalizeCode", () => {
  it.each([
    ["vin", "0evtl 82633-A0O7146", "0EVTL82633A007146"],
    ["chassis-number", "ab 12-3", "AB123"],
    ["tire-identification", "DOT 0vne hkta 0301", "0VNEHKTA0301"],
    ["tire-size", "p205/75-r 15", "P205/75-R15"],
    ["tire-identification", "a2 dot 0301", "A2DOT0301"],
    ["chassis-number", "IM8GDM9AXKPO42788", "1M8GDM9AXKP042788"],
    ["casting-number", "IM8GDM9AXKPO42788", "IM8GDM9AXKPO42788"],
    ["casting-number", "7 206-315", "7206315"],
    ["text", "  Sea  Green / two-tone ", "SEA GREEN / TWO-TONE"],
    ["paint-code", "* - *", "* - *"],
  ] as const)("%s: %s", (system, text, expected) => {
    expect(normalizeCode(system, text)).toBe(expected);
  });
});

describe("compareCode", () => {
  it("agrees whatever the spaces and case", () => {
    expect(compareCode("vin", vin, "0evtl82633a007146 ", true)).toMatchObject({
      outcome: "agree",
      reason: "same-code",
      standing: "confirmed",
    });
  });

  it("doubts one look-alike, and says whose check digit passes", () => {
    const result = compareCode("vin", vin, "0EVTL8Z633A007146", true);
    expect(result).toMatchObject({ outcome: "doubtful", reason: "one-look-alike", direction: "neither" });
    expect(result.figures).toMatchObject({ passes: "a", differsAt: [6] });
    expect(compareCode("vin", "0EVTL8Z633A007146", vin, true).figures).toMatchObject({ passes: "b" });
  });

  it("doubts one exchange of neighbors", () => {
    const result = compareCode("casting-number", "7206315", "7260315", true);
    expect(result).toMatchObject({ outcome: "doubtful", reason: "two-exchanged" });
    expect(result.figures).toMatchObject({ passes: null, differsAt: [2, 3] });
  });

  it("differs otherwise", () => {
    expect(compareCode("casting-number", "7206315", "7206312", true)).toMatchObject({
      outcome: "differ",
      reason: "other-code",
    });
    expect(compareCode("casting-number", "720631", "7206315", true).figures).toMatchObject({
      differsAt: [6],
    });
  });

  it("agrees on texts that differ in nothing a misreading could be", () => {
    expect(compareCode("text", "blue", "BLUE", true)).toMatchObject({
      outcome: "agree",
      figures: { of: "code", differsAt: [] },
    });
  });

  it("asks a chassis number of 17 characters for its check digit too", () => {
    expect(compareCode("chassis-number", vin, "0EVTL8Z633A007146", true).figures).toMatchObject({
      passes: "a",
    });
  });

  it("says when both or neither pass", () => {
    expect(compareCode("vin", vin, "11111111111111111", true).figures).toMatchObject({ passes: "both" });
    expect(compareCode("vin", "11111111111111112", "11111111111111113", true).figures).toMatchObject({
      passes: "neither",
    });
  });

  it("judges no check digit where none applies", () => {
    expect(compareCode("vin", vin, "0EVTL8Z633A007146", false).figures).toMatchObject({ passes: null });
    expect(compareCode("vin", vin.slice(1), vin, true).figures).toMatchObject({ passes: null });
    expect(compareCode("chassis-number", "5S123", "55123", true).figures).toMatchObject({ passes: null });
    expect(compareCode("vin", vin, vin.slice(1), true).figures).toMatchObject({ passes: null });
    expect(compareCode("text", vin, "0EVTL8Z633A007146", true).figures).toMatchObject({ passes: null });
  });
});

/** Outcome and reason, the same from either side. */
const either = (system: Parameters<typeof compareCode>[0], a: string, b: string): string => {
  const [there, back] = [compareCode(system, a, b, false), compareCode(system, b, a, false)];
  expect([back.outcome, back.reason]).toEqual([there.outcome, there.reason]);
  return `${there.outcome}: ${there.reason}`;
};

describe("a number read off worn or painted metal", () => {
  it.each([
    ["a three for an eight", "7306215", "7806215", "doubtful: one-look-alike"],
    ["a one for a seven, at the end", "4306221", "4306227", "doubtful: one-look-alike"],
    ["an E for an F, at the beginning", "E306221", "F306221", "doubtful: one-look-alike"],
    ["a three for a four, which look like nothing of each other", "7306215", "7406215", "differ: other-code"],
    ["two characters at once", "7306213", "7806218", "differ: other-code"],
  ])("%s", (_name, a, b, expected) => {
    expect(either("casting-number", a, b)).toBe(expected);
  });
});

describe("a number with a character too few", () => {
  it.each([
    ["dropped in the middle", "7206315", "720315", "doubtful: one-dropped"],
    ["dropped at the beginning", "7206315", "206315", "doubtful: one-dropped"],
    ["dropped at the end", "7206315", "720631", "doubtful: one-dropped"],
    ["one of a pair", "7206615", "720615", "doubtful: one-dropped"],
    ["of four that are left", "72063", "7206", "doubtful: one-dropped"],
    ["of three that are left, which say too little", "7206", "720", "differ: other-code"],
    ["two of them", "7206315", "72031", "differ: other-code"],
    ["and another one misread", "7206315", "720915", "differ: other-code"],
    ["and all others in other places", "7206315", "136027", "differ: other-code"],
  ])("%s", (_name, a, b, expected) => {
    expect(either("vin", a, b)).toBe(expected);
  });

  it("is no slip in a tire's size, where every character is a size", () => {
    expect(either("tire-size", "P205/75-R15", "P205/75-R1S")).toBe("differ: other-code");
    expect(either("tire-size", "P205/75-R15", "P205/75-R1")).toBe("differ: other-code");
    expect(either("tire-size", "P205/75-R15", "P205/75-R15")).toBe("agree: same-code");
  });
});

describe("what people write of one thing in their own way", () => {
  it.each([
    ["a year, and a date in it", "date-code", "2019", "06/2019", "consistent: says-less"],
    ["a year, and a date in another", "date-code", "2018", "06/2019", "differ: other-code"],
    ["a year in other words", "date-code", "done 2021", "2021", "consistent: says-less"],
    ["a year of two digits", "date-code", "72", "1972", "consistent: says-less"],
    ["another year of two digits", "date-code", "72", "1971", "differ: other-code"],
    ["words for a date", "date-code", "new hoses", "2004", "incomparable: own-words"],
    ["words on both sides", "chassis-number", "matching", "none visible", "incomparable: own-words"],
    ["a size without its construction", "tire-size", "205-70-14", "205/70R14", "consistent: says-less"],
    ["two constructions", "tire-size", "205/70R14", "205/70B14", "differ: other-code"],
    ["an old size, whose dash is its construction", "tire-size", "6.95-14", "6.95R14", "differ: other-code"],
    ["words for a number", "casting-number", "matches", "4417", "incomparable: own-words"],
    ["the end of a chassis number", "chassis-number", "330914", "72-330914", "consistent: says-less"],
    ["too little of its end", "chassis-number", "0914", "72-330914", "differ: other-code"],
    ["a color without its shade", "paint-code", "dark green", "green", "consistent: says-less"],
    ["another color", "paint-code", "dark green", "red", "differ: other-code"],
    ["a code without what follows it", "text", "GH-3.55", "GH", "consistent: says-less"],
    ["an abbreviation", "paint-code", "711 BLK", "711 black", "consistent: says-less"],
    ["a rating with a space", "text", "95H", "95 H", "agree: same-code"],
    ["figures in words", "description", "4-speed manual", "four speed, manual", "agree: same-code"],
    [
      "a gearbox told otherwise",
      "description",
      "4-speed manual",
      "four on the floor",
      "incomparable: own-words",
    ],
    ["another gearbox", "description", "4-speed manual", "five speed", "differ: other-code"],
    ["manual and automatic", "description", "manual", "automatic", "differ: other-code"],
    [
      "a trick to start it",
      "own-words",
      "two pumps, then choke",
      "pull the choke first",
      "incomparable: own-words",
    ],
  ] as const)("%s", (_name, system, a, b, expected) => {
    expect(either(system, a, b)).toBe(expected);
  });
});
