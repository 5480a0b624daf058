import { assert, integer, property } from "fast-check";
import { expect, test } from "vitest";
import { twoFigures } from "./index.ts";

test("an amount is said to two digits, never off by more than one in twenty", () => {
  expect([4_107_104, 5_829_873, 99, 7, 0].map(twoFigures)).toEqual([4_100_000, 5_800_000, 99, 7, 0]);
  assert(
    property(integer({ min: 0, max: 1_000_000_000 }), (minor) => {
      const said = twoFigures(minor);
      return Number.isInteger(said) && Math.abs(said - minor) <= minor / 20;
    }),
    { numRuns: 1000 },
  );
});
