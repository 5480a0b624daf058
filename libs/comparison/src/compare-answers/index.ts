import type { Answer, AnswerOf } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument, Report } from "@evenhand/shared/report";
import { gradeStretch } from "@evenhand/sheet/grade-scale";
import type { Stretch } from "@evenhand/sheet/grade-scale";
import { isBad } from "@evenhand/sheet/is-bad";
import { compareChoice } from "../compare-choice/index.ts";
import { compareCode } from "../compare-code/index.ts";
import { compareColor } from "../compare-color/index.ts";
import { compareGrade } from "../compare-grade/index.ts";
import { compareReading } from "../compare-reading/index.ts";
import type { Judgment } from "../judgment/index.ts";
import type { PlannedPlace } from "../plan/index.ts";
import type { Sharing } from "../sharing/index.ts";
import { standingOf } from "../standing/index.ts";
import { visitTimes } from "../visit-times/index.ts";

/** One of the two reports as a comparison reads it. */
export type Side = {
  readonly report: Report;
  readonly instruments: ReadonlyMap<string, Instrument>;
};

/** Two reports on one car, and what is known of them together. */
export type Sides = {
  readonly a: Side;
  readonly b: Side;
  readonly sharing: Sharing;
  /** Use allowed between the visits by item, in base units, where the caller sets it. */
  readonly useAllowed: Readonly<Record<string, number>>;
};

/** Two answers to one item at one position. */
export type Pair = {
  readonly a: Finding;
  readonly b: Finding;
  readonly place: PlannedPlace;
  readonly sides: Sides;
};

const OTHER_KIND: Judgment = {
  outcome: "incomparable",
  reason: "other-kind",
  direction: "neither",
  standing: standingOf("incomparable"),
};

const instrumentOf = (finding: Finding, side: Side): Instrument | undefined =>
  finding.instrument === undefined ? undefined : side.instruments.get(finding.instrument);

const readings = ({ a, b, place, sides }: Pair): Judgment => {
  const { item } = place.compiled;
  const spec = item.reading;
  if (a.answer.kind !== "reading" || b.answer.kind !== "reading" || spec === undefined) return OTHER_KIND;
  return compareReading({
    a: a.answer,
    b: b.answer,
    spec,
    instrumentA: instrumentOf(a, sides.a),
    instrumentB: instrumentOf(b, sides.b),
    shared: sides.sharing.instrument(a, b),
    drifts: item.time === "drifts",
    useAllowed: item.time === "only-rises" ? (sides.useAllowed[item.id] ?? spec.riseAllowed ?? 0) : 0,
    times: () => visitTimes(a, sides.a.report, b, sides.b.report),
  });
};

const grades = ({ a, b, place, sides }: Pair): Judgment => {
  if (a.answer.kind !== "grade" || b.answer.kind !== "grade") return OTHER_KIND;
  const { item } = place.compiled;
  const scales = { a: sides.a.report.scales, b: sides.b.report.scales };
  const [stretchA, stretchB] = [gradeStretch(a.answer, scales.a), gradeStretch(b.answer, scales.b)];
  if (stretchA === undefined || stretchB === undefined) return { ...OTHER_KIND, reason: "unknown-scale" };
  return compareGrade({
    a: stretchA,
    b: stretchB,
    same: isSameGrade(a.answer, b.answer) && isSameStretch(stretchA, stretchB),
    strict: item.strict,
    bothBad: isBad(a.answer, item, scales.a) && isBad(b.answer, item, scales.b),
  });
};

type Grade = AnswerOf<"grade">;

/** By name; two reports may mean two scales by it, which the stretches tell. */
const isSameGrade = (a: Grade, b: Grade): boolean => a.scale === b.scale && a.value === b.value;

const isSameStretch = (a: Stretch, b: Stretch): boolean => a[0] === b[0] && a[1] === b[1];

/** The answer as a word of the item's list; `undefined` for answers of other kinds. */
const findWord = (answer: Answer): string | undefined => {
  if (answer.kind === "working" || answer.kind === "presence") return answer.value;
  return answer.kind === "choice" ? answer.option : undefined;
};

const choices = ({ a, b, place }: Pair): Judgment => {
  const { picks, compiled } = place;
  const [wordA, wordB] = [findWord(a.answer), findWord(b.answer)];
  if (wordA === undefined || wordB === undefined) return OTHER_KIND;
  return compareChoice({
    a: picks.get(wordA) ?? { answer: wordA, bad: false },
    b: picks.get(wordB) ?? { answer: wordB, bad: false },
    between: a.answer.kind === "working" ? "intermittent" : undefined,
    safety: compiled.item.consequence === "safety",
  });
};

/** The check digit is 49 CFR 565's: from model year 1981 on. */
const FIRST_CHECKED_YEAR = 1981;

const codes = ({ a, b, place, sides }: Pair): Judgment => {
  const system = place.compiled.item.code?.system;
  if (a.answer.kind !== "code" || b.answer.kind !== "code" || system === undefined) return OTHER_KIND;
  const checked = sides.a.report.vehicle.modelYear >= FIRST_CHECKED_YEAR;
  return compareCode(system, a.answer.text, b.answer.text, checked);
};

const colors = ({ a, b, place }: Pair): Judgment => {
  const spec = place.compiled.item.color;
  if (a.answer.kind !== "color" || b.answer.kind !== "color" || spec === undefined) return OTHER_KIND;
  return compareColor(a.answer, b.answer, spec);
};

const OF_KIND = {
  reading: readings,
  color: colors,
  grade: grades,
  working: choices,
  presence: choices,
  choice: choices,
  code: codes,
} as const;

/**
 * What drifts never differs across days: it is in doubt where either side calls it bad, and contradicts nothing where
 * neither does (the light of two visits). Readings see to it themselves, for limits decide there.
 */
const softenDrift = (judgment: Judgment, { a, b, place, sides }: Pair): Judgment => {
  const { item } = place.compiled;
  if (judgment.outcome !== "differ" || item.time !== "drifts" || item.answer === "reading") return judgment;
  if (!visitTimes(a, sides.a.report, b, sides.b.report).differentDays) return judgment;
  const bad = isBad(a.answer, item, sides.a.report.scales) || isBad(b.answer, item, sides.b.report.scales);
  const outcome = bad ? "doubtful" : "consistent";
  return {
    ...judgment,
    outcome,
    reason: bad ? "changed-bad-between-days" : "changed-between-days",
    standing: standingOf(outcome),
  };
};

/**
 * Compares two answers to one item, both of which saw it and neither of which lists faults.
 *
 * @returns incomparable where the two are of different kinds
 */
export const compareAnswers = (pair: Pair): Judgment => {
  const { kind } = pair.a.answer;
  if (kind !== pair.b.answer.kind || kind === "faults" || kind === "not-seen") return OTHER_KIND;
  return softenDrift(OF_KIND[kind](pair), pair);
};
