import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { captionCues } from "../caption-cues/index.ts";
import { spokenText } from "../spoken-text/index.ts";
import { passages } from "./index.ts";

const tuned = new URL("../../../../fixtures/spoken/tuned/", import.meta.url);
const files = readdirSync(tuned).flatMap((folder) =>
  readdirSync(new URL(`${folder}/`, tuned))
    .filter((name) => /\.(vtt|srt|txt)$/u.test(name) && name !== "right.txt")
    .map((name) => `${folder}/${name}`),
);

const words = (text: string): string => text.replaceAll(/\s+/gu, " ").trim();

test.each(files)("%s is cut into stretches that together are the whole of it", (name) => {
  const read = captionCues(readFileSync(new URL(name, tuned), "utf8"));
  if (!read.ok) throw new Error(read.reason);
  const spoken = spokenText(read.cues);
  const cut = passages(spoken);
  expect(words(cut.map(({ start, end }) => spoken.text.slice(start, end)).join(" "))).toBe(
    words(spoken.text),
  );
  expect(
    Math.max(...cut.map(({ start, end }) => spoken.text.slice(start, end).split(/\s+/u).length)),
  ).toBeLessThanOrEqual(40);
});

test("a stretch has the second of its first word, and ends with a sentence or a turn", () => {
  const spoken = spokenText([
    { start: 3, end: 5, text: "The hood is new. So is" },
    { start: 5, end: 6, text: "the top." },
    { start: 9, end: 10, text: ">> And the horn?" },
  ]);
  expect(
    passages(spoken).map(({ start, end, second }) => [spoken.text.slice(start, end), Math.floor(second)]),
  ).toEqual([
    ["The hood is new.", 3],
    ["So is the top.", 4],
    ["And the horn?", 9],
  ]);
});

test("of nothing there are none", () => {
  expect(passages({ text: "", at: [], punctuated: false, asides: [] })).toEqual([]);
});
