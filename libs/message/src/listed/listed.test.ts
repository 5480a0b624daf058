import { expect, test } from "vitest";
import { listed } from "./index.ts";

test.each([
  ["comma", ["", "a", "a, b", "a, b, c"]],
  ["semicolon", ["", "a", "a; b", "a; b; c"]],
  ["and", ["", "a", "a and b", "a, b and c"]],
  ["or", ["", "a", "a or b", "a, b or c"]],
  ["comma-or", ["", "a", "a, or b", "a, or b, or c"]],
] as const)("things in a row by %s", (kind, said) => {
  expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map((things) => listed(things, kind))).toEqual(said);
});

test("without a word for it they stand behind commas, and none is read as a message", () => {
  expect(listed(["a {b}", "'c'"])).toBe("a {b}, 'c'");
});
