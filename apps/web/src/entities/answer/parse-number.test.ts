import { expect, test } from "vitest";
import { parseNumber } from "./parse-number.ts";

test("a number as a phone's pad gives it", () => {
  expect(["5.8", "5,8", " 12 ", "−3", "-.5", "7."].map(parseNumber)).toEqual([5.8, 5.8, 12, -3, -0.5, 7]);
});

test("anything else is no number yet", () => {
  expect(["", "-", ".", "5.8.1", "6/32", "five", "1e3"].map(parseNumber)).toEqual(Array(7).fill(undefined));
});
