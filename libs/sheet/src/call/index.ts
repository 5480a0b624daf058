import { convert, dimensionOf } from "@evenhand/measurement/unit";
import type { Answer, AnswerOf, Fault } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { GradeScale, VehicleForm } from "@evenhand/shared/report";
import { isBadCall, worseSeverity } from "@evenhand/shared/severity";
import type { Call, Severity } from "@evenhand/shared/severity";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { ConditionNeeded, FaultKind, Item, Limit, ReadingSpec } from "@evenhand/shared/sheet";
import { gradeStretch, houseGradeOf, houseGrades, houseStep } from "../grade-scale/index.ts";

/** What of the report an answer stands in its call may hang on. */
export type CallContext = {
  readonly position?: string;
  readonly conditions?: Finding["conditions"];
  /** Scales of the report, for grades on other scales than the house's. */
  readonly scales?: readonly GradeScale[];
  readonly form?: Pick<VehicleForm, "systemVolts">;
  /** Fault kinds of the sheet by id. */
  readonly faultKinds?: ReadonlyMap<string, FaultKind>;
  /** Another answer of the same report by item id (and position, where the item has them); limits may hang on it. */
  readonly other?: (item: string, position?: string) => Answer | undefined;
  /** How another answer of the same report is called by itself; a call may follow it. */
  readonly otherCall?: (item: string, position?: string) => Call | undefined;
};

const NOTHING: CallContext = {};

/** Whether what was noted speaks against a condition that is needed. What was not noted does not. */
export const isUnmet = (needed: ConditionNeeded, conditions: Finding["conditions"]): boolean => {
  const noted = conditions?.[needed.condition];
  if (noted === undefined) return false;
  if (needed.is !== undefined && noted !== needed.is) return true;
  if (typeof noted !== "number") return false;
  return (
    (needed.atLeast !== undefined && noted < needed.atLeast) ||
    (needed.atMost !== undefined && noted > needed.atMost)
  );
};

/** Whether what was noted speaks against any of several conditions. Without a function made for every line it is asked for. */
export const isAnyUnmet = (
  needs: readonly ConditionNeeded[] | undefined,
  conditions: Finding["conditions"],
): boolean => {
  if (needs === undefined || conditions === undefined) return false;
  for (const needed of needs) if (isUnmet(needed, conditions)) return true;
  return false;
};

const meanIn = ({ values, unit: from }: AnswerOf<"reading">, unit: UnitSymbol): number => {
  let sum = 0;
  for (let index = 0; index < values.length; index += 1)
    sum += convert(values[index]?.value ?? Number.NaN, from, unit);
  return sum / values.length;
};

/** Most readings are written in the item's own unit, and then nothing need be looked up. */
const isOfDimension = ({ unit }: AnswerOf<"reading">, other: UnitSymbol): boolean =>
  unit === other || dimensionOf(unit) === dimensionOf(other);

type Elsewhere = { readonly item: string; readonly unit: UnitSymbol };

const otherReading = ({ item, unit }: Elsewhere, context: CallContext): number | undefined => {
  const answer = context.other?.(item, context.position);
  if (answer?.kind !== "reading" || !isOfDimension(answer, unit)) return undefined;
  return meanIn(answer, unit);
};

const rowUpTo = (rows: NonNullable<Limit["byReading"]>["rows"], read: number) =>
  rows.find(({ upTo }) => read <= upTo);

const rowOfOption = (rows: NonNullable<Limit["byOption"]>["rows"], option: string | undefined) =>
  rows.find((row) => row.option === option);

/**
 * The figure a limit asks for in one report, in the item's base unit: its own, or the one another answer decides. `undefined`
 * where the limit does not speak of this car or condition.
 *
 * @example limitValue({ side: "max", value: 2, severity: "danger", source }, {}) // 2
 */
export const limitValue = (limit: Limit, context: CallContext): number | undefined => {
  const { conditions, form } = context;
  if (limit.systemVolts !== undefined && form !== undefined && form.systemVolts !== limit.systemVolts) {
    return undefined;
  }
  if (limit.needsFitted !== undefined && context.other?.(limit.needsFitted)?.kind === "not-fitted") {
    return undefined;
  }
  if (isAnyUnmet(limit.when, conditions)) return undefined;
  if (limit.isReadingOf !== undefined) return otherReading(limit.isReadingOf, context);
  if (limit.byReading !== undefined) {
    const read = otherReading(limit.byReading, context);
    return (read === undefined ? undefined : rowUpTo(limit.byReading.rows, read)?.value) ?? limit.value;
  }
  if (limit.byOption !== undefined) {
    const answer = context.other?.(limit.byOption.item, context.position);
    const option = answer?.kind === "choice" ? answer.option : undefined;
    return rowOfOption(limit.byOption.rows, option)?.value ?? limit.value;
  }
  return limit.value;
};

/** A limit or alarm of an item as it stands at one of its places. */
export type LimitAt = {
  readonly limit: Limit;
  readonly severity: Severity;
  /** The figure, where no condition, no other answer and nothing of the car decides it. */
  readonly fixed: number | undefined;
};

const isFixed = (limit: Limit): boolean =>
  limit.systemVolts === undefined &&
  limit.needsFitted === undefined &&
  limit.when === undefined &&
  limit.isReadingOf === undefined &&
  limit.byReading === undefined &&
  limit.byOption === undefined;

const makeLimitsAt = ({ limits, alarms }: ReadingSpec, position: string): readonly LimitAt[] =>
  [...limits, ...alarms].map((limit) => ({
    limit,
    severity: limit.at?.[position] ?? limit.severity,
    fixed: isFixed(limit) ? limit.value : undefined,
  }));

/** A function of the specification and the place alone, so that keeping them changes no answer. */
const limitsByPlace = new WeakMap<ReadingSpec, Map<string, readonly LimitAt[]>>();
const MOST_PLACES = 1024;

const findLimits = (spec: ReadingSpec, position: string): readonly LimitAt[] => {
  const kept = limitsByPlace.get(spec) ?? new Map<string, readonly LimitAt[]>();
  const known = kept.get(position);
  if (known !== undefined) return known;
  const made = makeLimitsAt(spec, position);
  if (kept.size < MOST_PLACES) limitsByPlace.set(spec, kept.set(position, made));
  return made;
};

/** The place that was asked for last: one line asks for its own several times over. */
let lastSpec: ReadingSpec | undefined;
let lastPosition = "";
let lastLimits: readonly LimitAt[] = [];

/**
 * The limits and then the alarms of an item as they stand at a place, worked out once for each.
 *
 * @example limitsAt(treadSpec, "spare")[0]?.severity // "repair"
 */
export const limitsAt = (spec: ReadingSpec, position: string): readonly LimitAt[] => {
  if (spec === lastSpec && position === lastPosition) return lastLimits;
  lastSpec = spec;
  lastPosition = position;
  lastLimits = findLimits(spec, position);
  return lastLimits;
};

/** Equality passes; a difference under 1e-9 of δ is rounding. */
const fails = (value: number, side: Limit["side"], limit: number, { delta }: ReadingSpec): boolean => {
  const rounding = 1e-9 * Math.max(delta.absolute, delta.share * Math.abs(value));
  return side === "min" ? value < limit - rounding : value > limit + rounding;
};

/** Values are taken as they come, without a list of them in the item's unit: most are written in it. */
const isAnyPast = (
  { values, unit }: AnswerOf<"reading">,
  side: Limit["side"],
  limit: number,
  spec: ReadingSpec,
): boolean => {
  for (let index = 0; index < values.length; index += 1) {
    const read = values[index];
    if (read !== undefined && fails(convert(read.value, unit, spec.unit), side, limit, spec)) return true;
  }
  return false;
};

/** Whether every value lies where an item says a reading is good; those between that and the alarm nobody can judge. */
const isSound = (answer: AnswerOf<"reading">, spec: ReadingSpec, context: CallContext): boolean => {
  const { sound } = spec;
  if (sound === undefined) return true;
  if (isAnyUnmet(sound.when, context.conditions)) return false;
  const { atLeast, atMost } = sound;
  return (
    (atLeast === undefined || !isAnyPast(answer, "min", atLeast, spec)) &&
    (atMost === undefined || !isAnyPast(answer, "max", atMost, spec))
  );
};

const exchangeSides = (place: string): string | undefined => {
  const mirrored = place.replace(/\b(left|right)\b/g, (side) => (side === "left" ? "right" : "left"));
  return mirrored === place ? undefined : mirrored;
};

/** Places are few, and asked for line by line; a service that met more starts over rather than grow. */
const mirrorImages = new Map<string, string | undefined>();

/** The same place on the other side of the car; `undefined` where it has none. */
export const mirrorImage = (place: string): string | undefined => {
  const known = mirrorImages.get(place);
  if (known !== undefined || mirrorImages.has(place)) return known;
  if (mirrorImages.size >= MOST_PLACES) mirrorImages.clear();
  const mirrored = exchangeSides(place);
  mirrorImages.set(place, mirrored);
  return mirrored;
};

/** How a reading stands beside the one on the other side of the car; `undefined` where that was not read. */
const callBesideMirror = (
  answer: AnswerOf<"reading">,
  id: string,
  spec: ReadingSpec,
  context: CallContext,
): Call | undefined => {
  const { mirror, unit } = spec;
  if (mirror === undefined) return undefined;
  const position = mirrorImage(context.position ?? "");
  if (position === undefined) return undefined;
  const other = otherReading({ item: id, unit }, { ...context, position });
  if (other === undefined) return undefined;
  const apart = Math.abs(meanIn(answer, unit) - other);
  if (fails(apart, "max", mirror.alarm, spec)) return mirror.severity;
  return fails(apart, "max", mirror.sound, spec) ? "no-yardstick" : "good";
};

/** Where nothing makes a reading bad, the stretch in which such figures ordinarily lie is its yardstick. */
const hasOnlyOrdinary = ({ limits, alarms, sound }: ReadingSpec): boolean =>
  limits.length + alarms.length === 0 && sound !== undefined;

const callReading = (
  answer: AnswerOf<"reading">,
  id: string,
  spec: ReadingSpec,
  context: CallContext,
): Call => {
  if (!isOfDimension(answer, spec.unit)) return "no-yardstick";
  const beside = callBesideMirror(answer, id, spec, context);
  let judged = beside === "good" || hasOnlyOrdinary(spec);
  let worst: Severity | null = isBadCall(beside) ? beside : null;
  // By index, here and below: walked otherwise, these lists make garbage on every line of a comparison.
  const there = limitsAt(spec, context.position ?? "");
  for (let index = 0; index < there.length; index += 1) {
    const at = there[index];
    const asked = at === undefined ? undefined : (at.fixed ?? limitValue(at.limit, context));
    if (at === undefined || asked === undefined) continue;
    judged = true;
    if (isAnyPast(answer, at.limit.side, asked, spec)) worst = worseSeverity(worst, at.severity);
  }
  const sound = judged && beside !== "no-yardstick" && isSound(answer, spec, context);
  return worst ?? (sound ? "good" : "no-yardstick");
};

/** Stretches are fractions of few digits: what differs by less is rounding. */
const ROUNDING = 1e-9;
const GRADES: readonly string[] = houseGrades;

const callGrade = (
  answer: AnswerOf<"grade">,
  spec: NonNullable<Item["grade"]>,
  scales: readonly GradeScale[],
): Call => {
  const stretch = gradeStretch(answer, scales);
  if (stretch === undefined) return "no-yardstick";
  const [low, high] = stretch;
  const edge = (GRADES.indexOf(spec.badFrom) + 1) * houseStep;
  if (low >= edge - ROUNDING) return "good";
  // A word that covers both sides of bad says neither, unless it is the worst its scale has.
  if (high > edge + ROUNDING && low > 0) return "no-yardstick";
  return houseGradeOf(stretch) === houseGrades[0] ? (spec.spent ?? spec.severity) : spec.severity;
};

const callWorking = (
  { value }: AnswerOf<"working">,
  spec: NonNullable<Item["working"]>,
  position = "",
): Call => {
  if (value === "not-known") return "no-yardstick";
  if (value === "yes") return "good";
  const severity = spec.at?.[position] ?? spec.severity;
  return value === "intermittent" ? (spec.at?.[position] ?? spec.intermittent ?? severity) : severity;
};

const callPresence = ({ value }: AnswerOf<"presence">, spec: NonNullable<Item["presence"]>): Call => {
  if (value === "not-known" || spec.goodIs === "neither") return "no-yardstick";
  if (value === spec.goodIs) return "good";
  // A paper nobody promised is no fault.
  return spec.onlyIfPromised === true ? "good" : spec.severity;
};

const callListed = (id: string, { options }: NonNullable<Item["choice"]>, position: string): Call => {
  for (let index = 0; index < options.length; index += 1) {
    const option = options[index];
    if (option?.id === id) return option.at?.[position] ?? option.call;
  }
  return "no-yardstick";
};

/** What nothing judges by itself may follow another answer's call. */
const callOption = (
  id: string,
  spec: NonNullable<Item["choice"]>,
  position: string,
  followed: Call | undefined,
): Call => {
  const own = callListed(id, spec, position);
  return own === "no-yardstick" && id !== "not-known" && isBadCall(followed) ? followed : own;
};

/** The worse of two calls; good only where both are. */
const worseCall = (a: Call, b: Call): Call => {
  if (isBadCall(a)) return isBadCall(b) ? (worseSeverity(a, b) ?? a) : a;
  if (isBadCall(b)) return b;
  return a === "good" ? b : a;
};

/** Every option said counts; the worst one is the answer's. */
const callChoice = (
  answer: AnswerOf<"choice">,
  spec: NonNullable<Item["choice"]>,
  { position = "", otherCall }: CallContext,
): Call => {
  const followed = spec.followsCallOf === undefined ? undefined : otherCall?.(spec.followsCallOf, position);
  let worst = callOption(answer.option, spec, position, followed);
  if (answer.also !== undefined) {
    for (const id of answer.also) worst = worseCall(worst, callOption(id, spec, position, followed));
  }
  return worst;
};

type SeverityRow = NonNullable<NonNullable<Item["faults"]>["severities"]>[number];
const NO_ROWS: readonly SeverityRow[] = [];

const isRowOf = (
  { kinds, from, positions, spots }: SeverityRow,
  fault: Fault,
  size: number | undefined,
  position = "",
): boolean =>
  (kinds === undefined || kinds.includes(fault.kind)) &&
  (from === undefined || (size !== undefined && size >= from)) &&
  (positions === undefined || positions.includes(position)) &&
  (spots === undefined || (fault.spot !== undefined && spots.includes(fault.spot)));

/**
 * How grave one fault is by its kind, extent and place; the item's own table before the kind's.
 *
 * @example callFault({ kind: "crack", spot: "upper-left" }, glassFaults, {}) // "danger"
 */
export const callFault = (fault: Fault, item: Item, context: CallContext = NOTHING): Severity => {
  const kind = context.faultKinds?.get(fault.kind);
  const { extent } = fault;
  const size =
    extent === undefined
      ? undefined
      : convert(extent.value, extent.unit, kind === undefined ? extent.unit : kind.unit);
  const rows = item.faults?.severities ?? NO_ROWS;
  for (let index = 0; index < rows.length; index += 1) {
    const row = rows[index];
    if (row !== undefined && isRowOf(row, fault, size, context.position)) return row.severity;
  }
  return kind?.severity ?? "repair";
};

const callFaults = (answer: AnswerOf<"faults">, item: Item, context: CallContext): Call => {
  let worst: Severity | null = null;
  for (let index = 0; index < answer.found.length; index += 1) {
    const fault = answer.found[index];
    if (fault !== undefined) worst = worseSeverity(worst, callFault(fault, item, context));
  }
  return worst ?? (answer.denied.length === 0 ? "no-yardstick" : "good");
};

/**
 * What one answer is by itself, by the item's own yardstick: good, bad with its severity, or no yardstick. Only what has a
 * yardstick and passes it is good. Equality with a limit passes; of several values and faults the worst counts; conditions noted
 * otherwise than the yardstick asks for leave no yardstick. Colors and codes have none: rules of the handbook judge them.
 *
 * @param context what of the report the answer stands in matters: position, conditions, scales, form, other answers
 * @example
 * callOf({ kind: "working", value: "intermittent" }, horn) // "danger"
 */
export const callOf = (answer: Answer, item: Item, context: CallContext = NOTHING): Call => {
  if (item.circumstance === true) return "no-yardstick";
  if (isAnyUnmet(item.yardstickNeeds, context.conditions)) return "no-yardstick";
  switch (answer.kind) {
    case "reading":
      return item.reading === undefined
        ? "no-yardstick"
        : callReading(answer, item.id, item.reading, context);
    case "grade":
      return item.grade === undefined ? "no-yardstick" : callGrade(answer, item.grade, context.scales ?? []);
    case "working":
      return item.working === undefined
        ? "no-yardstick"
        : callWorking(answer, item.working, context.position);
    case "presence":
      return item.presence === undefined ? "no-yardstick" : callPresence(answer, item.presence);
    case "choice":
      return item.choice === undefined ? "no-yardstick" : callChoice(answer, item.choice, context);
    case "faults":
      return item.faults === undefined ? "no-yardstick" : callFaults(answer, item, context);
    case "color":
    case "code":
    case "not-fitted":
    case "not-seen":
      return "no-yardstick";
  }
};
