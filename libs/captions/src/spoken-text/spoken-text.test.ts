import { assert, integer, property, stringMatching, uniqueArray } from "fast-check";
import { expect, test } from "vitest";
import { spokenText } from "./index.ts";

const cue = (start: number, text: string) => ({ start, end: start + 2, text });

test("sentences cut in the middle are joined, each word with its second", () => {
  const { text, at } = spokenText([cue(10, "There is no rust"), cue(12, "in the floors.")]);
  expect(text).toBe("There is no rust in the floors.");
  expect(at.find(({ start }) => start === text.indexOf("in"))?.second).toBe(12);
});

test("lines that automatic captions show twice are said once", () => {
  const cues = [
    cue(0, " \nthe<00:00:00.500><c> hood</c>"),
    { start: 2, end: 2.01, text: "the hood\n " },
    cue(2.01, "the hood\nis<00:00:02.500><c> new</c>"),
  ];
  const { text, at } = spokenText(cues);
  expect(text).toBe("the hood is new");
  expect(at.map(({ second }) => second)).toEqual([0, 0.5, 2.01, 2.5]);
});

test("who only asks and admires has not the car to tell of", () => {
  const { text, asides } = spokenText(
    [
      cue(0, ">> DEALER: The hood is new."),
      cue(2, ">> FRIEND: That paint is perfect."),
      cue(4, ">> DEALER: It has a chip."),
      cue(6, ">> FRIEND: Does it run?"),
    ],
    (word) => word === "dealer",
  );
  expect(asides.map(({ start, end }) => text.slice(start, end))).toEqual([
    "That paint is perfect.",
    "Does it run?",
  ]);
});

test("a cue that grows word by word is said once", () => {
  expect(
    spokenText([cue(0, "the left rear"), cue(1, "the left rear door"), cue(2, "the left rear door is new")])
      .text,
  ).toBe("the left rear door is new");
});

test.each([
  ["a voice", ["<v Ann>The hood?", "<v Bob>It is new."]],
  ["arrows", ["&gt;&gt; The hood?", "&gt;&gt; It is new."]],
  ["dashes", ["- The hood?", "- It is new."]],
  ["names", ["Ann: The hood?", "Bob: It is new.", "Ann: Good.", "Bob: Yes."]],
])("speakers marked by %s begin on lines of their own", (_, lines) => {
  const { text } = spokenText(lines.map((line, index) => cue(index * 10, line)));
  expect(text.split("\n").slice(0, 2)).toEqual(["The hood?", "It is new."]);
});

test("a list whose lines open with parts has no speakers", () => {
  const lines = ["Hood: new.", "Hood: new.", "Roof: old.", "Roof: old."].map((line, index) =>
    cue(index * 10, line),
  );
  expect(spokenText(lines, (word) => word === "hood" || word === "roof").text).toContain("Hood: new.");
});

test("sounds in brackets are left out", () => {
  expect(spokenText([cue(0, "[Music]"), cue(5, "The hood is new.")]).text).toBe("The hood is new.");
});

test("every word of cues that repeat nothing is kept, in order", () => {
  const word = stringMatching(/^[a-z]{4,9}$/u);
  assert(
    property(
      uniqueArray(word, { minLength: 1, maxLength: 40 }),
      integer({ min: 1, max: 7 }),
      (words, size) => {
        const cues = Array.from({ length: Math.ceil(words.length / size) }, (_, index) =>
          cue(index * 2, words.slice(index * size, (index + 1) * size).join(" ")),
        );
        const { text, at } = spokenText(cues);
        expect(text.split(" ")).toEqual(words);
        expect(at).toHaveLength(words.length);
        expect(at.map(({ second }) => second)).toEqual(
          at.map(({ second }) => second).toSorted((a, b) => a - b),
        );
      },
    ),
    { numRuns: 1000 },
  );
});

test("of turns that only dashes open, who asks nearly always has not the car to tell of", () => {
  const turns = [
    "Any rust?",
    "None.",
    "Has it a spare?",
    "Yes.",
    "Bumpers look good.",
    "They do.",
    "Is it dry?",
    "It is.",
  ];
  const asked = [...turns, "Does it run?", "Sure."].map((text, index) => ({
    start: index,
    end: index + 1,
    text: `- ${text}`,
  }));
  const { asides, text } = spokenText(asked);
  expect(asides.map(({ start, end }) => text.slice(start, end))).toContain("Bumpers look good.");
  const told = turns.map((one, index) => ({
    start: index,
    end: index + 1,
    text: `- ${one.replace("?", ".")}`,
  }));
  expect(spokenText(told).asides).toEqual([]);
});
