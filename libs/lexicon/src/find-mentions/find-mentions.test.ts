import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { compileLexicon } from "../compile-lexicon/index.ts";
import { lexiconVersion1 } from "../lexicon-version-1/index.ts";
import { findMentions } from "./index.ts";

const compiled = compileLexicon(lexiconVersion1, sheetVersion1);

/** Mentions in short: subjects by id, sides by theirs, numbers with units. */
const short = (text: string): string[] =>
  findMentions(text, compiled).mentions.flatMap((one) => {
    if (one.is === "subject") return [one.subjects.map(({ id }) => id).join("|")];
    if (one.is === "side") return [`@${one.side}`];
    if (one.is === "number") return [`${one.value} ${one.unit ?? "?"}`];
    return one.is === "unit" ? [`in ${one.unit}`] : [];
  });

test.each([
  ["Left front wing", ["@left-front", "fender"]],
  ["left front fender", ["@left-front", "fender"]],
  ["nearside sill", ["@left", "rocker"]],
  ["boot floor", ["trunk-floor"]],
  ["RF tire tread (32nds)", ["@right-front", "tread", "in 1/32in"]],
  ["the rock her panel", ["rocker"]],
  ["brake calendar", ["wheel-cylinders"]],
  ["windsheild", ["windshield"]],
  ["all four tyres", ["@all", "tires"]],
  ["oil pan seeps", ["leak-oil-pan"]],
  ["half an inch", ["0.5 in"]],
  ["seven thirty-seconds", ["7 1/32in"]],
  ["sixty-five psi", ["65 psi"]],
  ["five thou", ["0.005 in"]],
  ["driver's door", ["@driver", "door"]],
])("%s", (text, expected) => {
  expect(short(text)).toEqual(expected);
});

test("what was put right is kept as it was heard", () => {
  const [rocker] = findMentions("rock her panel", compiled).mentions;
  expect(rocker).toMatchObject({ heard: "rock her panel", start: 0, end: 14 });
  expect(rocker?.confidence).toBeLessThan(1);
});

test("ordinary words stay what they are", () => {
  expect(short("a story about my brother and a letter from the harbor")).toEqual([]);
});

const GRADES = ["as-new", "light-wear", "even-wear", "heavy-wear", "spent"];

test("every subject names items and places the sheet has", () => {
  const items = new Set(sheetVersion1.items.map(({ id }) => id));
  const places = new Set(
    sheetVersion1.positionSets.flatMap(({ positions }) => positions.map(({ id }) => id)),
  );
  const { subjects, options } = lexiconVersion1;
  expect(subjects.flatMap((one) => one.items).filter((id) => !items.has(id))).toEqual([]);
  expect(subjects.flatMap((one) => one.at ?? []).filter((id) => !places.has(id))).toEqual([]);
  const known = new Set(
    sheetVersion1.items.flatMap(({ id, answer, choice }) => [
      ...(choice?.options ?? []).map((one) => `${id} ${one.id}`),
      ...(answer === "working" ? ["yes", "no", "intermittent"].map((one) => `${id} ${one}`) : []),
      ...(answer === "presence" ? ["present", "absent"].map((one) => `${id} ${one}`) : []),
      ...(answer === "grade" ? GRADES.map((one) => `${id} ${one}`) : []),
    ]),
  );
  expect(options.map(({ item, option }) => `${item} ${option}`).filter((one) => !known.has(one))).toEqual([]);
});

test("every item of the sheet can be spoken of", () => {
  const spoken = new Set([...compiled.subjects.values()].flatMap((one) => one.items));
  expect(sheetVersion1.items.map(({ id }) => id).filter((id) => !spoken.has(id))).toEqual([]);
});
