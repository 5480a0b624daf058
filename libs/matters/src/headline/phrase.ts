import { describeAnswer, faultWords, kindWords } from "@evenhand/comparison/sentence";
import type { SideAnswer } from "@evenhand/comparison/sentence";
import type { Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import type { CompiledItem, CompiledSheet } from "@evenhand/sheet/compile-sheet";

/** What headlines are made from beside the lines. */
export type Reports = {
  readonly a: Pick<Report, "findings" | "scales">;
  readonly b: Pick<Report, "findings" | "scales">;
  readonly sheet: CompiledSheet;
};

const positionWords = ({ positionSet }: CompiledItem, position: string): string => {
  if (position === "") return "";
  const named = positionSet?.positions.find(({ id }) => id === position)?.words.american;
  const numbered = positionSet?.numbered;
  if (named !== undefined) return named;
  return numbered !== undefined && position.startsWith(`${numbered.prefix}-`)
    ? `${numbered.words} ${position.slice(numbered.prefix.length + 1)}`
    : position.replaceAll("-", " ");
};

/**
 * Item and position in words.
 *
 * @example placeWords(entry, sheet) // "tread depth, left front"
 */
export const placeWords = ({ item, position }: Entry, sheet: CompiledSheet): string => {
  const compiled = sheet.items.get(item);
  if (compiled === undefined) return item;
  const where = positionWords(compiled, position);
  return where === "" ? compiled.item.words.american : `${compiled.item.words.american}, ${where}`;
};

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
  const { sheet } = reports.sheet;
  if (said.answer.kind === "faults" && entry.atom.of === "fault") {
    const fault = said.answer.found[entry.atom[side] ?? -1];
    if (fault !== undefined) return faultWords(fault, item, sheet);
    if (said.answer.denied !== "all" && said.answer.found.length > 0) return undefined;
  }
  if (entry.atom.of === "denial" && entry.atom.kind !== "all" && entry.atom.by === side) {
    return `no ${kindWords(entry.atom.kind, sheet)}`;
  }
  return describeAnswer(shortened(said), item, sheet);
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
