import type { Answer, AnswerKind, AnswerOf } from "@evenhand/shared/answer";
import type { EntryReference } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { Estimate } from "@evenhand/measurement/estimate";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { isInWords } from "../code-text/index.ts";

export type Side = EntryReference["side"];

/** A finding as a rule reads it: where, and on which side. One object for all rules and views. */
export type Found = {
  readonly side: Side;
  readonly item: string;
  readonly position: string;
  readonly finding: Finding;
  /** Of a reading, its estimates as far as they were asked for. They change no answer. */
  whole?: Estimate | undefined;
  differences?: Estimate | undefined;
};

/** The same with its answer, of the kind asked for. */
export type Read<K extends AnswerKind> = Found & { readonly answer: AnswerOf<K> };

/** A finding with its answer, of whatever kind. */
export type Answered = Found & { readonly answer: Answer };

/** One report and its findings by item; those of one item are few, each at a position of its own. */
export type IndexedReport = {
  readonly side: Side;
  readonly report: Report;
  readonly items: CompiledSheet["items"];
  /** The first finding of an item, by the item's place in the sheet; -1 where there is none. */
  readonly first: Int32Array;
  /** The next finding of the same item, by finding; -1 behind the last. */
  readonly next: Int32Array;
  /** What was asked for so far, and by the item's place in the sheet which of it, from 1; 0 where it was not asked for. */
  readonly asked: (readonly Answered[])[];
  readonly which: Int32Array;
  /** `null` where the day is none. */
  visitDay?: number | null;
};

const NOWHERE = -1;
const NOBODY: readonly Answered[] = [];

/**
 * A report's findings by item.
 *
 * @param side the side a report is in its views
 * @example answeredBy(indexReport(report, sheet, "a"), "wheels.tread-depth").length // 5: one a wheel
 */
export const indexReport = (
  report: Report,
  { items }: Pick<CompiledSheet, "items">,
  side: Side,
): IndexedReport => {
  const { findings } = report;
  const first = new Int32Array(items.size).fill(NOWHERE);
  const next = new Int32Array(findings.length).fill(NOWHERE);
  let item: string | undefined;
  let order = NOWHERE;
  // From behind, so that each item's findings follow each other as they were written.
  for (let index = findings.length - 1; index >= 0; index -= 1) {
    const finding = findings[index];
    if (finding === undefined) continue;
    // Findings of one item mostly stand together.
    if (finding.item !== item) {
      item = finding.item;
      order = items.get(item)?.order ?? NOWHERE;
    }
    if (order === NOWHERE) continue;
    next[index] = first[order] ?? NOWHERE;
    first[order] = index;
  }
  const which = new Int32Array(items.size);
  return { side, report, items, first, next, asked: [], which, visitDay: undefined };
};

const foundOf = (finding: Finding, side: Side): Answered => ({
  side,
  item: finding.item,
  position: finding.position,
  finding,
  answer: finding.answer,
  whole: undefined,
  differences: undefined,
});

/** "Same", "matches", "new" where a number or a date is asked for: nothing that a rule could set against another number. */
const isNoNumber = ({ answer, item }: Finding, { items }: IndexedReport): boolean => {
  if (answer.kind !== "code") return false;
  const system = items.get(item)?.item.code?.system;
  return system !== undefined && isInWords(system, answer.text);
};

const readItem = (indexed: IndexedReport, first: number): readonly Answered[] => {
  const { report, side, next } = indexed;
  const made: Answered[] = [];
  for (let index = first; index >= 0; index = next[index] ?? NOWHERE) {
    const finding = report.findings[index];
    if (finding !== undefined && !isNoNumber(finding, indexed)) made.push(foundOf(finding, side));
  }
  return made;
};

/** What a report says of an item, as it was written; but words where a number is asked for. */
export const answeredBy = (indexed: IndexedReport | undefined, item: string): readonly Answered[] => {
  const order = indexed?.items.get(item)?.order;
  if (indexed === undefined || order === undefined) return NOBODY;
  const { asked, which, first } = indexed;
  const known = which[order] ?? 0;
  if (known > 0) return asked[known - 1] ?? NOBODY;
  const at = first[order] ?? NOWHERE;
  if (at === NOWHERE) return NOBODY;
  const made = readItem(indexed, at);
  which[order] = asked.push(made);
  return made;
};

/** Whether a report says anything of an item, seen or not, by the item's place in the sheet. */
export const isSpokenOf = ({ first }: IndexedReport, order: number): boolean =>
  (first[order] ?? NOWHERE) !== NOWHERE;

/**
 * The finding at a position, of those of one item; the last one written, were there several.
 *
 * @example findAt(answeredBy(indexed, "wheels.tread-depth"), "left-front")?.answer.kind // "reading"
 */
export const findAt = (answered: readonly Answered[], position: string): Answered | undefined => {
  for (let index = answered.length - 1; index >= 0; index -= 1) {
    const found = answered[index];
    if (found?.position === position) return found;
  }
  return undefined;
};
