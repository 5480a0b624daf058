import type { SideAnswer } from "@evenhand/comparison/sentence";
import type { Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { answerWords, denialWords, faultWords } from "@evenhand/wording/answer-words";
import { sheetWords } from "@evenhand/wording/sheet-words";

/** What headlines are made from beside the lines. */
export type Reports = {
  readonly a: Pick<Report, "findings" | "scales">;
  readonly b: Pick<Report, "findings" | "scales">;
  readonly sheet: CompiledSheet;
};

/**
 * Item and position in words.
 *
 * @example placeWords(entry, sheet) // "tread depth, left front"
 */
export const placeWords = ({ item, position }: Entry, { sheet }: CompiledSheet): string =>
  sheetWords(sheet).place(item, position);

const answerOf = (report: Reports["a"], index: number | null): SideAnswer | undefined => {
  const finding = index === null ? undefined : report.findings[index];
  return finding === undefined ? undefined : { answer: finding.answer, scales: report.scales };
};

const MANY = 3;

/** Three readings are given, more as from lowest to highest. */
const shortened = (side: SideAnswer): SideAnswer => {
  const { answer } = side;
  if (answer.kind !== "reading" || answer.values.length <= MANY) return side;
  const sorted = answer.values.toSorted((a, b) => a.value - b.value);
  const ends = [sorted[0], sorted.at(-1)].filter((value) => value !== undefined);
  return { ...side, answer: { ...answer, values: ends } };
};

/**
 * What one side said of a line, in words; `undefined` where it said nothing.
 *
 * @example saidOf(entry, "b", reports) // "2 mm"
 */
export const saidOf = (entry: Entry, side: "a" | "b", reports: Reports): string | undefined => {
  const said = answerOf(reports[side], entry.finding[side]);
  const item = reports.sheet.items.get(entry.item)?.item;
  if (said === undefined || item === undefined) return undefined;
  const sheet = sheetWords(reports.sheet.sheet);
  if (said.answer.kind === "faults" && entry.atom.of === "fault") {
    const fault = said.answer.found[entry.atom[side] ?? -1];
    if (fault !== undefined) return faultWords(fault, { sheet, item });
    if (said.answer.denied !== "all" && said.answer.found.length > 0) return undefined;
  }
  if (entry.atom.of === "denial" && entry.atom.kind !== "all" && entry.atom.by === side) {
    return denialWords(entry.atom.kind, { sheet });
  }
  const { answer, scales } = shortened(said);
  return answerWords(answer, { sheet, item, scales }, "said");
};

const stated = (words: string | undefined): string => (words === undefined ? "" : ` (stated: ${words})`);

/**
 * A line in a few words: what was found where, and what was stated where that differs.
 *
 * @example phraseOf(entry, reports) // "lining thickness, left front: 2 mm (stated: 10 mm)"
 */
export const phraseOf = (entry: Entry, reports: Reports): string => {
  const place = placeWords(entry, reports.sheet);
  const [a, b] = [saidOf(entry, "a", reports), saidOf(entry, "b", reports)];
  const { outcome, finding, standing } = entry;
  if (standing === "agreed-fault") return `${place}: ${b ?? "bad"}${a === b ? " (as stated)" : stated(a)}`;
  if (outcome === "unseen") return `${place}: ${b ?? "not seen"}${stated(a)}`;
  if (finding.b === null) return `${place}: stated ${a ?? "nothing"}, which figures contradict`;
  return `${place}: ${b ?? "found"}${stated(a)}`;
};
