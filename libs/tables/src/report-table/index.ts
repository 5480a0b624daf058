import { Report } from "@evenhand/shared/report";
import type { Book, Grid, Row } from "../grid/index.ts";
import { writeCsv } from "../write-csv/index.ts";
import { writeWorkbook } from "../write-workbook/index.ts";
import { armored, bared } from "./armor.ts";

/** What names the finding's columns for a person beside its values: how item, place and answer read, and its section. */
export type Named = {
  readonly section: string;
  readonly item: string;
  readonly place: string;
  readonly answer: string;
};

/** First cell of the row that heads our own table; by it a file is known to be one of ours, whatever stands above. */
const MARK = "evenhand-report 1";

/** Columns of the table: what a person reads, then the values, each as JSON so that nothing of it is lost. */
const COLUMNS = [
  MARK,
  "section",
  "item",
  "place",
  "answer",
  "item id",
  "position id",
  "value",
  "more",
] as const;

const json = (value: unknown): string => JSON.stringify(value);

/** A finding without what has a column of its own. */
const moreOf = ({
  item: _item,
  position: _position,
  answer: _answer,
  ...more
}: Report["findings"][number]): string => (Object.keys(more).length === 0 ? "" : json(more));

/** JSON longer than a cell holds goes over several columns. */
const CELL = 30_000;

const cut = (text: string): string[] =>
  text.length <= CELL
    ? [text]
    : Array.from({ length: Math.ceil(text.length / CELL) }, (_, at) =>
        text.slice(at * CELL, (at + 1) * CELL),
      );

/**
 * A report as a table: a row a part of the header, then a row a finding, for people in words and for reading back as JSON. No cell can be
 * taken for a formula (`armored`).
 *
 * @param nameOf how each finding reads
 */
export const reportTable = (
  report: Report,
  nameOf: (finding: Report["findings"][number]) => Named,
): readonly (readonly string[])[] => {
  const { findings, ...header } = report;
  const head = Object.entries(header).map(([name, value]) => [name, ...cut(json(value))]);
  const rows = findings.map((finding, at) => {
    const named = nameOf(finding);
    return [
      String(at + 1),
      named.section,
      named.item,
      named.place,
      named.answer,
      finding.item,
      finding.position,
      json(finding.answer),
      ...cut(moreOf(finding)),
    ];
  });
  return [...head, [...COLUMNS], ...rows].map((row) => row.map(armored));
};

/** The same table as a CSV file. */
export const reportCsv = (table: readonly (readonly string[])[]): string => writeCsv(table);

/** The same table as a workbook, which holds text alone. */
export const reportWorkbook = (table: readonly (readonly string[])[]): Uint8Array =>
  writeWorkbook([{ name: "Report", rows: table, widths: [18, 22, 34, 22, 40, 30, 20, 40, 40] }]);

const textsOf = ({ cells }: Row): string[] => cells.map(({ text }) => bared(text));

const headingAt = ({ rows }: Grid): number => rows.findIndex((row) => textsOf(row)[0] === MARK);

/** Whether a file is a report of ours, written by `reportTable`. */
export const isReportTable = ({ grids }: Book): boolean => grids.some((grid) => headingAt(grid) >= 0);

const parse = (text: string): unknown => (text === "" ? {} : JSON.parse(text));

const findingIn = (texts: readonly string[]): unknown => {
  const [, , , , , item = "", position = "", answer = "", ...more] = texts;
  const rest = parse(more.join(""));
  return {
    item,
    position,
    answer: parse(answer),
    ...(typeof rest === "object" && rest !== null ? rest : {}),
  };
};

/**
 * Reads a report back from its own table.
 *
 * @returns the report, or nothing where the table was changed so that it is none any more
 */
export const reportFromTable = ({ grids }: Book): Report | undefined => {
  const grid = grids.find((one) => headingAt(one) >= 0);
  if (grid === undefined) return undefined;
  const at = headingAt(grid);
  try {
    const header = grid.rows.slice(0, at).map((row) => {
      const [name = "", ...parts] = textsOf(row);
      return [name, parse(parts.join(""))] as const;
    });
    const findings = grid.rows.slice(at + 1).map((row) => findingIn(textsOf(row)));
    return Report.safeParse({ ...Object.fromEntries(header), findings }).data;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
};
