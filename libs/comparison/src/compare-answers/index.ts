import type { AnswerKind, AnswerOf } from "@evenhand/shared/answer";
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
import type { VisitTimes } from "../visit-times/index.ts";

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
export type AnsweredPair = {
  readonly a: Finding;
  readonly b: Finding;
  readonly place: PlannedPlace;
  readonly sides: Sides;
};

const UNKNOWN_SCALE: Judgment = {
  outcome: "incomparable",
  reason: "unknown-scale",
  direction: "neither",
  standing: standingOf("incomparable"),
};

const OTHER_KIND: Judgment = {
  outcome: "incomparable",
  reason: "other-kind",
  direction: "neither",
  standing: standingOf("incomparable"),
};

/** Two answers of one kind, and what they are of. */
type Pair<K extends AnswerKind> = {
  readonly a: AnswerOf<K>;
  readonly b: AnswerOf<K>;
  readonly asked: AnsweredPair;
};

const instrumentOf = (finding: Finding, side: Side): Instrument | undefined =>
  side.instruments.get(finding.instrument ?? "");

const timesOf =
  ({ a, b, sides }: AnsweredPair) =>
  (): VisitTimes =>
    visitTimes(a, sides.a.report, b, sides.b.report);

const readings = ({ a, b, asked }: Pair<"reading">): Judgment => {
  const { item } = asked.place.compiled;
  const spec = item.reading;
  if (spec === undefined) return OTHER_KIND;
  const { sides } = asked;
  return compareReading({
    a,
    b,
    spec,
    instrumentA: instrumentOf(asked.a, sides.a),
    instrumentB: instrumentOf(asked.b, sides.b),
    shared: sides.sharing.instrument(asked.a, asked.b),
    drifts: item.time === "drifts",
    useAllowed: item.time === "only-rises" ? (sides.useAllowed[item.id] ?? spec.riseAllowed ?? 0) : 0,
    times: timesOf(asked),
  });
};

/** By name; two reports may mean two scales by it, which the stretches tell. */
const isSameGrade = (a: AnswerOf<"grade">, b: AnswerOf<"grade">): boolean =>
  a.scale === b.scale && a.value === b.value;

const isSameStretch = (a: Stretch, b: Stretch): boolean => a[0] === b[0] && a[1] === b[1];

const grades = ({ a, b, asked }: Pair<"grade">): Judgment => {
  const { item } = asked.place.compiled;
  const [scalesA, scalesB] = [asked.sides.a.report.scales, asked.sides.b.report.scales];
  const [stretchA, stretchB] = [gradeStretch(a, scalesA), gradeStretch(b, scalesB)];
  if (stretchA === undefined || stretchB === undefined) return UNKNOWN_SCALE;
  return compareGrade({
    a: stretchA,
    b: stretchB,
    same: isSameGrade(a, b) && isSameStretch(stretchA, stretchB),
    strict: item.strict,
    bothBad: isBad(a, item, scalesA) && isBad(b, item, scalesB),
  });
};

const choices = (a: string, b: string, between: string | undefined, { place }: AnsweredPair): Judgment =>
  compareChoice({
    a: place.picks.get(a) ?? { answer: a, bad: false },
    b: place.picks.get(b) ?? { answer: b, bad: false },
    between,
    safety: place.compiled.item.consequence === "safety",
  });

/** The check digit is 49 CFR 565's: from model year 1981 on. */
const FIRST_CHECKED_YEAR = 1981;

const codes = ({ a, b, asked }: Pair<"code">): Judgment => {
  const system = asked.place.compiled.item.code?.system;
  const checked = asked.sides.a.report.vehicle.modelYear >= FIRST_CHECKED_YEAR;
  return system === undefined ? OTHER_KIND : compareCode(system, a.text, b.text, checked);
};

const colors = ({ a, b, asked }: Pair<"color">): Judgment => {
  const spec = asked.place.compiled.item.color;
  return spec === undefined ? OTHER_KIND : compareColor(a, b, spec);
};

const byKind = (asked: AnsweredPair): Judgment => {
  const [a, b] = [asked.a.answer, asked.b.answer];
  if (a.kind === "reading" && b.kind === "reading") return readings({ a, b, asked });
  if (a.kind === "choice" && b.kind === "choice") return choices(a.option, b.option, undefined, asked);
  if (a.kind === "working" && b.kind === "working") return choices(a.value, b.value, "intermittent", asked);
  if (a.kind === "presence" && b.kind === "presence") return choices(a.value, b.value, undefined, asked);
  if (a.kind === "grade" && b.kind === "grade") return grades({ a, b, asked });
  if (a.kind === "code" && b.kind === "code") return codes({ a, b, asked });
  return a.kind === "color" && b.kind === "color" ? colors({ a, b, asked }) : OTHER_KIND;
};

/**
 * What drifts never differs across days: it is in doubt where either side calls it bad, and contradicts nothing where
 * neither does (the light of two visits). Readings see to it themselves, for limits decide there.
 */
const softenDrift = (judgment: Judgment, asked: AnsweredPair): Judgment => {
  const { a, b, sides } = asked;
  const { item } = asked.place.compiled;
  if (judgment.outcome !== "differ" || item.time !== "drifts" || item.answer === "reading") return judgment;
  if (!timesOf(asked)().differentDays) return judgment;
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
 * @returns incomparable where the two are of different kinds, or not of the kind the item asks for
 * @example compareAnswers({ a: hornWorks, b: hornDead, place, sides }).outcome // "differ"
 */
export const compareAnswers = (asked: AnsweredPair): Judgment => softenDrift(byKind(asked), asked);
