import { expect, test } from "vitest";
import { closest } from "./closest.ts";

test.each([
  ["a slip of the pen", "abc", ["abcd"], "abcd"],
  ["half of the letter pairs shared is enough", "abc", ["abd"], "abd"],
  ["less than half is not", "abc", ["abde"], undefined],
  ["nothing shared is nothing", "abc", ["xyz"], undefined],
  ["the most alike, wherever it stands", "abc", ["abd", "abcd"], "abcd"],
  ["and before what is less so", "abc", ["abcd", "abd"], "abcd"],
  ["of two alike at the least the first", "abc", ["abd", "abx"], "abd"],
  ["of two alike the first", "abc", ["abcd", "abce"], "abcd"],
  ["a pair counts as often as both have it", "aaaa", ["aa"], "aa"],
  ["one letter has no pairs", "a", ["a"], undefined],
  ["nothing to choose from", "abc", [], undefined],
])("the name meant: %s", (_, written, names, meant) => {
  expect(closest(written, names)).toBe(meant);
});
