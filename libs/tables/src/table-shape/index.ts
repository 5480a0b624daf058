import type { Grid, Row } from "../grid/index.ts";
import {
  filled,
  goesOn,
  headsByTicks,
  isHeading,
  spansColumns,
  underHeading,
} from "../heading-rows/index.ts";
import { headingOf } from "../headings/index.ts";
import { isNumeric } from "../read-value/numbers.ts";
import { byContent, columnsOf, numbersAside, share, sideBySide } from "../table-columns/index.ts";
import type { Column, NamesItem } from "../table-columns/index.ts";

/** Rows that share headings; `groups` are tables that stand side by side in them. */
export type Table = {
  readonly headings: readonly Row[];
  readonly rows: readonly Row[];
  readonly groups: readonly (readonly Column[])[];
};

const tableOf = (headings: readonly Row[], rows: readonly Row[], namesItem: NamesItem): Table => {
  const columns = columnsOf(headings, rows);
  const groups = sideBySide(columns).map((group) => byContent(numbersAside(group, rows), rows, namesItem));
  return { headings, rows, groups };
};

/** Answers to a form stand in a row each, under questions that name items; such a file has no column of names. */
const isForm = (first: Row, answers: readonly Row[], namesItem: NamesItem): boolean => {
  const texts = filled(first).map(({ cell }) => cell.text);
  const heads = headingOf(texts[0] ?? "")?.role;
  if (heads === "place" || heads === "label") return false;
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

/** `Heater | Yes | No` under `Equipment | Fitted? | Works?` is a row with its answers. */
const isAnswered = (
  { headings }: { readonly headings: readonly Row[] },
  row: Row,
  namesItem: NamesItem,
): boolean => {
  const head = headings.at(-1);
  const [first, ...others] = filled(row);
  if (head === undefined || first === undefined || others.length === 0) return false;
  const texts = others.map(({ cell }) => cell.text);
  const under = others.every(({ index }) => (head.cells[index]?.text ?? "") !== "");
  const marks = texts.filter((text) => !WORKS.test(text.trim()));
  const answers = marks.length > 0 && headsByTicks(marks);
  return under && answers && texts.length <= MOST_ANSWERS && namesItem(first.cell.text);
};

/** Heads a column as well, and is what stands in a row. */
const WORKS = /^works?$/i;

const MOST_ANSWERS = 3;

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
    if (
      goesOn(last, before, row) ||
      isAnswered(last, row, namesItem) ||
      (!isHeading(row) && !underHeading(last, row))
    )
      last.rows.push(row);
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
