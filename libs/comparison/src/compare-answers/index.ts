import type { AnswerOf } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument, Report } from "@evenhand/shared/report";
import type { ChoiceSpec, ReadingSpec } from "@evenhand/shared/sheet";
import { convertDifference } from "@evenhand/measurement/unit";
import { gradeStretch } from "@evenhand/sheet/grade-scale";
import type { Stretch } from "@evenhand/sheet/grade-scale";
import { isPraise } from "@evenhand/sheet/praise";
import { isBadCall } from "@evenhand/shared/severity";
import { callOf } from "@evenhand/sheet/call";
import type { CallContext } from "@evenhand/sheet/call";
import { compareChoice } from "../compare-choice/index.ts";
import type { Pick } from "../compare-choice/index.ts";
import { compareCode } from "../compare-code/index.ts";
import { compareColor } from "../compare-color/index.ts";
import { compareGrade } from "../compare-grade/index.ts";
import { compareReading } from "../compare-reading/index.ts";
import type { Corrected } from "../corrections/index.ts";
import { inOneShape } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import type { PlannedPlace } from "../plan/index.ts";
import type { Sharing } from "../sharing/index.ts";
import { standingOf } from "../standing/index.ts";
import type { VisitTimes } from "../visit-times/index.ts";
import { betweenVisits, timesOf } from "./between-visits.ts";
import { gravest, optionsOf, pickOf } from "./picks.ts";

/** One of the two reports as a comparison reads it. */
export type Side = {
  readonly report: Report;
  readonly instruments: ReadonlyMap<string, Instrument>;
  /** What is taken off its readings, and the report as it then stands; most stand as read. */
  readonly corrected?: Corrected | undefined;
};

/** Two reports on one car, and what is known of them together. */
export type Sides = {
  readonly a: Side;
  readonly b: Side;
  readonly sharing: Sharing;
  /** Use allowed between the visits by item, in base units, where the caller sets it. */
  readonly useAllowed: Readonly<Record<string, number>>;
  /** Miles driven between the visits, as far as both odometers say. */
  readonly milesBetween: () => number;
};

/** Two answers to one item at one position. */
export type AnsweredPair = {
  readonly a: Finding;
  readonly b: Finding;
  readonly place: PlannedPlace;
  readonly sides: Sides;
  readonly contexts: { readonly a: CallContext; readonly b: CallContext };
};

const UNKNOWN_SCALE = inOneShape({
  outcome: "incomparable",
  reason: "unknown-scale",
  direction: "neither",
  standing: standingOf("incomparable"),
});

const OTHER_KIND = inOneShape({
  outcome: "incomparable",
  reason: "other-kind",
  direction: "neither",
  standing: standingOf("incomparable"),
});

/** A word that promises more than its rank on the scale confirms nothing. */
const PRAISED = { outcome: "consistent", reason: "word-above-rank" } as const;

const instrumentOf = (finding: Finding, side: Side): Instrument | undefined =>
  side.instruments.get(finding.instrument ?? "");

/** The caller's own figure, else what ordinary handling and the miles between the visits explain. */
const useAllowed = (item: string, spec: ReadingSpec, { useAllowed: set, milesBetween }: Sides): number => {
  const { riseAllowed = 0, risePerThousandMiles = 0 } = spec;
  const byMiles = risePerThousandMiles === 0 ? 0 : (risePerThousandMiles * milesBetween()) / 1000;
  return set[item] ?? riseAllowed + byMiles;
};

/** Made for the few items that may rise alone: what is made for every line is what a comparison costs. */
const riseAllowed = (item: string, spec: ReadingSpec, sides: Sides) => (): number =>
  useAllowed(item, spec, sides);
const noRise = (): number => 0;

const timesLater = (asked: AnsweredPair) => (): VisitTimes => timesOf(asked);

const readings = (a: AnswerOf<"reading">, b: AnswerOf<"reading">, asked: AnsweredPair): Judgment => {
  const { item } = asked.place.compiled;
  const spec = item.reading;
  if (spec === undefined) return OTHER_KIND;
  const { sides, contexts } = asked;
  return compareReading({
    a,
    b,
    item,
    spec,
    contextA: contexts.a,
    contextB: contexts.b,
    instrumentA: instrumentOf(asked.a, sides.a),
    instrumentB: instrumentOf(asked.b, sides.b),
    shared: sides.sharing.instrument(asked.a, asked.b),
    correctionA: sides.a.corrected?.correctionOf(asked.a),
    correctionB: sides.b.corrected?.correctionOf(asked.b),
    drifts: item.time === "drifts",
    useAllowed: item.time === "only-rises" ? riseAllowed(item.id, spec, sides) : noRise,
    times: timesLater(asked),
  });
};

/** By name; two reports may mean two scales by it, which the stretches tell. */
const isSameGrade = (a: AnswerOf<"grade">, b: AnswerOf<"grade">): boolean =>
  a.scale === b.scale && a.value === b.value;

const isSameStretch = (a: Stretch, b: Stretch): boolean => a[0] === b[0] && a[1] === b[1];

const grades = (a: AnswerOf<"grade">, b: AnswerOf<"grade">, asked: AnsweredPair): Judgment => {
  const { item } = asked.place.compiled;
  const scalesA = asked.sides.a.report.scales;
  const scalesB = asked.sides.b.report.scales;
  const stretchA = gradeStretch(a, scalesA);
  const stretchB = gradeStretch(b, scalesB);
  if (stretchA === undefined || stretchB === undefined) return UNKNOWN_SCALE;
  const bothBad =
    isBadCall(callOf(a, item, asked.contexts.a)) && isBadCall(callOf(b, item, asked.contexts.b));
  const said = compareGrade({
    a: stretchA,
    b: stretchB,
    same: isSameGrade(a, b) && isSameStretch(stretchA, stretchB),
    strict: item.strict,
    bothBad,
  });
  const isPraised = isPraise(a, scalesA) || isPraise(b, scalesB);
  return said.outcome === "agree" && isPraised
    ? { ...said, ...PRAISED, standing: standingOf("consistent", { bothBad }) }
    : said;
};

/** Two of several facts, and no degrees of one. */
const areApart = (choice: ChoiceSpec | undefined, a: string, b: string): boolean =>
  choice?.several === true &&
  choice.degrees?.some((degrees) => degrees.includes(a) && degrees.includes(b)) !== true;

const choices = (a: string, b: string, between: string | undefined, asked: AnsweredPair): Judgment => {
  const { choice, working } = asked.place.compiled.item;
  return compareChoice({
    a: pickOf(asked, a),
    b: pickOf(asked, b),
    between,
    ofSeveral: working?.ofSeveral,
    neighbors: choice?.neighbors,
    areApart: areApart(choice, a, b),
    weakerIsNotOtherwise:
      choice?.weakerIsNotOtherwise === true || asked.place.compiled.item.asked === "statement",
  });
};

/** What nobody promised and nobody found is no fault of anybody. */
const presences = (a: AnswerOf<"presence">, b: AnswerOf<"presence">, asked: AnsweredPair): Judgment => {
  const { presence } = asked.place.compiled.item;
  if (presence?.onlyIfPromised !== true || a.value !== b.value || a.value === "not-known") {
    return choices(a.value, b.value, undefined, asked);
  }
  const pick: Pick = { answer: a.value, call: "no-yardstick" };
  return compareChoice({ a: pick, b: pick });
};

/** Where several options can be true: what one found beyond the other decides, the gravest first. */
const lists = (a: AnswerOf<"choice">, b: AnswerOf<"choice">, asked: AnsweredPair): Judgment => {
  if (a.also === undefined && b.also === undefined) return choices(a.option, b.option, undefined, asked);
  const saidA = optionsOf(a);
  const saidB = optionsOf(b);
  if (saidA.length === 1 && saidB.length === 1) return choices(a.option, b.option, undefined, asked);
  const onlyB = saidB.filter((option) => !saidA.includes(option));
  const onlyA = saidA.filter((option) => !saidB.includes(option));
  const beyond = onlyB.filter((option) => isBadCall(pickOf(asked, option).call));
  if (beyond.length > 0) {
    const found = gravest(beyond, asked);
    const stated = gravest(onlyA.length > 0 ? onlyA : saidA, asked);
    const said = choices(stated, found, undefined, asked);
    return onlyA.length > 0
      ? said
      : { ...said, outcome: "differ", reason: "worse-than-said", standing: standingOf("differ"), marks: [] };
  }
  const shared = saidA.filter((option) => saidB.includes(option));
  const [one, other] =
    shared.length > 0
      ? [gravest(shared, asked), gravest(shared, asked)]
      : [gravest(saidA, asked), gravest(saidB, asked)];
  return choices(one, other, undefined, asked);
};

/** The check digit is 49 CFR 565's: from model year 1981 on. */
const FIRST_CHECKED_YEAR = 1981;

const codes = (a: AnswerOf<"code">, b: AnswerOf<"code">, asked: AnsweredPair): Judgment => {
  const system = asked.place.compiled.item.code?.system;
  const checked = asked.sides.a.report.vehicle.modelYear >= FIRST_CHECKED_YEAR;
  return system === undefined ? OTHER_KIND : compareCode(system, a.text, b.text, checked);
};

const colors = (a: AnswerOf<"color">, b: AnswerOf<"color">, asked: AnsweredPair): Judgment => {
  const spec = asked.place.compiled.item.color;
  return spec === undefined ? OTHER_KIND : compareColor(a, b, spec);
};

const byKind = (asked: AnsweredPair): Judgment => {
  const a = asked.a.answer;
  const b = asked.b.answer;
  // Each kind of answer is of another shape, so that asking its kind again and again is what costs here.
  switch (a.kind) {
    case "reading":
      return b.kind === "reading" ? readings(a, b, asked) : OTHER_KIND;
    case "choice":
      return b.kind === "choice" ? lists(a, b, asked) : OTHER_KIND;
    case "working":
      return b.kind === "working" ? choices(a.value, b.value, "intermittent", asked) : OTHER_KIND;
    case "presence":
      return b.kind === "presence" ? presences(a, b, asked) : OTHER_KIND;
    case "grade":
      return b.kind === "grade" ? grades(a, b, asked) : OTHER_KIND;
    case "code":
      return b.kind === "code" ? codes(a, b, asked) : OTHER_KIND;
    case "color":
      return b.kind === "color" ? colors(a, b, asked) : OTHER_KIND;
    case "faults":
    case "not-fitted":
    case "not-seen":
      return OTHER_KIND;
  }
};

/** How far two notes of one condition may lie apart and still be the same. Common practice, no source. */
const TOLERANCES: Readonly<Record<string, number>> = {
  height: 500,
  "engine-speed": 400,
  "oil-temperature": 15,
  "test-pressure": 15,
};
const OTHER_TOLERANCE = 0.2;

const isSame = (one: unknown, other: unknown, condition: string): boolean => {
  if (one === undefined || other === undefined || one === other) return true;
  if (typeof one !== "number" || typeof other !== "number") return false;
  const most = TOLERANCES[condition] ?? OTHER_TOLERANCE * Math.max(Math.abs(one), Math.abs(other));
  return Math.abs(one - other) <= most;
};

/** A condition that decides the answer was noted otherwise on the two sides. */
const underOtherConditions = ({ a, b, place }: AnsweredPair): boolean => {
  const { sameConditions } = place.compiled.item;
  if (sameConditions === undefined) return false;
  const { conditions: one } = a;
  const { conditions: other } = b;
  // What one side did not note is taken as the other's.
  if (one === undefined || other === undefined) return false;
  return sameConditions.some((condition) => !isSame(one[condition], other[condition], condition));
};

/** A reading as it would be where the condition is naught; `undefined` where that was not noted, or moves it by an unknown amount. */
const unmoved = (finding: Finding, spec: ReadingSpec, condition: string): Finding | undefined => {
  const noted = finding.conditions?.[condition];
  const moved = spec.movedBy?.find((each) => each.condition === condition);
  const { answer } = finding;
  if (answer.kind !== "reading" || moved === undefined || typeof noted !== "number") return undefined;
  const by = convertDifference(moved.perUnit * noted, spec.unit, answer.unit);
  return {
    ...finding,
    answer: { ...answer, values: answer.values.map((each) => ({ ...each, value: each.value - by })) },
  };
};

const NOT_APART: ReadonlySet<string> = new Set(["agree", "consistent"]);

/** What other conditions explain contradicts nothing; the figures stay those that were read. */
const explainedByConditions = (asked: AnsweredPair): Judgment | undefined => {
  const { reading: spec, sameConditions = [] } = asked.place.compiled.item;
  if (spec?.movedBy === undefined) return undefined;
  let { a, b } = asked;
  for (const condition of sameConditions) {
    if (isSame(a.conditions?.[condition], b.conditions?.[condition], condition)) continue;
    const movedA = unmoved(a, spec, condition);
    const movedB = unmoved(b, spec, condition);
    if (movedA === undefined || movedB === undefined) return undefined;
    [a, b] = [movedA, movedB];
  }
  if (!NOT_APART.has(byKind({ ...asked, a, b }).outcome)) return undefined;
  const read = byKind(asked);
  return {
    ...read,
    outcome: "consistent",
    reason: "explained-by-conditions",
    direction: "neither",
    standing: standingOf("consistent"),
    marks: [],
  };
};

const OTHER_CONDITIONS = inOneShape({
  outcome: "incomparable",
  reason: "other-conditions",
  direction: "neither",
  standing: standingOf("incomparable"),
});

/**
 * Compares two answers to one item, both of which saw it and neither of which lists faults. Under other conditions than the other
 * side's, where these decide: consistent where they explain the difference by a known amount (a vacuum at another height), else
 * incomparable, each with its own call.
 *
 * @returns incomparable where the two are of different kinds, or not of the kind the item asks for
 * @example compareAnswers({ a: hornWorks, b: hornDead, place, sides, contexts }).outcome // "differ"
 */
export const compareAnswers = (asked: AnsweredPair): Judgment =>
  underOtherConditions(asked)
    ? (explainedByConditions(asked) ?? OTHER_CONDITIONS)
    : betweenVisits(byKind(asked), asked);
