import type { Grid, Row } from "../grid/index.ts";
import { carriedDown } from "../carried-down/index.ts";
import { isPlaceOnly, labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import { isBlank } from "../outcome-words/index.ts";
import { readValue } from "../read-value/index.ts";
import type { Writing } from "../read-value/numbers.ts";
import { isLegend } from "../legends/index.ts";
import { isFact, isRemark, labelAndValue } from "../row-words/index.ts";
import { sectionsOf } from "../sections/index.ts";
import { sensedIn } from "../sensed-words/index.ts";
import { spelledEnds } from "../spelled-ends/index.ts";
import { claimsOf } from "../table-claims/index.ts";
import { planOf } from "../table-plan/index.ts";
import type { Claim } from "../table-claims/index.ts";
import type { Plan } from "../table-plan/index.ts";
import { isTitle } from "../heading-rows/index.ts";
import { tablesOf } from "../table-shape/index.ts";
import type { NamesItem } from "../table-columns/index.ts";
import type { Table } from "../table-shape/index.ts";
import { placeIn, readAt } from "./below.ts";
import type { NoteKind } from "./outcome.ts";
import { inItsWords, isListOfRemarks, ownCells } from "./own-words.ts";

/** A row with what it says, and the words above it; of a row that says nothing, what it is. */
export type ReadRow = {
  readonly row: Row;
  readonly claims: readonly Claim[];
  readonly around: readonly string[];
  readonly sections: readonly string[];
  readonly note?: NoteKind;
  /** Before the first heading stand facts of the visit, and only what is certain is a finding. */
  readonly preamble: boolean;
  /** One of a list of notes: what names nothing in it is a remark. */
  readonly listed: boolean;
};

/** A heading of rows: merged over them, in capitals, ending in a colon, or the name of a part of the car. */
const isSectionHeading = (row: Row, text: string): boolean =>
  sectionsOf(text).length > 0 ||
  row.cells.some(({ under }) => under === "left") ||
  (/[A-Z]{3}/.test(text) && text === text.toUpperCase()) ||
  text.endsWith(":");

/** `G | TYRES`: a heading of rows beside its own letter or number. */
const isNumberedHeading = ([first = "", second = "", ...others]: readonly string[]): boolean =>
  others.length === 0 &&
  /^(?:[A-Z]|\d{1,2}|[IVX]{1,4})[.):]?$/.test(first) &&
  (sectionsOf(second).length > 0 || (/^[A-Z]/.test(first) && /^[A-Z &/]{5,}$/.test(second)));

type Above = {
  readonly text: string;
  readonly words: readonly string[];
  readonly sections: readonly string[];
};

const aboveOf = (text: string): Above => ({
  text,
  words: labelOf(text).core,
  sections: sectionsOf(text),
});

/** `N/S/F | 6 mm` below `TYRES`: a row that says only where is of what stands above it. */
const namedBy =
  ({ text }: Above) =>
  (claim: Claim): Claim =>
    text !== "" && claim.heading === undefined && claim.where.slice(0, 1).some(isPlaceOnly)
      ? { ...claim, names: [...claim.names, labelOf(text)] }
      : claim;

/** `Oil: clean` in one cell, as a claim like any other. */
const inOneCell = (text: string, column: number, writing: Writing): Claim | undefined => {
  const parts = labelAndValue(text);
  if (parts === undefined || isRemark(parts.label)) return undefined;
  const label = labelOf(parts.label);
  const value = readValue(parts.value, writing);
  return {
    names: [label],
    where: [label],
    value,
    note: value.remark ?? "",
    unit: label.unit,
    fromNote: false,
    column,
  };
};

const SHIFTS = /\b(?:shift|slip|crunch|grind|jump|notch|drop|leak)/i;

/** `Transmission: shifts clean` is no fact of the papers. */
const saysOfPart = (label: string, claims: readonly Claim[]): boolean =>
  /^(?:transmission|trim|doors|colou?r)\b/i.test(label.trim()) &&
  claims.some(
    ({ value, rated }) =>
      rated === true ||
      (value.outcome !== undefined && !/^colou?r/i.test(label.trim())) ||
      sensedIn(value.text).length > 0 ||
      SHIFTS.test(value.text) ||
      (/^doors\b/i.test(label.trim()) && !COUNTED.test(value.text)),
  );

/** `Doors: 2` counts them. */
const COUNTED = /^\s*(?:\d|two|three|four|five)\b[\w -]{0,8}$/i;

/** Whether a name is a fact of the visit or the papers, and nothing is said of the car by it. */
const isOfVisit = (label: string, claims: readonly Claim[]): boolean =>
  isFact(label) && !saysOfPart(label, claims);

/** Facts at the top come in pairs: a name, and beside it what it is. */
const inPairs = (row: Row, writing: Writing): Claim[] => {
  const cells = row.cells
    .map(({ text, under }, index) => ({ text: under === "left" ? "" : text.trim(), index }))
    .filter(({ text }) => text !== "");
  const claims: Claim[] = [];
  for (let at = 0; at < cells.length; at += 1) {
    const cell = cells[at];
    if (cell === undefined) continue;
    const alone = inOneCell(cell.text, cell.index, writing);
    if (alone !== undefined) {
      if (!isOfVisit(labelAndValue(cell.text)?.label ?? "", [alone])) claims.push(alone);
      continue;
    }
    const next = cells[at + 1];
    if (next === undefined || isFact(cell.text) || /:\s*\S/.test(next.text)) continue;
    const label = labelOf(cell.text);
    const [value, third] = [readValue(next.text, writing), cells[at + 2]];
    const unit = label.unit ?? (third === undefined ? undefined : labelOf(`x (${third.text})`).unit);
    claims.push({
      names: [label],
      where: [label],
      value,
      note: "",
      unit,
      fromNote: false,
      column: next.index,
    });
    at += 1;
  }
  return claims;
};

const loneNote = (row: Row, text: string): NoteKind => {
  if (sectionsOf(text).length > 0) return "heading";
  if (isRemark(text.replace(/[:–-].*$/s, "")) || isLegend(text) || text.length > 90) return "remark";
  if (isFact(labelAndValue(text)?.label ?? text)) return "fact";
  if (isSectionHeading(row, text)) return "heading";
  return text.split(/\s+/).length > 6 ? "remark" : "left-blank";
};

/** `Summary: an honest car that needs work …` */
const LENGTH = 40;
const isSaidAtLength = ({ fromNote, value }: Claim): boolean => fromNote || value.text.length > LENGTH;

const nothing = { claims: [], preamble: false } as const;

class Rows {
  private above: Above = aboveOf("");
  readonly read: ReadRow[] = [];
  private readonly writing: Writing;
  private readonly isList: boolean;
  private place: Label | undefined;

  constructor(grid: Grid, writing: Writing) {
    this.writing = writing;
    this.isList = isListOfRemarks(grid);
    this.above = aboveOf(grid.name);
    this.place = placeIn(grid.name);
  }

  table(written: Table, preamble: boolean): void {
    const table = { ...written, rows: carriedDown(written.rows) };
    for (const row of table.headings) this.heading(row);
    const plans = table.groups.map((columns) => planOf(columns, table));
    for (const row of table.rows) this.row(row, plans, preamble);
  }

  private heading(row: Row): void {
    const [first = ""] = ownCells(row);
    if (sectionsOf(first).length > 0) this.above = aboveOf(first);
    this.push(row, [], "heading", false);
  }

  private push(
    row: Row,
    claims: readonly Claim[],
    note: NoteKind | undefined,
    preamble: boolean,
    groups: readonly string[] = [],
  ): void {
    const around = [...this.above.words, ...groups.flatMap((text) => labelOf(text).core)];
    const grouped = groups.flatMap(sectionsOf);
    const listed = this.isList && ownCells(row).length === 1;
    const sections = grouped.length > 0 ? grouped : this.above.sections;
    const base = { row, around, sections, listed };
    const named = claims.map(namedBy(this.above));
    const placed = this.place === undefined ? named : named.map(readAt(this.place));
    this.read.push(
      note === undefined ? { ...base, claims: placed, preamble } : { ...base, ...nothing, note },
    );
  }

  private row(row: Row, plans: readonly Plan[], preamble: boolean): void {
    const cells = ownCells(row);
    const [first = ""] = cells;
    if (cells.length === 1 || isTitle(row)) return this.lone(row, first);
    if (isNumberedHeading(cells)) return this.lone(row, cells[1] ?? "");
    if (cells.some(isLegend)) return this.push(row, [], "remark", false);
    if (preamble && (cells.length > 2 || plans.every(({ labels }) => labels.length === 0)))
      return this.facts(row, true);
    const spoken = cells.filter((cell) => labelAndValue(cell) !== undefined).length;
    if (spoken >= 2 && spoken >= cells.length / 2) return this.facts(row, false);
    const read = plans.map((plan) => claimsOf(row, plan, this.writing));
    const claims = read.flatMap((one) => one.claims);
    const labels = read.map(({ label }) => label).filter((label) => label !== "");
    if (
      labels.length > 0 &&
      labels.every((label) => isOfVisit(label, claims) || (isRemark(label) && claims.every(isSaidAtLength)))
    )
      return this.push(row, [], isFact(first) ? "fact" : "remark", false);
    const group = plans.flatMap((plan) =>
      plan.labels.slice(0, -1).map(({ index }) => row.cells[index]?.text ?? ""),
    );
    if (claims.length > 0) return this.push(row, claims, undefined, preamble, group);
    const note = read.some((one) => one.note !== "") || labels.length === 0 ? "remark" : "left-blank";
    return this.push(row, [], note, false);
  }

  private facts(row: Row, preamble: boolean): void {
    const claims = inPairs(row, this.writing);
    this.push(row, claims, claims.length === 0 ? "fact" : undefined, preamble);
  }

  private lone(row: Row, text: string): void {
    const column = row.cells.findIndex((cell) => cell.text.trim() !== "");
    const claim = isLegend(text) ? undefined : inOneCell(text, column, this.writing);
    const label = labelAndValue(text)?.label ?? "";
    const fact = isOfVisit(label, claim === undefined ? [] : [claim]);
    if (claim !== undefined && !fact)
      return this.push(row, [claim], undefined, text.length > 90 || this.read.length < 2);
    const own = loneNote(row, text);
    if (this.isList && own === "left-blank" && this.read.length > 0)
      return this.push(row, [inItsWords(text, column, this.writing)], undefined, false);
    const note = own === "left-blank" && this.read.length === 0 ? "heading" : own;
    if (note === "heading" && !isBlank(text)) {
      this.above = aboveOf(text);
      this.place = placeIn(text);
    }
    return this.push(row, [], note, false);
  }
}

/**
 * Every row of a grid with what it says: headings found, columns given their roles, names completed by what stands above.
 */
export const rowsOf = (grid: Grid, writing: Writing, namesItem: NamesItem): readonly ReadRow[] => {
  const spelled = spelledEnds(grid);
  const tables = tablesOf(spelled, namesItem);
  const rows = new Rows(spelled, writing);
  for (const [at, table] of tables.entries())
    rows.table(table, at === 0 && table.headings.length === 0 && tables.length > 1);
  return rows.read;
};

/** The text of a row, for whoever reads what became of it. */
export const rowText = ({ cells }: Row): string =>
  cells
    .filter(({ text, under }) => text.trim() !== "" && under !== "left")
    .map(({ text, written }) => (written ?? text).replaceAll(/\s+/g, " ").trim())
    .join(" | ")
    .slice(0, 300);
