import type { FirmLimits, MakerData } from "@evenhand/shared/cross-check";
import type { AnswerKind, ReadingValue } from "@evenhand/shared/answer";
import type { Report } from "@evenhand/shared/report";
import type { Estimate } from "@evenhand/measurement/estimate";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { movingSide, readSideInto, sideEstimate } from "@evenhand/sheet/reading-side";
import { dayOf, findIsoRange } from "../day/index.ts";
import { answeredBy, findAt, isSpokenOf } from "./indexed-report.ts";
import type { Kept } from "./once.ts";
import type { Answered, Found, IndexedReport, Read, Side } from "./indexed-report.ts";

export { indexReport } from "./indexed-report.ts";
export type { Answered, Found, IndexedReport, Read, Side } from "./indexed-report.ts";

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
  /** What `onceAView` worked out so far. It changes no answer. */
  readonly kept: Kept[];
};

/** The same view with its readings from one side alone; nothing that was worked out of the whole view holds there. */
export const readingsOf = (view: View, side: Side): View => ({ ...view, readings: [side], kept: [] });

const isKind = <K extends AnswerKind>(found: Answered, kind: K): found is Answered & Read<K> =>
  found.answer.kind === kind;

const readAt = <K extends AnswerKind>(
  answered: readonly Answered[],
  position: string,
  kind: K,
): Read<K> | undefined => {
  const found = findAt(answered, position);
  return found !== undefined && isKind(found, kind) ? found : undefined;
};

/** What one side says of an item in the kind asked for, whoever a view takes its readings from. */
export const readFrom = <K extends AnswerKind>(
  view: View,
  side: Side,
  item: string,
  position: string,
  kind: K,
): Read<K> | undefined => readAt(answeredBy(view.reports[side], item), position, kind);

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

/** Whether somebody whose claims or readings a view takes says anything of an item, by its place in the sheet, seen or not. */
export const isAnswered = ({ reports, claims, readings }: View, order: number): boolean => {
  const own = reports[claims];
  if (own !== undefined && isSpokenOf(own, order)) return true;
  for (const side of readings) {
    const report = reports[side];
    if (report !== undefined && isSpokenOf(report, order)) return true;
  }
  return false;
};

/** Whether each is of the kind, and at a position of its own. */
const areOnce = <K extends AnswerKind>(
  answered: readonly Answered[],
  kind: K,
): answered is readonly (Answered & Read<K>)[] =>
  answered.every((found) => isKind(found, kind) && findAt(answered, found.position) === found);

/** Whether a side that comes before one of the readings has the position too. */
const isAnsweredBefore = (view: View, at: number, item: string, position: string): boolean => {
  for (let before = 0; before < at; before += 1) {
    const side = view.readings[before];
    if (side !== undefined && findAt(answeredBy(view.reports[side], item), position) !== undefined)
      return true;
  }
  return false;
};

const noReads: readonly never[] = [];

/** What a side and those after it have of an item at the positions that none before it answered. */
const readsAt = <K extends AnswerKind>(view: View, at: number, kind: K, item: string): readonly Read<K>[] => {
  const side = view.readings[at];
  const answered = side === undefined ? [] : answeredBy(view.reports[side], item);
  if (answered.length === 0) return noReads;
  if (at === 0 && areOnce(answered, kind)) return answered;
  const reads: Read<K>[] = [];
  for (const { position } of answered) {
    if (isAnsweredBefore(view, at, item, position)) continue;
    const read = findRead(view, kind, item, position);
    if (read !== undefined) reads.push(read);
  }
  return reads;
};

/** Every position of an item that some side of the readings answered in the kind asked for, first answered first. */
export const findReads = <K extends AnswerKind>(view: View, kind: K, item: string): readonly Read<K>[] => {
  const reads = readsAt(view, 0, kind, item);
  if (view.readings.length === 1) return reads;
  const others = readsAt(view, 1, kind, item);
  return others.length === 0 ? reads : reads.length === 0 ? others : [...reads, ...others];
};

/** The same for the side whose claims are tested. */
export const findClaims = <K extends AnswerKind>(view: View, kind: K, item: string): readonly Read<K>[] => {
  const answered = answeredBy(view.reports[view.claims], item);
  if (areOnce(answered, kind)) return answered;
  return answered.flatMap(({ position }) => findClaim(view, kind, item, position) ?? []);
};

/** What a side says of an item, at every position. */
export const answersOf = (view: View, side: Side, item: string): readonly Answered[] =>
  answeredBy(view.reports[side], item);

/** The option chosen, where it is known. */
export const optionOf = (read: Read<"choice"> | undefined): string | undefined =>
  read === undefined || read.answer.option === "not-known" ? undefined : read.answer.option;

/** Every option chosen, where several can be true at once. */
export const optionsOf = (read: Read<"choice"> | undefined): readonly string[] =>
  read === undefined ? [] : [read.answer.option, ...(read.answer.also ?? [])];

/** `whole`: everything counts, as against a limit. `differences`: what one instrument shares over all readings cancels. */
export type UncertaintyOf = "whole" | "differences";

/** Every reading is read into it in turn. */
const moving = movingSide();

const workOut = (
  view: View,
  { side, item, finding, answer }: Read<"reading">,
  of: UncertaintyOf,
  values: readonly ReadingValue[] = answer.values,
): Estimate | undefined => {
  const spec = view.sheet.items.get(item)?.item.reading;
  if (spec === undefined) return undefined;
  const { instrument } = finding;
  const instruments = instrument === undefined ? undefined : view.reports[side]?.report.instruments;
  const own = instruments?.find(({ id }) => id === instrument);
  const read = values === answer.values ? answer : { ...answer, values: [...values] };
  return sideEstimate(readSideInto(moving, read, spec, own), of === "whole");
};

/** A reading as an estimate in the item's base unit. */
export const estimateOf = (
  view: View,
  read: Read<"reading">,
  of: UncertaintyOf = "whole",
): Estimate | undefined => (read[of] ??= workOut(view, read, of));

/** The lowest value of a reading by itself, which the scatter between spots says nothing of. */
export const lowestOf = (view: View, read: Read<"reading">): Estimate | undefined => {
  const { values } = read.answer;
  const lowest = values.toSorted((a, b) => a.value - b.value)[0];
  if (lowest === undefined) return undefined;
  return values.length === 1 ? estimateOf(view, read) : workOut(view, read, "whole", [lowest]);
};

/** A condition noted with a finding, as a number. */
export const numberNoted = (read: Found | undefined, condition: string): number | undefined => {
  const noted = read?.finding.conditions?.[condition];
  return typeof noted === "number" ? noted : undefined;
};

const startOf = ({ visit }: Report): number | null => findIsoRange(visit.started.slice(0, 10))?.first ?? null;

/** The day a report was made. */
export const visitDay = (view: View, side: Side): number | undefined => {
  const indexed = view.reports[side];
  if (indexed === undefined) return undefined;
  indexed.visitDay ??= startOf(indexed.report);
  return indexed.visitDay ?? undefined;
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
