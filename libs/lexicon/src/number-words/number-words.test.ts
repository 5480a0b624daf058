import { expect, test } from "vitest";
import { tokenize } from "../tokenize/index.ts";
import { numbersIn } from "./index.ts";

const read = (text: string): number[] => numbersIn(tokenize(text)).map(({ value }) => value);

test.each([
  ["ninety-seven thousand four hundred", [97400]],
  ["sixty four thousand two hundred and eighteen", [64218]],
  ["a hundred and twelve thousand six hundred and fifty", [112650]],
  ["point oh-eight", [0.08]],
  ["point seven five", [0.75]],
  ["twelve point six eight", [12.68]],
  ["three quarters", [0.75]],
  ["three eighths of an inch", [0.375]],
  ["two and a half inches", [2.5]],
  ["half an inch", [0.5]],
  ["sixty-five psi", [65]],
  ["one forty-five, one forty-eight", [145, 148]],
  ["one eighty one eighty five one eighty and one eighty two", [180, 185, 180, 182]],
  ["one ten, one oh eight", [110, 108]],
  ["a hundred and fifty on one", [150, 1]],
  ["two hundred sixty", [260]],
  ["two hundred and thirty", [230]],
  ["twenty-two hundred", [2200]],
  ["six fifty", [650]],
  ["64,218 miles", [64218]],
  ["12.6 volts", [12.6]],
  ["seven thirty-seconds", [7, 30]],
  ["seventy three thousand and five hundred", [73500]],
  ["two thousand", [2000]],
  ["one and a half", [1.5]],
])("%s", (text, expected) => {
  expect(read(text)).toEqual(expected);
});
