import type { SideAnswer } from "@evenhand/comparison/sentence";
import type { Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { answerWords, denialWords, faultWords } from "@evenhand/wording/answer-words";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { foundMessages } from "./messages.ts";

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

/**
 * A claim and its place in words.
 *
 * @example claimWords("tread depth, spare", "6 mm") // "tread depth, spare: 6 mm"
 */
export const claimWords = (place: string, claim: string | undefined): string =>
  foundMessages.say("line", { place, said: claim ?? foundMessages.say("claimed") });

/** With what was stated behind it, where something was. */
export const withClaim = (line: string, claim: string | undefined): string =>
  claim === undefined ? line : foundMessages.say("stated", { line, claim });

/**
 * A line in a few words: what was found where, and what was stated where that differs.
 *
 * @example phraseOf(entry, reports) // "lining thickness, left front: 2 mm (stated: 10 mm)"
 */
export const phraseOf = (entry: Entry, reports: Reports): string => {
  const place = placeWords(entry, reports.sheet);
  const [a, b] = [saidOf(entry, "a", reports), saidOf(entry, "b", reports)];
  const { outcome, finding, standing } = entry;
  const line = (instead: "bad" | "not-seen" | "found"): string =>
    foundMessages.say("line", { place, said: b ?? foundMessages.say(instead) });
  if (standing === "agreed-fault") {
    return a === b ? foundMessages.say("as-stated", { line: line("bad") }) : withClaim(line("bad"), a);
  }
  if (outcome === "unseen") return withClaim(line("not-seen"), a);
  if (finding.b !== null) return withClaim(line("found"), a);
  return foundMessages.say("contradicted", { place, claim: a ?? foundMessages.say("nothing") });
};
