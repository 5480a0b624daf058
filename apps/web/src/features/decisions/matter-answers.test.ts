import { expect, test } from "vitest";
import { acknowledgementsOf, lackOf, openOf, showsWords } from "./matter-answers.ts";

const title = { id: "title", severity: "halt" } as const;
const brakes = { id: "brakes", severity: "danger" } as const;
const matters = [title, brakes];
const lien = { answer: "first", words: "the lien is paid off at closing" } as const;

test("each matter needs an answer, and what stops the money its words", () => {
  expect(openOf(matters, {})).toEqual(matters);
  const given = { brakes: { answer: "first", words: "" } } as const;
  expect(openOf(matters, given)).toEqual([title]);
  expect(lackOf(matters, { ...given, title: { answer: "first", words: "" } }, "title")).toBe("no-words");
  expect(openOf(matters, { ...given, title: lien })).toEqual([]);
});

test("what is taken as it is needs its reason, and words begun are not dropped as too short", () => {
  const take = (answer: "as-it-is" | "dealer", words: string) =>
    lackOf(matters, { title: lien, brakes: { answer, words } }, "brakes");
  expect(take("as-it-is", "")).toBe("no-words");
  expect(take("dealer", "hoses")).toBe("too-short");
  expect(take("dealer", " ")).toBeUndefined();
  expect(lackOf(matters, { title: { answer: "first", words: "short" } }, "title")).toBe("too-short");
});

test("the service gets words only where there are enough", () => {
  const answers = {
    title: { ...lien, words: ` ${lien.words} ` },
    brakes: { answer: "dealer", words: " " },
  } as const;
  expect(acknowledgementsOf(matters, answers)).toEqual([
    { matter: "title", answer: "first", words: lien.words },
    { matter: "brakes", answer: "dealer" },
  ]);
});

test("the field for words stands where words are asked for, and never hides what was typed", () => {
  expect(showsWords(title, { answer: null, words: "" })).toBe(true);
  expect(showsWords(brakes, { answer: "first", words: "" })).toBe(false);
  expect(showsWords(brakes, { answer: "as-it-is", words: "" })).toBe(true);
  expect(showsWords(brakes, { answer: "first", words: "new hoses" })).toBe(true);
});
