import { array, assert, integer, property, string } from "fast-check";
import { expect, test } from "vitest";
import { columns, indented, wrap } from "./layout.ts";

test("lines break at spaces and long words are cut", () => {
  expect(wrap("left front wheel", 10)).toEqual(["left front", "wheel"]);
  expect(wrap("ABCDEFGHIJKLM", 5)).toEqual(["ABCDE", "FGHIJ", "KLM"]);
  expect(wrap("", 5)).toEqual([]);
});

test("no line is wider than asked and no word is lost", () => {
  const word = string({ minLength: 1, maxLength: 12 }).filter((text) => !/\s/.test(text));
  assert(
    property(array(word, { maxLength: 30 }), integer({ min: 12, max: 60 }), (words, width) => {
      const lines = wrap(words.join(" "), width);
      expect(lines.every((line) => line.length <= width)).toBe(true);
      expect(lines.join(" ")).toBe(words.join(" "));
    }),
    { numRuns: 1000 },
  );
});

test("columns keep their place over wrapped lines", () => {
  expect(
    columns([
      { text: "a b", width: 1 },
      { text: "one", width: 5 },
      { text: "7", width: 3, align: "right" },
    ]),
  ).toEqual(["a  one      7", "b"]);
});

test("an indented text keeps its margin on every line", () => {
  expect(indented("twenty characters is the least width", 4, 10)).toEqual([
    "    twenty characters is",
    "    the least width",
  ]);
});
