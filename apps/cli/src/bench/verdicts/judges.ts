import type { AnswerOf } from "@evenhand/shared/answer";
import type { Entry } from "@evenhand/shared/comparison";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { deltaOf } from "@evenhand/comparison/delta";
import { mean } from "@evenhand/measurement/type-a";
import type { Studied } from "./study.ts";

/** What a judge says of two readings; `marked` where it stands only as declared. */
export type Verdict =
  "agree" | "agree-marked" | "consistent" | "doubtful" | "differ" | "differ-marked" | "other";
export const JUDGES = ["this engine", "equal cells", "one tolerance", "fixed bands"] as const;
export type JudgeName = (typeof JUDGES)[number];

type Reading = AnswerOf<"reading">;
type Judge = (spec: ReadingSpec, a: Reading, b: Reading) => Verdict;

const meanOf = ({ values }: Reading): number => mean(values.map(({ value }) => value));

const cellOf = (answer: Reading, step: number): number =>
  step === 0 ? meanOf(answer) : Math.round(meanOf(answer) / step);

/** Cell by cell, as two columns of a spreadsheet: the figure as its instrument shows it, equal or not. */
const equalCells: Judge = ({ instrument: { resolution } }, a, b) =>
  cellOf(a, resolution) === cellOf(b, resolution) ? "agree" : "differ";

/** One tolerance a column, and the best there is: the difference that matters itself. */
const oneTolerance: Judge = ({ delta, typical }, a, b) =>
  Math.abs(meanOf(a) - meanOf(b)) <= deltaOf(delta, typical ?? 0, typical ?? 0) ? "agree" : "differ";

/** Up to half of what matters the same, past one and a half times another; in doubt between. */
const fixedBands: Judge = ({ delta, typical }, a, b) => {
  const apart = Math.abs(meanOf(a) - meanOf(b)) / deltaOf(delta, typical ?? 0, typical ?? 0);
  return apart <= 0.5 ? "agree" : apart > 1.5 ? "differ" : "doubtful";
};

/** The engine's own, with its mark. */
export const engineVerdict = ({ outcome, marks }: Pick<Entry, "outcome" | "marks">): Verdict => {
  const marked = marks.includes("only-as-declared");
  if (outcome === "agree") return marked ? "agree-marked" : "agree";
  if (outcome === "differ") return marked ? "differ-marked" : "differ";
  return outcome === "consistent" || outcome === "doubtful" ? outcome : "other";
};

const RIVALS: Readonly<Record<Exclude<JudgeName, "this engine">, Judge>> = {
  "equal cells": equalCells,
  "one tolerance": oneTolerance,
  "fixed bands": fixedBands,
};

/** What each judge says of a reading both people took; empty where one did not. */
export const verdictsOf = (
  entry: Entry,
  { a, b }: Pick<Studied, "a" | "b">,
  spec: ReadingSpec,
): readonly (readonly [JudgeName, Verdict])[] => {
  const stated = a.findings[entry.finding.a ?? -1]?.answer;
  const found = b.findings[entry.finding.b ?? -1]?.answer;
  if (stated?.kind !== "reading" || found?.kind !== "reading") return [];
  return JUDGES.map((name) => [
    name,
    name === "this engine" ? engineVerdict(entry) : RIVALS[name](spec, stated, found),
  ]);
};
