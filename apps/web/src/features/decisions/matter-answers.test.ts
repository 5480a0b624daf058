import type { Summary } from "@evenhand/shared/summary";
import { expect, test } from "vitest";
import { acknowledgementsOf, leftOpen } from "./matter-answers.ts";

const matters: Summary["openMatters"] = [
  { matter: "title", severity: "halt", lines: [] },
  { matter: "brakes", severity: "danger", lines: [] },
];

test("each matter needs an answer, and what stops the money its words", () => {
  expect(leftOpen(matters, {})).toBe(2);
  const brakes = { answer: "first", words: "" } as const;
  expect(leftOpen(matters, { brakes })).toBe(1);
  expect(leftOpen(matters, { brakes, title: { answer: "first", words: "short" } })).toBe(1);
  expect(
    leftOpen(matters, { brakes, title: { answer: "first", words: "the lien is paid off at closing" } }),
  ).toBe(0);
});

test("what is taken as it is needs its reason, and words begun are not dropped as too short", () => {
  const title = { answer: "look-again", words: "a second look by the county" } as const;
  expect(leftOpen(matters, { title, brakes: { answer: "as-it-is", words: "" } })).toBe(1);
  expect(leftOpen(matters, { title, brakes: { answer: "dealer", words: "hoses" } })).toBe(1);
  expect(leftOpen(matters, { title, brakes: { answer: "dealer", words: " " } })).toBe(0);
});

test("the service gets words only where there are some", () => {
  expect(
    acknowledgementsOf(matters, {
      title: { answer: "first", words: " the lien is paid off at closing " },
      brakes: { answer: "dealer", words: " " },
    }),
  ).toEqual([
    { matter: "title", answer: "first", words: "the lien is paid off at closing" },
    { matter: "brakes", answer: "dealer" },
  ]);
});
