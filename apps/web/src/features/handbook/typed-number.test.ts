import * as fc from "fast-check";
import { expect, it } from "vitest";
import { numberText, numberTyped } from "./typed-number";

it.each([
  ["30,000", 30_000],
  [" 0.97 ", 0.97],
  [".5", 0.5],
  ["−2", -2],
  ["1,234,567.5", 1_234_567.5],
])("reads %s", (text, value) => {
  expect(numberTyped(text)).toBe(value);
});

it.each(["", "much", "0,97", "1,23", "0x10", "1 000", "12psi", "Infinity", "1e999", "--1"])(
  "takes %j for no number",
  (text) => {
    expect(numberTyped(text)).toBeNaN();
  },
);

it("reads back every number it writes", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      // JSON and a field know one zero.
      expect(numberTyped(numberText(value)) + 0).toBe(value + 0);
    }),
    { numRuns: 2000 },
  );
});
