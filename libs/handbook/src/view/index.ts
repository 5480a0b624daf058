import type { EntryReference, FirmLimits, MakerData } from "@evenhand/shared/cross-check";
import type { Answer, AnswerKind, AnswerOf } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { Estimate } from "@evenhand/measurement/estimate";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { readSide, sideEstimate } from "@evenhand/sheet/reading-side";
import type { ReadingSide } from "@evenhand/sheet/reading-side";
import { dayOf, findIsoRange } from "../day/index.ts";

export type Side = EntryReference["side"];

/** A finding as a rule reads it: where, and on which side. */
export type Found = {
  readonly side: Side;
  readonly item: string;
  readonly position: string;
  readonly finding: Finding;
};

/** The same with its answer, of the kind asked for. */
export type Read<K extends AnswerKind> = Found & { readonly answer: AnswerOf<K> };

/** A finding with its answer, of whatever kind. */
export type Answered = Found & { readonly answer: Answer };

/** The findings of one report by item; those of one item are few, each at a position of its own. */
export type FindingIndex = ReadonlyMap<string, readonly Finding[]>;

const NOTHING: readonly Finding[] = [];

/**
 * Findings by item.
 *
 * @example indexFindings(report).get("wheels.tread-depth")?.length // 5: one a wheel
 */
export const indexFindings = ({ findings }: Pick<Report, "findings">): FindingIndex => {
  const index = new Map<string, Finding[]>();
  let item: string | undefined;
  let ofItem: Finding[] | undefined;
  for (const finding of findings) {
    // Findings of one item mostly stand together.
    if (finding.item !== item) {
      item = finding.item;
      ofItem = index.get(item);
    }
    if (ofItem !== undefined) ofItem.push(finding);
    else index.set(finding.item, (ofItem = [finding]));
  }
  return index;
};

/**
 * The finding of an item at a position; the last one written, were there several.
 *
 * @example findingAt(indexFindings(report), "wheels.tread-depth", "left-front")?.answer.kind // "reading"
 */
export const findingAt = (index: FindingIndex, item: string, position: string): Finding | undefined =>
  index.get(item)?.findLast((finding) => finding.position === position);

/** One report and its findings by place. */
export type IndexedReport = { readonly report: Report; readonly index: FindingIndex };

/** A reading as a side, and its estimates as far as they were asked for. */
type KnownReading = { readonly side: ReadingSide; whole?: Estimate; differences?: Estimate };

/** What several rules ask of one report in several views, worked out once. It changes no answer. */
export type Known = {
  /** Findings by item, as rules read them. */
  readonly found: Map<string, readonly Answered[]>;
  readonly readings: Map<Finding, KnownReading>;
  visitDay?: number | undefined;
};

/** What is known of a report nobody asked anything of. */
export const nothingKnown = (): Known => ({ found: new Map(), readings: new Map() });

/** Whose claims are tested against whose readings: one report's against its own, or one's against both. */
export type View = {
  readonly sheet: CompiledSheet;
  readonly firm: FirmLimits;
  readonly maker: MakerData;
  /** The side whose claims are tested. */
  readonly claims: Side;
  /** Sides readings are taken from, the first that has one. */
  readonly readings: readonly Side[];
  readonly reports: Readonly<Partial<Record<Side, IndexedReport>>>;
  readonly known: Readonly<Record<Side, Known>>;
};

const NOBODY: readonly Answered[] = [];

const foundOf = (finding: Finding, side: Side): Answered => {
  const { item, position, answer } = finding;
  return { side, item, position, finding, answer };
};

/** What a side says of an item, each finding as one object for all rules and views. */
const answeredBy = (view: View, side: Side, item: string): readonly Answered[] => {
  const findings = view.reports[side]?.index.get(item);
  if (findings === undefined) return NOBODY;
  const { found } = view.known[side];
  const known = found.get(item);
  if (known !== undefined) return known;
  const made = findings.map((finding) => foundOf(finding, side));
  found.set(item, made);
  return made;
};

const isKind = <K extends AnswerKind>(found: Answered, kind: K): found is Answered & Read<K> =>
  found.answer.kind === kind;

/** What one side says of an item in the kind asked for, whoever a view takes its readings from. */
export const readFrom = <K extends AnswerKind>(
  view: View,
  side: Side,
  item: string,
  position: string,
  kind: K,
): Read<K> | undefined => {
  const answered = answeredBy(view, side, item);
  for (let index = answered.length - 1; index >= 0; index -= 1) {
    const found = answered[index];
    if (found?.position === position) return isKind(found, kind) ? found : undefined;
  }
  return undefined;
};

/** What was found of an item, from the first side that has it in the kind asked for. */
export const findRead = <K extends AnswerKind>(
  view: View,
  kind: K,
  item: string,
  position = "",
): Read<K> | undefined => {
  for (const side of view.readings) {
    const read = readFrom(view, side, item, position, kind);
    if (read !== undefined) return read;
  }
  return undefined;
};

/** What the side whose claims are tested says of an item. */
export const findClaim = <K extends AnswerKind>(
  view: View,
  kind: K,
  item: string,
  position = "",
): Read<K> | undefined => readFrom(view, view.claims, item, position, kind);

/** What a side says of an item, at every position. */
export const findingsOf = (view: View, side: Side | undefined, item: string): readonly Finding[] =>
  (side === undefined ? undefined : view.reports[side]?.index.get(item)) ?? NOTHING;

/** Whether somebody whose claims or readings a view takes says anything of an item, seen or not. */
export const isAnswered = ({ reports, claims, readings }: View, item: string): boolean =>
  reports[claims]?.index.has(item) === true ||
  readings.some((side) => reports[side]?.index.has(item) === true);

/** Whether a side that comes before one of the readings has the position too. */
const isAnsweredBefore = (view: View, at: number, item: string, position: string): boolean => {
  for (let before = 0; before < at; before += 1) {
    const answered = findingsOf(view, view.readings[before], item);
    if (answered.some((finding) => finding.position === position)) return true;
  }
  return false;
};

/** Every position of an item that some side of the readings answered in the kind asked for, first answered first. */
export const findReads = <K extends AnswerKind>(view: View, kind: K, item: string): Read<K>[] => {
  const reads: Read<K>[] = [];
  for (let at = 0; at < view.readings.length; at += 1) {
    for (const { position } of findingsOf(view, view.readings[at], item)) {
      if (isAnsweredBefore(view, at, item, position)) continue;
      const read = findRead(view, kind, item, position);
      if (read !== undefined) reads.push(read);
    }
  }
  return reads;
};

/** The same for the side whose claims are tested. */
export const findClaims = <K extends AnswerKind>(view: View, kind: K, item: string): Read<K>[] =>
  findingsOf(view, view.claims, item).flatMap(({ position }) => findClaim(view, kind, item, position) ?? []);

/** The option chosen, where it is known. */
export const optionOf = (read: Read<"choice"> | undefined): string | undefined =>
  read === undefined || read.answer.option === "not-known" ? undefined : read.answer.option;

/** Every option chosen, where several can be true at once. */
export const optionsOf = (read: Read<"choice"> | undefined): readonly string[] =>
  read === undefined ? [] : [read.answer.option, ...(read.answer.also ?? [])];

const sideOf = (view: View, read: Read<"reading">, answer = read.answer): ReadingSide | undefined => {
  const spec = view.sheet.items.get(read.item)?.item.reading;
  if (spec === undefined) return undefined;
  const instruments = view.reports[read.side]?.report.instruments;
  const { instrument } = read.finding;
  return readSide(
    answer,
    spec,
    instrument === undefined ? undefined : instruments?.find(({ id }) => id === instrument),
  );
};

const knownReadingOf = (view: View, read: Read<"reading">): KnownReading | undefined => {
  const { readings } = view.known[read.side];
  const kept = readings.get(read.finding);
  if (kept !== undefined) return kept;
  const side = sideOf(view, read);
  if (side === undefined) return undefined;
  const made: KnownReading = { side };
  readings.set(read.finding, made);
  return made;
};

/** `whole`: everything counts, as against a limit. `differences`: what one instrument shares over all readings cancels. */
export type UncertaintyOf = "whole" | "differences";

/** A reading as an estimate in the item's base unit. */
export const estimateOf = (
  view: View,
  read: Read<"reading">,
  of: UncertaintyOf = "whole",
): Estimate | undefined => {
  const known = knownReadingOf(view, read);
  if (known === undefined) return undefined;
  const { side } = known;
  return (known[of] ??= sideEstimate(side, of === "whole"));
};

/** The lowest value of a reading by itself, which the scatter between spots says nothing of. */
export const lowestOf = (view: View, read: Read<"reading">): Estimate | undefined => {
  const lowest = read.answer.values.toSorted((a, b) => a.value - b.value)[0];
  if (lowest === undefined) return undefined;
  const side = sideOf(view, read, { ...read.answer, values: [lowest] });
  return side === undefined ? undefined : sideEstimate(side, true);
};

/** A condition noted with a finding, as a number. */
export const numberNoted = (read: Found | undefined, condition: string): number | undefined => {
  const noted = read?.finding.conditions?.[condition];
  return typeof noted === "number" ? noted : undefined;
};

/** The day a report was made. */
export const visitDay = (view: View, side: Side): number | undefined => {
  const started = view.reports[side]?.report.visit.started;
  const known = view.known[side];
  if (started === undefined) return undefined;
  return (known.visitDay ??= findIsoRange(started.slice(0, 10))?.first);
};

/** The day an entry or bill is dated, where it is written as an ISO date. */
export const noteDay = (text: string | number | boolean | undefined): number | undefined =>
  typeof text === "string" ? findIsoRange(text)?.first : undefined;

/** The car as the side whose claims are tested describes it. */
export const vehicleOf = (view: View) => view.reports[view.claims]?.report.vehicle;

/** First and last day of the years a maker can have made a part in. */
export const makersYears = (from: number, to: number) => ({
  first: dayOf(from, 1, 1),
  last: dayOf(to, 12, 31),
});
