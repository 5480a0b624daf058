import { tokenize } from "@evenhand/lexicon/tokenize";
import { expect, test } from "vitest";
import { tireDateIn, tireSizeIn } from "./tire-codes.ts";

const sizeOf = (text: string): string | undefined => {
  const tokens = tokenize(text);
  return tireSizeIn(tokens, 0, tokens.length);
};

test.each([
  ["two thirty-five sixty fifteen all round", "235/60-15"],
  ["they are two oh five seventy R fourteen", "205/70R14"],
  ["a hundred eighty-five seventy R fourteen", "185/70R14"],
  ["one seventy-five seventies on thirteens", "175/70-13"],
  ["one sixty-five thirteen", "165-13"],
  ["165 R 14s", "165R14"],
  ["six seventy fifteens", "6.70-15"],
  ["seven hundred sixteens", "7.00-16"],
  ["G seventy-eight fifteen", "G78-15"],
  ["tread is six millimeters all round", undefined],
  ["they hold twenty-eight pounds", undefined],
  ["twelve years old", undefined],
])("the size in %j is %s", (text, size) => {
  expect(sizeOf(text)).toBe(size);
});

const dateOf = (text: string): string | undefined => {
  const tokens = tokenize(text);
  return tireDateIn(tokens, 0, tokens.length, 2026);
};

test.each([
  ["thirty-two nineteen", "3219"],
  ["oh eight twenty-one", "0821"],
  ["four four one eight", "4418"],
  ["3219", "3219"],
  ["week thirty-two of twenty nineteen", "3219"],
  ["sixty nineteen", undefined],
  ["ten forty", undefined],
])("the date code in %j is %s", (text, code) => {
  expect(dateOf(text)).toBe(code);
});
