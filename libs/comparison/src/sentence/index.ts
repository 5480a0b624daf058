import type { Answer, NotSeenReason } from "@evenhand/shared/answer";
import type {
  Correction,
  Entry,
  LimitFigures,
  ReadingFigures,
  SideFigures,
} from "@evenhand/shared/comparison";
import type { Firmness } from "@evenhand/shared/finding";
import type { Direction, Outcome, Standing } from "@evenhand/shared/outcome";
import type { GradeScale, Report, ReportKind } from "@evenhand/shared/report";
import type { Severity } from "@evenhand/shared/severity";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { convert, convertDifference, dimensionOf } from "@evenhand/measurement/unit";
import { capital } from "@evenhand/message/first-letter";
import { formatMessage } from "@evenhand/message/format-message";
import { NOT_SEEN_REASONS } from "@evenhand/shared/terms";
import { answerWords, denialWords, faultAt, faultWords, readingWords } from "@evenhand/wording/answer-words";
import { formatExact, formatMeasured, formatUnit, formatValue } from "@evenhand/wording/format-figure";
import { say } from "@evenhand/wording/say";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { coversKind } from "../fault-stages/index.ts";
import { takenDifference } from "../use-allowed/index.ts";
import { whyCorrected } from "./corrected.ts";
import { clauseMessages, lineMessages, limitCall, reportName, reportSays } from "./messages.ts";
import type { LineId } from "./messages.ts";
import { whyUnjudged } from "./unjudged.ts";

/** One side's answer, with the scales its report describes. */
export type SideAnswer = { readonly answer: Answer; readonly scales: readonly GradeScale[] };

/** What an entry's sentence is made from beside the entry: the item's words and both answers. */
export type SentenceContext = {
  readonly sheet: Sheet;
  readonly a: SideAnswer | null;
  readonly b: SideAnswer | null;
  readonly kinds: { readonly a: ReportKind; readonly b: ReportKind };
};

/** How an outcome is called; its sign stands in the contract. */
export const outcomeWords = (outcome: Outcome): string => say(`outcome.${outcome}`);
/** How an entry's standing for the buyer is called. */
export const standingWords = (standing: Standing): string => say(`standing.${standing}`);
/** How grave a thing is, where it was found; or could be, where nobody knows. */
export const severityWords = (severity: Severity, found: boolean): string =>
  say(found ? `severity.${severity}` : `at-stake.${severity}`);
/** How a direction is called. */
export const directionWords = (direction: Direction): string => say(`direction.${direction}`);
/** How firmly a thing was said. */
export const firmnessWords = (firmness: Firmness): string => say(`firmness.${firmness}`);
/** What a report of a kind is called: "the inspection". */
export const reportWords = (kind: ReportKind): string => reportName(kind);
/** Why a thing was not seen. */
export const notSeenWords = (reason: NotSeenReason): string => say(`not-seen.${reason}`);

/** What fills some places of a line's sentence. */
type Values = Readonly<Record<string, string>>;

/** The two reports in a sentence. */
type ReportValues = Record<"A" | "B" | "theA" | "theB", string>;

type Unit = ReadingFigures["unit"];

/** The unit a side wrote its reading in; that of the figures where it is no reading of its own (an extent). */
const unitOf = (answer: SideAnswer | null, { unit }: ReadingFigures): Unit =>
  answer?.answer.kind === "reading" && dimensionOf(answer.answer.unit) === dimensionOf(unit)
    ? answer.answer.unit
    : unit;

/** With what it was read, where that was no instrument with a name. */
const readWith = ({ unnamed, byEye }: SideFigures, value: string): string => {
  if (unnamed === true) return clauseMessages.say("unnamed", { value });
  return byEye ? clauseMessages.say("by-eye", { value }) : value;
};

const decimalsOf = (value: number): number => formatExact(value).split(".")[1]?.length ?? 0;

/** As many decimals as its reader wrote; one more for the mean of several. Where no reading of its own was written (an extent), any. */
const mostDecimals = (side: SideAnswer | null): number => {
  if (side?.answer.kind !== "reading") return Number.POSITIVE_INFINITY;
  const { values } = side.answer;
  const written = Math.max(...values.map(({ value }) => decimalsOf(value)));
  return values.length === 1 ? written : written + 1;
};

/**
 * A mean as its reader wrote it, to the digits that its uncertainty warrants in that unit and never more than were written, and what it
 * was taken as where it was corrected.
 */
const meanWords = (
  side: SideFigures,
  from: Unit,
  unit: Unit,
  { answer, correction }: { readonly answer: SideAnswer | null; readonly correction: Correction | undefined },
): string => {
  const uncertainty = convertDifference(side.standardUncertainty, from, unit);
  const words = (mean: number): string => formatValue(convert(mean, from, unit), uncertainty, unit);
  const value = readWith(
    side,
    formatValue(convert(side.mean, from, unit), uncertainty, unit, mostDecimals(answer)),
  );
  if (side.taken === undefined || correction === undefined) return value;
  const why = whyCorrected(correction, from, unit, uncertainty);
  return clauseMessages.say("corrected", { value, why, taken: words(side.taken) });
};

/** Where the worst reading decides, all of them are told: their mean may lie on the other side. */
const BY_THE_WORST: readonly string[] = ["both-past-limit", "opposite-calls", "opposite-calls-unsure"];

/** A figure that was not measured: exact in the unit it was given in, to three digits in another. */
const givenWords = (converted: number, from: Unit, unit: Unit): string =>
  formatExact(from === unit ? converted : Number(converted.toPrecision(3))) + formatUnit(unit);

/** How much: of degrees as many, wherever their scale begins. */
const sizeWords = (size: number, from: Unit, unit: Unit): string =>
  givenWords(convertDifference(size, from, unit), from, unit);

/** Where on a scale: 102 °C are 216 °F. */
const pointWords = (point: number, from: Unit, unit: Unit): string =>
  givenWords(convert(point, from, unit), from, unit);

/** The difference as it was read, and as it was taken where a side was corrected. */
const differenceWords = (figures: ReadingFigures, unit: Unit): string => {
  const { difference, expandedUncertainty, unit: from, useAllowed, correction } = figures;
  const size = (value: number): number => convertDifference(Math.abs(value), from, unit);
  const judged = formatMeasured(size(takenDifference(figures)), size(expandedUncertainty), unit);
  const allowed = useAllowed === undefined ? undefined : sizeWords(Math.abs(useAllowed), from, unit);
  const taken =
    allowed === undefined ? judged : clauseMessages.say("use-allowed", { difference: judged, allowed });
  if (correction === undefined) return taken;
  const read = formatValue(size(difference), size(expandedUncertainty), unit);
  return clauseMessages.say("difference-corrected", { difference: read, taken });
};

/** Each side in the unit it was written in; the difference in that unit where both share it, else in the item's own. */
const readingValues = (figures: ReadingFigures, entry: Entry, context: SentenceContext): Values => {
  const { a, b } = context;
  const [unitA, unitB] = [unitOf(a, figures), unitOf(b, figures)];
  const unit = unitA === unitB ? unitA : figures.unit;
  const sideWords = (side: "a" | "b", own: Unit): string => {
    const { answer } = context[side] ?? {};
    const correction = entry.corrections?.[side];
    if (answer?.kind !== "reading" || !BY_THE_WORST.includes(entry.reason))
      return meanWords(figures[side], figures.unit, own, { answer: context[side], correction });
    const value = readWith(figures[side], readingWords(answer, "said"));
    if (correction === undefined) return value;
    const uncertainty = convertDifference(figures[side].standardUncertainty, figures.unit, own);
    const why = whyCorrected(correction, figures.unit, own, uncertainty);
    return clauseMessages.say("corrected-list", { value, why });
  };
  return {
    a: sideWords("a", unitA),
    b: sideWords("b", unitB),
    difference: differenceWords(figures, unit),
    delta: sizeWords(figures.delta, figures.unit, unit),
  };
};

const figureValues = (entry: Entry, context: SentenceContext): Values => {
  const { figures } = entry;
  if (figures?.of === "reading") return readingValues(figures, entry, context);
  if (figures?.of !== "color") return {};
  return {
    difference: formatMeasured(figures.deltaE, figures.expandedUncertainty, "dE"),
    delta: formatExact(figures.delta) + formatUnit("dE"),
  };
};

const faultOf = (entry: Entry, side: "a" | "b", answer: SideAnswer | null) => {
  if (entry.atom.of !== "fault" || answer?.answer.kind !== "faults") return undefined;
  const index = entry.atom[side];
  return index === undefined ? undefined : answer.answer.found[index];
};

/** What one side said of the entry's atom: the one fault or denial it is about, else the whole answer. */
const saidBy = (entry: Entry, side: "a" | "b", context: SentenceContext, item: Item): string => {
  const answer = context[side];
  if (answer === null) return "";
  const sheet = sheetWords(context.sheet);
  const fault = faultOf(entry, side, answer);
  if (fault !== undefined) return faultWords(fault, { sheet, item });
  if (entry.atom.of === "denial") return denialWords(entry.atom.kind, { sheet });
  return answerWords(answer.answer, { sheet, item, scales: answer.scales }, "said");
};

/** What the statement denies that the fault found is, or is a stage of. */
const deniedOf = (kind: string, { a, sheet }: SentenceContext): string => {
  if (a?.answer.kind !== "faults" || a.answer.denied === "all") return kind;
  const kinds = new Map(sheet.faultKinds.map((each) => [each.id, each]));
  return a.answer.denied.find((denied) => coversKind(denied, kind, { kinds })) ?? kind;
};

const NAMES_DENIAL: readonly string[] = ["denied-found", "denied-trifle"];

const atomValues = ({ atom, reason }: Entry, item: Item, context: SentenceContext): Values => {
  const sheet = sheetWords(context.sheet);
  if (atom.of === "fault") {
    return {
      fault: faultAt(atom.kind, atom.spot, { sheet, item }),
      kind: sheet.faultKind(atom.kind),
      ...(NAMES_DENIAL.includes(reason) ? { denied: sheet.faultKind(deniedOf(atom.kind, context)) } : {}),
    };
  }
  return atom.of === "denial" ? { kind: sheet.faultKind(atom.kind) } : {};
};

const isLineId = (id: string): id is LineId => Object.hasOwn(lineMessages.templates, id);

const WITH_ALL: readonly string[] = ["denied-by-both", "denied-not-contradicted"];

const deniesAll = (side: SideAnswer | null): boolean =>
  side?.answer.kind === "faults" && side.answer.denied === "all";

const bare = (side: SideAnswer | null): string =>
  side?.answer.kind === "code" ? side.answer.text.toUpperCase().replaceAll(/\s+/g, "") : "";

const lineIdOf = (entry: Entry, context: SentenceContext): string => {
  const { reason, atom } = entry;
  if (reason.startsWith("not-seen-"))
    return context.a === null || context.a.answer.kind === "not-seen" ? "not-seen-not-stated" : "not-seen";
  // One of them may give the date of a number alone: what was not written was not read.
  if (reason === "same-code" && bare(context.a) !== bare(context.b)) return "same-code-otherwise";
  if (reason === "falls-to-figures" && context.b !== null && context.b.answer.kind !== "not-seen")
    return "falls-to-figures-both";
  if (reason === "same-fault" && entry.figures !== undefined) return "same-fault-extents";
  if (reason === "denied-found" && deniesAll(context.a)) return "denied-found-all";
  return WITH_ALL.includes(reason) && atom.of === "denial" && atom.kind === "all" ? `${reason}-all` : reason;
};

const notSeenReason = ({ reason }: Entry): Values => {
  const why = reason.replace(/^not-seen-/, "");
  const known = NOT_SEEN_REASONS.find((one) => one === why);
  return known === undefined || why === reason ? {} : { reason: notSeenWords(known) };
};

const passesClause = ({ figures }: Entry, reports: ReportValues): string =>
  figures?.of !== "code" || figures.passes === null || figures.a === figures.b
    ? ""
    : clauseMessages.say(`passes.${figures.passes}`, reports);

/** What was taken off a reading that stands alone, so that there are no figures of it. */
const correctedAlone = ({ figures, corrections }: Entry, { a, b }: SentenceContext, item: Item): string => {
  const spec = item.reading;
  const [correction, side] = corrections?.b === undefined ? [corrections?.a, a] : [corrections.b, b];
  if (figures !== undefined || correction === undefined || spec === undefined) return "";
  if (side?.answer.kind !== "reading") return "";
  const { unit } = side.answer;
  const uncertainty = convertDifference(correction.standardError, spec.unit, unit);
  return clauseMessages.say("corrected-alone", {
    why: whyCorrected(correction, spec.unit, unit, uncertainty),
  });
};

/** The one reading of several that a limit is judged by; of one alone nothing more is to be said. */
const worstWords = ({ side }: LimitFigures, answer: SideAnswer | null): string | undefined => {
  if (answer?.answer.kind !== "reading") return undefined;
  const values = answer.answer.values.map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return low === high ? undefined : formatExact(side === "min" ? low : high) + formatUnit(answer.answer.unit);
};

const callOfSide = (limit: LimitFigures, side: "a" | "b", context: SentenceContext): string | undefined => {
  const made = limit[side];
  if (made === null) return undefined;
  const call = limitCall(made);
  const value = made.call === "meets" ? undefined : worstWords(limit, context[side]);
  return value === undefined ? call : clauseMessages.say("at-worst", { call, value });
};

const limitCalls = (limit: LimitFigures, reports: ReportValues, context: SentenceContext): string => {
  const callA = callOfSide(limit, "a", context);
  const callB = callOfSide(limit, "b", context);
  if (callA !== undefined && callB !== undefined)
    return clauseMessages.say("limit.both", { ...reports, callA, callB });
  if (callA !== undefined) return clauseMessages.say("limit.one", { report: reports.theA, call: callA });
  return callB === undefined ? "" : clauseMessages.say("limit.one", { report: reports.theB, call: callB });
};

/** A limit in its own unit, and beside it in the one that both wrote, or who alone read. */
const limitWords = ({ value, unit }: LimitFigures, { a, b }: SentenceContext): string => {
  const limit = formatExact(value) + formatUnit(unit);
  const units = new Set([a, b].flatMap((side) => (side?.answer.kind === "reading" ? side.answer.unit : [])));
  const [theirs] = units;
  if (theirs === undefined || units.size > 1 || theirs === unit) return limit;
  return clauseMessages.say("in-their-unit", { limit, theirs: pointWords(value, unit, theirs) });
};

/** Limits are spoken of where a side does not surely meet them. */
const limitClauses = (entry: Entry, reports: ReportValues, context: SentenceContext): string =>
  (entry.limits ?? [])
    .filter(({ a, b }) =>
      [a, b].some((call) => call !== null && (call.call !== "meets" || call.plain === "fail")),
    )
    .map((limit) =>
      // Only a regulation's figure is required or allowed; practice looks for one.
      clauseMessages.say(`${limit.practice ? "practice" : "limit"}.${limit.side}`, {
        limit: limitWords(limit, context),
        calls: limitCalls(limit, reports, context),
      }),
    )
    .join("");

/**
 * One plain sentence for an entry, made from its codes and figures: both answers with their units, the difference
 * with its expanded uncertainty to two digits (JCGM 100:2008, 7.2.6), and what matters. The item's name is not part
 * of it.
 *
 * @throws {RangeError} when the sheet does not hold the entry's item, or the reason has no sentence
 * @example sentence(entry, context)
 * // "Stated 8.00⁄32 in, found 4.00⁄32 in: the difference of 4.00 ± 0.75⁄32 in is more than the 2⁄32 in that matters."
 */
export const sentence = (entry: Entry, context: SentenceContext): string => {
  const item = sheetWords(context.sheet).findItem(entry.item);
  if (item === undefined) throw new RangeError(`The sheet holds no item ${entry.item}.`);
  const id = lineIdOf(entry, context);
  if (!isLineId(id)) throw new RangeError(`There is no sentence for the reason ${entry.reason}.`);
  const { a, b } = context.kinds;
  const reports = { A: reportSays(a), B: reportSays(b), theA: reportName(a), theB: reportName(b) };
  const values = {
    ...reports,
    a: saidBy(entry, "a", context, item),
    b: saidBy(entry, "b", context, item),
    ...figureValues(entry, context),
    ...atomValues(entry, item, context),
    ...notSeenReason(entry),
    ...whyUnjudged(entry, item),
  };
  const line = formatMessage<string>(lineMessages.templates[id], values);
  const passes = passesClause(entry, reports);
  const corrected = correctedAlone(entry, context, item);
  const limits = limitClauses(entry, reports, context);
  return capital(clauseMessages.say("whole", { line, passes, corrected, limits }));
};

type ReportWords = Pick<Report, "kind" | "findings" | "scales">;

const sideAnswer = (report: ReportWords, index: number | null): SideAnswer | null => {
  const finding = index === null ? undefined : report.findings[index];
  return finding === undefined ? null : { answer: finding.answer, scales: report.scales };
};

/**
 * What `sentence` needs, out of the two reports that were compared.
 *
 * @example sentence(entry, sentenceContext(entry, sheet, statement, inspection))
 */
export const sentenceContext = (
  entry: Entry,
  sheet: Sheet,
  a: ReportWords,
  b: ReportWords,
): SentenceContext => ({
  sheet,
  a: sideAnswer(a, entry.finding.a),
  b: sideAnswer(b, entry.finding.b),
  kinds: { a: a.kind, b: b.kind },
});
