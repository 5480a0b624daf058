import { readdirSync, readFileSync } from "node:fs";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Book } from "@evenhand/tables/grid";
import { readFile } from "@evenhand/tables/read-file";
import { readTable } from "@evenhand/tables/read-table";
import { writeWorkbook } from "@evenhand/tables/write-workbook";
import { benchRow } from "../../row.ts";
import type { BenchOptions, BenchRow } from "../../row.ts";
import { readRight, scoreRows } from "./right-rows.ts";
import type { ScoredRow } from "./right-rows.ts";

const folder = new URL("../../../../../../fixtures/sheets/", import.meta.url);

/** Sheets the reading was tuned on, and those kept out of all tuning. */
export const THIRDS = ["tuned", "kept-out"] as const;
export type Third = (typeof THIRDS)[number];

const bookOf = (bytes: Uint8Array): Book => {
  const read = readFile(bytes);
  if (!read.ok) throw new RangeError(`A sheet of the corpus is refused: ${read.refused.reason}`);
  return read.book;
};

/** One sheet of the corpus as it was read, row by row beside what is right. */
export const scoredSheet = (third: Third, name: string): readonly ScoredRow[] => {
  const sheet = new URL(`${third}/${name}/`, folder);
  const file = readdirSync(sheet).find((one) => one.startsWith("sheet.")) ?? "";
  const draft = readTable(bookOf(readFileSync(new URL(file, sheet))), sheetVersion1);
  return scoreRows(draft, readRight(readFileSync(new URL("right.txt", sheet), "utf8")));
};

/** Names of the sheets of one part of the corpus. */
export const sheetNames = (third: Third): readonly string[] =>
  readdirSync(new URL(`${third}/`, folder)).sort();

const share = (rows: readonly ScoredRow[]): number =>
  rows.filter(({ isRight }) => isRight).length / rows.length;

const rightRows = (third: Third, print: BenchOptions["print"]): BenchRow => {
  const sheets = sheetNames(third).map((name) => ({ name, rows: scoredSheet(third, name) }));
  for (const { name, rows } of sheets)
    print(`  ${third} ${name}: ${rows.filter(({ isRight }) => isRight).length} of ${rows.length} rows right`);
  const rows = sheets.flatMap((sheet) => sheet.rows);
  return benchRow({
    work: `rows of inspectors' sheets read right, ${third === "tuned" ? "tuned on" : "kept out of all tuning"}, %`,
    against: "what each row comes to, written by hand beforehand",
    value: share(rows) * 100,
    goal: 97,
    better: "higher",
  });
};

const ITEMS = sheetVersion1.items.map(({ words }) => words.american);
const CORNERS = ["LF", "RF", "LR", "RR"];

/** A workbook as long as asked for, no two of its rows the same. */
const longSheet = (length: number): Uint8Array => {
  const rows = Array.from({ length }, (_, at) => {
    const name = `${ITEMS[at % ITEMS.length] ?? ""} ${at % 97}`;
    return at % 3 === 0
      ? [name, CORNERS[at % 4] ?? "", String(at % 50), "mm", `note ${at}`]
      : [name, CORNERS[at % 4] ?? "", "ok", "", `note ${at}`];
  });
  return writeWorkbook([{ name: "Car", rows: [["Item", "Position", "Result", "Unit", "Notes"], ...rows] }]);
};

const secondsFor = (length: number): number => {
  const bytes = longSheet(length);
  const start = performance.now();
  readTable(bookOf(bytes), sheetVersion1);
  return (performance.now() - start) / length;
};

const linear = (): BenchRow => {
  secondsFor(2_000);
  return benchRow({
    work: "a row of a workbook of 20,000 rows, no two the same, read to a draft",
    against: "a row of one of 5,000",
    value: secondsFor(20_000) / secondsFor(5_000),
    goal: 1.3,
    better: "lower",
  });
};

/** How many rows of invented sheets are read right, and whether long ones take time by their length alone. */
export const sheetRows = ({ print }: BenchOptions): BenchRow[] => [
  ...THIRDS.map((third) => rightRows(third, print)),
  linear(),
];
