import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { analyze } from "@evenhand/comparison/analyze";
import { CERTAINTIES, NEXT_STEPS } from "@evenhand/shared/matter";
import { Report } from "@evenhand/shared/report";
import { SEVERITIES } from "@evenhand/shared/severity";
import { expect, test } from "vitest";
import { sheet } from "../../testing/lines.ts";
import { type JoinedMatter, matters } from "../matters/index.ts";
import { questionsOf } from "./index.ts";

const demo = new URL("../../../../fixtures/demo/reports/", import.meta.url);
const read = (name: string): Report =>
  Report.parse(JSON.parse(readFileSync(new URL(`${name}.json`, demo), "utf8")));
const [a, b] = [read("sovrano-statement"), read("sovrano-inspection")];
const comparison = analyze(a, b, sheet);
const reports = { a, b, sheet };
const joined = matters(comparison, reports);
const [pattern] = joined;
const asked = (some: readonly JoinedMatter[]): string[] =>
  questionsOf(some, comparison, reports).map(({ words }) => words);

test("asks on the gravest place of each matter, once, and never about a heap of trifles", () => {
  const questions = questionsOf(joined, comparison, reports);
  expect(new Set(questions.map(({ words }) => words)).size).toBe(questions.length);
  for (const { item } of questions) expect(sheet.items.has(item)).toBe(true);
  const heaps = joined.filter(({ kind }) => kind === "small-things" || kind === "repairs");
  for (const { question } of heaps) expect(asked(joined)).not.toContain(question);
});

const kinds = ["title", "brakes", "glass", "unseen-lift", "small-things", "unseen"];
const drawn = fc.record({
  kind: fc.constantFrom(...kinds),
  severity: fc.constantFrom(...SEVERITIES),
  certainty: fc.constantFrom(...CERTAINTIES),
  step: fc.constantFrom(...NEXT_STEPS),
  admitted: fc.boolean(),
});
const graveness = ({ kind, severity }: Pick<JoinedMatter, "kind" | "severity">): number =>
  kind === "unseen" ? 3 : Math.min(SEVERITIES.indexOf(severity), 2);

test("what can stop the money, then what can hurt somebody, before all else, and the same again; a thousand draws", () =>
  fc.assert(
    fc.property(fc.array(drawn, { maxLength: 15 }), (some) => {
      if (pattern === undefined) throw new Error("the demo's pair has no matters");
      const list = some.map(({ step, ...one }, at): JoinedMatter => ({
        ...pattern,
        ...one,
        next: { step, words: step },
        question: `${at}?`,
      }));
      const order = questionsOf(list, comparison, reports).map(({ words }) => {
        const of = list[Number.parseInt(words, 10)];
        return of === undefined ? Number.NaN : graveness(of);
      });
      expect(order).toEqual(order.toSorted((one, other) => one - other));
      expect(order).toHaveLength(list.filter(({ kind }) => kind !== "small-things").length);
      expect(asked(list)).toEqual(asked(list));
    }),
    { numRuns: 1_000 },
  ));

test("what an answer could still change stands before what was measured, and that before what the dealer said", () => {
  if (pattern === undefined) throw new Error("the demo's pair has no matters");
  const danger: JoinedMatter = {
    ...pattern,
    kind: "brakes",
    severity: "danger",
    next: { step: "do-not-drive", words: "" },
  };
  const list: JoinedMatter[] = [
    { ...danger, question: "admitted", admitted: true, certainty: "measured" },
    { ...danger, question: "measured", admitted: false, certainty: "measured" },
    { ...danger, question: "unknown", admitted: false, certainty: "unknown" },
  ];
  expect(asked(list)).toEqual(["unknown", "measured", "admitted"]);
});

test("names the places where the question alone would not say what it is about", () => {
  if (pattern === undefined) throw new Error("the demo's pair has no matters");
  const open = {
    ...pattern,
    kind: "unseen-looking",
    question: "Will you send photographs of what was not seen?",
  };
  expect(asked([open])[0]).toMatch(/^Will you send .+ not seen\? It is about .+\.$/u);
  expect(asked([pattern])[0]).toBe(pattern.question);
});
