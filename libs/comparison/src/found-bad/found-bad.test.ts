import { expect, it } from "vitest";
import { entry } from "../../testing/small-entries.ts";
import { isFoundBad } from "./index.ts";

it("says found of what was called bad, of what figures contradict, and of what both call bad", () => {
  expect(isFoundBad(entry({ calls: { a: "good", b: "danger" }, standing: "differs" }))).toBe(true);
  expect(isFoundBad(entry({ calls: { a: "good", b: null }, standing: "contradicted-by-figures" }))).toBe(
    true,
  );
  expect(isFoundBad(entry({ calls: { a: "small", b: "small" }, standing: "agreed-fault" }))).toBe(true);
  // Two tires of unlike sizes, each good by itself: the figures make them bad.
  expect(isFoundBad(entry({ calls: { a: "good", b: "good" }, standing: "agreed-fault" }))).toBe(true);
});

it("says it of nothing that nobody saw, that is good, or that has no yardstick", () => {
  expect(isFoundBad(entry({ calls: { a: "danger", b: null }, standing: "unseen" }))).toBe(false);
  expect(isFoundBad(entry({ calls: { a: null, b: "good" }, standing: "not-mentioned" }))).toBe(false);
  expect(isFoundBad(entry({ calls: { a: null, b: "no-yardstick" }, standing: "not-mentioned" }))).toBe(false);
});
