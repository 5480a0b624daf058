import { listed } from "@evenhand/message/listed";
import { firmnessWords } from "@evenhand/comparison/sentence";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { isDecisive } from "@evenhand/shared/severity";
import type { Section, Sheet } from "@evenhand/shared/sheet";
import { answerWords, denialWords, faultWords } from "@evenhand/wording/answer-words";
import type { AnswerContext } from "@evenhand/wording/answer-words";
import { catalog } from "../words/catalog.ts";
import { sheetWords } from "@evenhand/wording/sheet-words";
import type { SheetWords } from "@evenhand/wording/sheet-words";
import { crossCheckView } from "./cross-checks.ts";
import { figuresText, limitText } from "./figures.ts";

/** What one report says of one entry. */
export type SideView = {
  readonly text: string;
  /** Nothing was said or seen. */
  readonly silent: boolean;
  /** Hedged or second-hand; `null` where it is asserted or silent. */
  readonly firmness: string | null;
  readonly note: string | null;
};

/** One entry of the comparison, in words. */
export type Row = {
  readonly index: number;
  readonly entry: Entry;
  readonly item: string;
  readonly position: string;
  readonly stated: SideView;
  readonly found: SideView;
  readonly figures: string | null;
  readonly limits: readonly string[];
  readonly sentence: string;
};

export type SectionView = {
  readonly section: Section;
  /** What a person reads line by line. */
  readonly rows: readonly Row[];
  /** Unseen, gathered by item: the name of each item with the places left unseen. */
  readonly unseen: readonly { readonly item: string; readonly places: number; readonly stated: number }[];
  readonly unseenPlaces: number;
  /** Seen, sound and not stated. */
  readonly quiet: number;
};

export type View = {
  readonly comparison: Comparison;
  readonly a: Report;
  readonly b: Report;
  readonly sections: readonly SectionView[];
  readonly pressing: readonly Row[];
  /** What a purchase can turn on and nobody saw, by name. */
  readonly unseenDecisive: readonly string[];
  readonly crossChecks: CrossCheckView;
};

/** A rule that breaks: whose figures speak, what the rule is called, what it says. */
export type BrokenRule = {
  readonly title: string;
  /** Places of what it read: left front, engine block. */
  readonly places: readonly string[];
  readonly over: "a" | "b" | "both";
  readonly strength: Comparison["crossChecks"][number]["strength"];
  readonly sentence: string;
};

/** What the figures give away: broken rules one by one, the rest counted by rule. */
export type CrossCheckView = {
  readonly broken: readonly BrokenRule[];
  readonly holding: readonly { readonly title: string; readonly checks: number }[];
  readonly untold: number;
};

/** Wording made elsewhere: the sentences of entries and of cross-checks. */
export type Sentences = {
  readonly entry: (entry: Entry) => string;
  readonly crossCheck: (check: Comparison["crossChecks"][number]) => string;
  /** What a rule is called. */
  readonly rule: (rule: string) => string;
};

export type ViewInput = {
  readonly comparison: Comparison;
  readonly a: Report;
  readonly b: Report;
  readonly sheet: Sheet;
  readonly sentences: Sentences;
};

const atomText = (entry: Entry, side: "a" | "b", finding: Finding, context: AnswerContext): string => {
  const { atom } = entry;
  if (atom.of === "answer" || finding.answer.kind !== "faults") return answerWords(finding.answer, context);
  if (atom.of === "denial") {
    const denies = atom.by === side || atom.by === "both";
    return denies ? denialWords(atom.kind, context) : catalog.silent;
  }
  const index = atom[side];
  const fault = index === undefined ? undefined : finding.answer.found[index];
  if (fault !== undefined) return faultWords(fault, context);
  const { denied } = finding.answer;
  const denies = denied === "all" || denied.includes(atom.kind);
  return denies ? answerWords({ ...finding.answer, found: [], denied }, context) : catalog.silent;
};

const sideView = (entry: Entry, side: "a" | "b", report: Report, context: AnswerContext): SideView => {
  const index = entry.finding[side];
  const finding = index === null ? undefined : report.findings[index];
  if (finding === undefined) return { text: catalog.silent, silent: true, firmness: null, note: null };
  return {
    text: atomText(entry, side, finding, context),
    silent: finding.answer.kind === "not-seen",
    firmness: finding.firmness === "asserted" ? null : firmnessWords(finding.firmness),
    note: finding.note ?? null,
  };
};

const rowOf = (index: number, entry: Entry, words: SheetWords, input: ViewInput): Row => {
  const item = words.findItem(entry.item);
  const context = (report: Report): AnswerContext => ({ sheet: words, item, scales: report.scales });
  return {
    index,
    entry,
    item: words.item(entry.item),
    position: words.position(item, entry.position),
    stated: sideView(entry, "a", input.a, context(input.a)),
    found: sideView(entry, "b", input.b, context(input.b)),
    figures: entry.figures === undefined ? null : figuresText(entry.figures),
    limits: (entry.limits ?? []).map(limitText),
    sentence: input.sentences.entry(entry),
  };
};

/** Unseen and nothing more; what figures contradict is read line by line. */
const isUnseen = ({ entry }: Row): boolean => entry.outcome === "unseen" && entry.standing === "unseen";
const isQuiet = ({ entry }: Row): boolean => entry.coverageOnly === true;

const unseenByItem = (rows: readonly Row[]): SectionView["unseen"] =>
  [...Map.groupBy(rows, (row) => row.entry.item).values()].map((group) => ({
    item: group[0]?.item ?? "",
    places: group.length,
    stated: group.filter(({ entry }) => entry.finding.a !== null).length,
  }));

const sectionView = (section: Section, rows: readonly Row[]): SectionView => {
  const unseen = rows.filter(isUnseen);
  return {
    section,
    rows: rows.filter((row) => !isUnseen(row) && !isQuiet(row)),
    unseen: unseenByItem(unseen),
    unseenPlaces: unseen.length,
    quiet: rows.filter(isQuiet).length,
  };
};

/** An item with the number of its places, where there are several: `rails (4)`. */
export const countedItem = ({ item, places }: { readonly item: string; readonly places: number }): string =>
  places > 1 ? catalog.noted(item, places) : item;

/** Item and position in one line: `tread depth, left front`. */
export const placeText = ({ item, position }: Pick<Row, "item" | "position">): string =>
  position === "" ? item : listed([item, position]);

/** Equal words need no sentence; equal readings do, for the figures. */
export const needsSentence = ({ entry }: Row): boolean =>
  entry.outcome !== "agree" || entry.figures?.of === "reading" || entry.figures?.of === "color";

/**
 * Everything a page or a terminal shows of a comparison, in words and in the order of the sheet. Nothing is judged here.
 */
export const viewOf = (input: ViewInput): View => {
  const words = sheetWords(input.sheet);
  const rows = input.comparison.entries.map((entry, index) => rowOf(index, entry, words, input));
  const bySection = Map.groupBy(rows, ({ entry }) => words.findItem(entry.item)?.section ?? "");
  return {
    comparison: input.comparison,
    a: input.a,
    b: input.b,
    sections: input.sheet.sections
      .map((section) => sectionView(section, bySection.get(section.id) ?? []))
      .filter(({ rows: shown, unseenPlaces, quiet }) => shown.length + unseenPlaces + quiet > 0),
    pressing: input.comparison.order.flatMap((index) => rows[index] ?? []),
    unseenDecisive: unseenByItem(rows.filter((row) => isUnseen(row) && isDecisive(row.entry.severity))).map(
      countedItem,
    ),
    crossChecks: crossCheckView(input.comparison.crossChecks, input.sentences, words),
  };
};
