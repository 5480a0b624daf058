import { describe, expect, it } from "vitest";
import { areSameWords, excludeEachOther, saysLess, wordsOf } from "./index.ts";

describe("the words of a text", () => {
  it.each([
    ["Four-speed, 3.55", ["4", "SPEED", "3.55"]],
    ["95 H", ["95", "H"]],
    [" * - * ", []],
    ["Grün / weiß", ["GRÜN", "WEISS"]],
  ])("%s", (text, words) => {
    expect(wordsOf(text)).toEqual(words);
  });
});

/** The same from either side. */
const either = (asked: (a: string, b: string) => boolean, a: string, b: string): boolean => {
  expect(asked(b, a)).toBe(asked(a, b));
  return asked(a, b);
};

describe("one thing in other words", () => {
  it.each([
    ["4-speed manual", "manual, four speed", true],
    ["95H", "95 h", true],
    ["dark green", "Dark-Green", true],
    ["dark green", "green", false],
    ["3.55", "355", false],
    ["* - *", "* - *", false],
  ])("%s and %s: %s", (a, b, same) => {
    expect(either(areSameWords, a, b)).toBe(same);
  });

  it.each([
    ["green", "dark green", true],
    ["GH", "GH 3.55", true],
    ["711 BLK", "711 black", true],
    ["711 BLK", "711 blue", false],
    ["711 black", "718 black", false],
    ["BL", "black", false],
    ["green", "red", false],
    ["", "red", false],
  ])("%s says less than %s, or abbreviates it: %s", (a, b, less) => {
    expect(either(saysLess, a, b)).toBe(less);
  });

  it.each([
    ["4-speed manual", "five speed", true],
    ["manual", "three-speed automatic", true],
    ["three on the column", "3-speed, floor shift", true],
    ["4-speed manual", "four on the floor", false],
    ["overdrive", "4-speed", false],
  ])("%s and %s exclude each other: %s", (a, b, other) => {
    expect(either(excludeEachOther, a, b)).toBe(other);
  });
});
