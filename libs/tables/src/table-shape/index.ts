import type { Cell, Grid, Row } from "../grid/index.ts";
import { headingOf, headingsOf, isCount } from "../headings/index.ts";
import type { Heading } from "../headings/index.ts";
import { labelOf } from "../label/index.ts";
import { isBlank, isMark, outcomeOf } from "../outcome-words/index.ts";
import { isNumeric } from "../read-value/numbers.ts";
import { sectionsOf } from "../sections/index.ts";

/** A column of a table: where it stands, what its headings say, and what it holds. `item`: its heading names what was looked at. */
export type Column = {
  readonly index: number;
  readonly heading: string;
  readonly role: Heading["role"] | "item" | "unknown";
  readonly outcome?: Heading["outcome"];
  readonly grade?: string;
};

/** Rows that share headings; `groups` are tables that stand side by side in them. */
export type Table = {
  readonly headings: readonly Row[];
  readonly rows: readonly Row[];
  readonly groups: readonly (readonly Column[])[];
};

const textAt = (row: Row, index: number): string => row.cells[index]?.text ?? "";
const filled = (row: Row): readonly { readonly cell: Cell; readonly index: number }[] =>
  row.cells.map((cell, index) => ({ cell, index })).filter(({ cell }) => cell.text.trim() !== "");

/** One text merged over the whole row is a title. */
export const isTitle = (row: Row): boolean => {
  const cells = filled(row);
  const own = cells.filter(({ cell }) => cell.under === undefined);
  return (
    own.length === 1 && (cells.length === 1 || cells.every(({ cell }) => cell.text === own[0]?.cell.text))
  );
};

const couldHead = (text: string): boolean =>
  text.length <= 60 &&
  !isNumeric(text) &&
  !/[!?]\s/.test(text) &&
  !/[a-z]{4}\.\s/.test(text) &&
  !/^\d{4}-\d\d-\d\d/.test(text);

/** The numbers 1, 2, 3 … in a row count spots or cylinders. */
const countsUp = (texts: readonly string[]): boolean => {
  const counts = texts.filter(isCount).map(Number);
  return counts.length >= 2 && counts.every((count, at) => count === at + 1);
};

const STRONG: ReadonlySet<string> = new Set(["label", "value", "note", "unit", "place"]);

/** Whether a row heads columns: by the words that only headings have, or by places and counts side by side. */
export const isHeading = (row: Row): boolean => {
  const cells = filled(row).filter(({ cell }) => cell.under !== "above");
  const texts = cells.map(({ cell }) => cell.text);
  if (isTitle(row) || texts.length < 2) return false;
  const half = texts.length / 2;
  if (Number.isInteger(half) && half >= 2 && sameTwice(texts)) return headsColumns(texts.slice(0, half));
  return headsColumns(texts);
};

/** Two tables side by side: the second half has the roles of the first, and most of its words. */
const sameTwice = (texts: readonly string[]): boolean => {
  const half = texts.length / 2;
  return texts
    .slice(1, half)
    .every(
      (text, at) =>
        text.toLowerCase() === texts[half + at + 1]?.toLowerCase() && headingOf(text) !== undefined,
    );
};

/** A tick stands in a row, and heads nothing. */
const TICKED = /^[✓✔☑√✅✗✘☒❌]$/;

const headsColumns = (texts: readonly string[]): boolean => {
  if (texts.some((text) => TICKED.test(text.trim()))) return false;
  const roles = headingsOf(texts);
  if (
    countsUp(texts) &&
    texts.every((text, at) => isCount(text) || roles[at] !== undefined || (at === 0 && couldHead(text)))
  )
    return texts.filter(isCount).length >= 3 || texts.every(isCount);
  if (!texts.every((text) => couldHead(text) || isCount(text))) return false;
  if (saysTwice(texts, roles) || saysNothing(roles)) return false;
  const of = (role: string): number => roles.filter((one) => one?.role === role).length;
  const ticks = new Set(roles.flatMap((one, at) => (one?.role === "tick" ? [texts[at]?.toLowerCase()] : [])));
  const strong = roles.filter((one) => one !== undefined && STRONG.has(one.role)).length;
  const [ats, spots, known] = [of("at"), of("spot"), roles.filter((one) => one !== undefined).length];
  const firstIsName =
    roles[0] === undefined || roles[0].role === "label" || sectionsOf(texts[0] ?? "").length > 0;
  if (
    ticks.size >= 2 &&
    ticks.size === of("tick") &&
    known >= texts.length - 1 &&
    (firstIsName || ticks.size >= 3 || strong > 0)
  )
    return true;
  if (ats >= 2 && known >= texts.length - 1 && distinctAts(texts) && ticks.size === 0) return true;
  if (spots >= 2 && known >= texts.length - 1) return true;
  if (strong >= 2) return !texts.some((text, at) => roles[at] === undefined && isValueWord(text));
  if (strong >= 1 && ticks.size >= 1) return true;
  return strong >= 1 && texts.length >= 2 && firstHeads(texts, roles);
};

/** `Window | works | works | slow` is a row: a heading says each answer once, but where it names the items twice too. */
const saysTwice = (texts: readonly string[], roles: readonly (Heading | undefined)[]): boolean => {
  const said = (role: string): readonly string[] =>
    texts.flatMap((text, at) => (roles[at]?.role === role ? [text.trim().toLowerCase()] : []));
  const answers = [...said("value"), ...said("tick")];
  return new Set(answers).size < answers.length && said("label").length < 2;
};

/** `Radio | N/A | none fitted` is a row: beside what was not looked at a heading has what was. */
const saysNothing = (roles: readonly (Heading | undefined)[]): boolean => {
  const ticks = roles.filter((one) => one?.role === "tick");
  return (
    ticks.length > 0 &&
    ticks.every((one) => one?.outcome?.says === "not-applicable" || one?.outcome?.says === "unseen")
  );
};

/** `Tread | left front | right front`: each place once. */
const distinctAts = (texts: readonly string[]): boolean => {
  const places = texts
    .filter((text) => headingOf(text)?.role === "at")
    .map((text) => text.trim().toLowerCase());
  return new Set(places).size === places.length || places.length >= 4;
};

const isValueWord = (text: string): boolean =>
  outcomeOf(text) !== undefined || /\d/.test(text.replaceAll(/[([].*?[)\]]/g, ""));

/** `Engine | Reading`, `Wheels | Tread (mm) | … | Notes`: a name, names, and one word that only a heading has. */
const firstHeads = (texts: readonly string[], roles: readonly (Heading | undefined)[]): boolean => {
  const [first = ""] = texts;
  // `10 | Oil gauge | Works` is a row with its number.
  if (isCount(first)) return false;
  const strongFirst = roles[0] !== undefined && STRONG.has(roles[0].role);
  if (strongFirst && texts.length === 2 && roles[1] === undefined) return false;
  const rest = texts.slice(1).filter((_, at) => roles[at + 1] === undefined);
  const names = rest.every((text) => !isValueWord(text) && text.length <= 30);
  const lone = texts.length === 2 && roles[1]?.role === "note";
  return names && !lone && (sectionsOf(first).length > 0 || roles[0] !== undefined || rest.length >= 2);
};

/** The text of a heading at a column: all its rows, a blank one under a wider heading filled from the left. */
const headingAt = (headings: readonly Row[], index: number, last: Row): string => {
  const parts: string[] = [];
  for (const row of headings) {
    let text = textAt(row, index);
    if (text === "" && row !== last) text = fromLeft(row, index, last);
    if (text !== "" && !parts.includes(text)) parts.push(text);
  }
  return parts.join(" ");
};

const fromLeft = (row: Row, index: number, last: Row): string => {
  if (textAt(last, index) === "") return "";
  for (let left = index - 1; left > 0; left -= 1) {
    const text = textAt(row, left);
    if (text !== "") return text;
  }
  return "";
};

const roleOf = (heading: string, own: string): Heading | undefined => {
  const whole = headingOf(heading) ?? headingOf(own);
  return whole ?? (isCount(own) ? { role: "spot" } : undefined);
};

const columnsOf = (headings: readonly Row[], rows: readonly Row[]): Column[] => {
  const width = Math.max(0, ...[...headings, ...rows].map(({ cells }) => cells.length));
  const last = headings.at(-1);
  const beside = headingsOf((last?.cells ?? []).map(({ text }) => text));
  return Array.from({ length: width }, (_, index) => {
    const heading = last === undefined ? "" : headingAt(headings, index, last);
    const own = headings.map((row) => textAt(row, index)).findLast((text) => text !== "") ?? "";
    const ticks = beside[index]?.role === "tick" ? beside[index] : undefined;
    const found = heading === "" ? undefined : (ticks ?? roleOf(heading, own));
    return found === undefined ? { index, heading, role: "unknown" as const } : { index, heading, ...found };
  });
};

const contentOf = (rows: readonly Row[], index: number): readonly string[] =>
  rows.flatMap((row) => {
    const cell = row.cells[index];
    return cell === undefined || cell.text === "" || cell.under === "left" ? [] : [cell.text];
  });

const share = (texts: readonly string[], is: (text: string) => boolean): number =>
  texts.length === 0 ? 0 : texts.filter(is).length / texts.length;

const isShort = (text: string): boolean =>
  isBlank(text) || isMark(text) || isNumeric(text) || outcomeOf(text) !== undefined;

/** Whether a text names something that the sheet asks. */
export type NamesItem = (text: string) => boolean;

/** A first column of words is one of names, whatever its heading says (`Measured | Figure | Unit`, `Center | Reading`). */
const withLabels = (columns: readonly Column[], rows: readonly Row[]): readonly Column[] => {
  if (columns.some(({ role }) => role === "label")) return columns;
  const first = columns.find(({ role, index }) => role !== "ignored" && contentOf(rows, index).length > 0);
  if (first?.role !== "value" && first?.role !== "note" && first?.role !== "spot") return columns;
  if (share(contentOf(rows, first.index), isShort) >= 0.5) return columns;
  return columns.map((column) =>
    column === first ? { ...column, role: "label" as const, heading: "" } : column,
  );
};

/** `Cyl | Dry psi | Leak %`: rows are cylinders, and no column names them. */
export const ofCylinders = (columns: readonly Column[]): boolean =>
  columns.some(({ role, heading }) => role === "place" && /^\s*cyl/i.test(heading));

/** `Area | What I found`: what stands beside a name and nothing else is what is said of it. */
const withValues = (columns: readonly Column[], rows: readonly Row[]): readonly Column[] => {
  const held = columns.filter(({ index, role }) => role !== "ignored" && contentOf(rows, index).length > 0);
  const [label, note] = held;
  return held.length === 2 && label?.role === "label" && note?.role === "note"
    ? columns.map((column) => (column === note ? { ...column, role: "value" as const } : column))
    : columns;
};

/** Columns without a word of their own, by what they hold: names to the left, then values, then notes. */
const byContent = (own: readonly Column[], rows: readonly Row[], namesItem: NamesItem): Column[] => {
  const columns = withLabels(own, rows);
  const named = columns.some(({ role }) => role === "label");
  const cylinders = ofCylinders(columns);
  let label = named || cylinders;
  let placed = columns.some(
    ({ role }) => role === "value" || role === "tick" || role === "at" || role === "spot",
  );
  return withValues(columns, rows).map((column) => {
    if (column.role !== "unknown") return column;
    const texts = contentOf(rows, column.index);
    if (texts.length === 0) return column;
    // Beside columns of values the first one of words names what they are of, though its heading may name an item too.
    const isPart = !label && (placed || sectionsOf(column.heading).length > 0) && share(texts, isShort) < 0.5;
    const name = cylinders ? `cylinder ${column.heading}` : column.heading;
    if (column.heading !== "" && column.index > 0 && !isPart && namesItem(name))
      return { ...column, role: "item" as const };
    if (!label && share(texts, isShort) < 0.5 && !named) {
      label = true;
      return { ...column, role: "label" as const };
    }
    if (column.heading !== "" && placed && share(texts, isShort) < 0.5)
      return { ...column, role: "note" as const };
    if (!placed) {
      placed = true;
      return { ...column, role: "value" as const };
    }
    return { ...column, role: "note" as const };
  });
};

/** Row numbers in the first column say nothing; a first column of places is one of names in which the places are. */
const numbersAside = (columns: readonly Column[], rows: readonly Row[]): Column[] => {
  const first = columns.find(({ index }) => contentOf(rows, index).length > 0);
  if (first === undefined || first.heading !== "") return [...columns];
  const texts = contentOf(rows, first.index);
  const counts = texts.length >= 3 && share(texts, isCount) > 0.9;
  return columns.map((column) =>
    column === first && counts ? { ...column, role: "ignored" as const } : column,
  );
};

const signature = (columns: readonly Column[]): string =>
  columns
    .filter(({ heading }) => heading !== "")
    .map(({ role, heading }, at) =>
      at === 0 && role === "unknown"
        ? "label"
        : role === "unknown"
          ? "unknown"
          : `${role}:${role === "label" ? "" : heading.toLowerCase()}`,
    )
    .join("|");

/** Two or three tables side by side have the same headings again. */
const sideBySide = (columns: readonly Column[]): readonly (readonly Column[])[] => {
  const headed = columns.filter(({ heading }) => heading !== "");
  for (const parts of [3, 2]) {
    const size = headed.length / parts;
    if (!Number.isInteger(size) || size < 2) continue;
    const groups = Array.from({ length: parts }, (_, at) => headed.slice(at * size, (at + 1) * size));
    if (
      new Set(groups.map(signature)).size === 1 &&
      groups.every((group) => group[0]?.role === "unknown" || group[0]?.role === "label")
    )
      return groups;
  }
  return [columns];
};

const tableOf = (headings: readonly Row[], rows: readonly Row[], namesItem: NamesItem): Table => {
  const columns = columnsOf(headings, rows);
  const groups = sideBySide(columns).map((group) => byContent(numbersAside(group, rows), rows, namesItem));
  return { headings, rows, groups };
};

/** The row over a heading belongs to it where it spans columns and is no title. */
const spansColumns = (row: Row | undefined, heading: Row): boolean => {
  if (row === undefined || row.number !== heading.number - 1 || isTitle(row)) return false;
  const cells = filled(row);
  if (!cells.some(({ cell }) => cell.under === "left")) return false;
  return cells.every(({ cell }) => couldHead(cell.text) && outcomeOf(cell.text) === undefined);
};

/** Answers to a form stand in a row each, under questions that name items; such a file has no column of names. */
const isForm = (first: Row, answers: readonly Row[], namesItem: NamesItem): boolean => {
  const texts = filled(first).map(({ cell }) => cell.text);
  if (texts.length < 5 || answers.length === 0 || answers.length > 3 || texts.some(isNumeric)) return false;
  return share(texts, namesItem) >= 0.5 && answers.every((row) => filled(row).length >= texts.length / 3);
};

const formOf = (first: Row, answers: readonly Row[], namesItem: NamesItem): Table => ({
  headings: [first],
  rows: answers,
  groups: [
    columnsOf([first], answers).map((column) => ({
      ...column,
      role: namesItem(column.heading) ? ("item" as const) : ("ignored" as const),
    })),
  ],
});

/**
 * A grid as tables, each with its headings: found in whatever row they stand, over one row or several, or nowhere at all.
 *
 * @returns the tables from top to bottom; rows before the first heading are a table without one
 */
export const tablesOf = (grid: Grid, namesItem: NamesItem): Table[] => {
  const [first, ...answers] = grid.rows;
  if (first !== undefined && isForm(first, answers, namesItem)) return [formOf(first, answers, namesItem)];
  const tables: { headings: Row[]; rows: Row[] }[] = [{ headings: [], rows: [] }];
  let before: Row | undefined;
  for (const row of grid.rows) {
    const last = tables.at(-1);
    if (last === undefined) break;
    if (goesOn(last, before, row) || (!isHeading(row) && !underHeading(last, row))) last.rows.push(row);
    else if (last.rows.length === 0 && last.headings.length > 0 && last.headings.length < 3)
      last.headings.push(row);
    else {
      const over = spansColumns(before, row) && before !== undefined ? [before] : [];
      if (over.length > 0) last.rows.pop();
      tables.push({ headings: [...over, row], rows: [] });
    }
    before = row;
  }
  return tables
    .filter(({ headings, rows }) => headings.length + rows.length > 0)
    .map(({ headings, rows }) => tableOf(headings, rows, namesItem));
};

/** `Electrical | Horn | Works` below `Electrical | Battery | 12.5 V`: the same words in front again are a row more. */
const goesOn = (
  { headings, rows }: { readonly headings: readonly Row[]; readonly rows: readonly Row[] },
  before: Row | undefined,
  row: Row,
): boolean => {
  const first = textAt(row, 0).trim().toLowerCase();
  return (
    headings.length > 0 &&
    rows.length > 0 &&
    before !== undefined &&
    first !== "" &&
    row.cells[0]?.under === undefined &&
    filled(row).length > 1 &&
    textAt(before, 0).trim().toLowerCase() === first
  );
};

/** A second row of headings: counts or places under a wider one, or what stands in it repeats the one above it. */
const underHeading = (
  { headings, rows }: { readonly headings: readonly Row[]; readonly rows: readonly Row[] },
  row: Row,
): boolean => {
  if (headings.length === 0 || rows.length > 0) return false;
  const own = filled(row).filter(({ cell }) => cell.under !== "above");
  if (own.length < 1) return false;
  return countsUp(own.map(({ cell }) => cell.text)) && own.every(({ cell }) => isCount(cell.text));
};

/** Whether a column's names are places, as where a row is a corner and the columns say what was read there. */
export const namesPlaces = (texts: readonly string[]): boolean => {
  const named = texts.filter((text) => !isBlank(text));
  return (
    named.length > 0 &&
    share(named, (text) => headingOf(text)?.role === "at" || labelOf(text).core.length === 0) >= 0.6
  );
};
