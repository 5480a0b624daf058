import { dsvFormat } from "d3-dsv";
import { Counted } from "../grid/index.ts";
import type { Cell, Grid, Row } from "../grid/index.ts";
import { TABLE_LIMITS } from "../table-limits/index.ts";

const DELIMITERS = [",", ";", "\t", "|"] as const;

/** Stands for a quotation mark while one that is no quotation mark is read; it is in private use, so in no sheet. */
const INCH_MARK = "\u{e000}";

/** How often each delimiter stands in a line, outside of quotation marks. */
const countIn = (line: string, delimiter: string): number => {
  let [count, quoted] = [0, false];
  for (const sign of line) {
    if (sign === '"') quoted = !quoted;
    else if (sign === delimiter && !quoted) count += 1;
  }
  return count;
};

/** The first line of some spreadsheets' files names the delimiter: `sep=;`. */
const named = (text: string): string | undefined => /^sep=(.)\r?\n/.exec(text)?.[1];

const middle = (counts: readonly number[]): number =>
  counts.toSorted((a, b) => a - b)[Math.floor(counts.length / 2)] ?? 0;

/** How many of the first lines have as many of a delimiter as most of them have; a comma inside a number or note comes and goes. */
const steadiness = (lines: readonly string[], delimiter: string): number => {
  const counts = lines.map((line) => countIn(line, delimiter));
  const having = counts.filter((count) => count > 0);
  if (having.length === 0) return 0;
  const usual = middle(having);
  return (
    (counts.filter((count) => count === usual).length * Math.min(usual, 8) + having.length) / lines.length
  );
};

/**
 * What parts the cells of a text: the delimiter that comes equally often in most lines.
 *
 * @example delimiterOf("item;LF;RF\ntread;5,5;5,0\n") // ";"
 */
export const delimiterOf = (text: string): string => {
  const own = named(text);
  if (own !== undefined) return own;
  const lines = text
    .slice(0, 65_536)
    .split(/\r\n|\r|\n/)
    .filter((line) => line.trim() !== "")
    .slice(0, 60);
  const best = DELIMITERS.map((delimiter) => ({ delimiter, points: steadiness(lines, delimiter) })).toSorted(
    (a, b) => b.points - a.points,
  )[0];
  return best === undefined || best.points === 0 ? "," : best.delimiter;
};

/** A quotation mark that opens and never closes swallows the rest of the file: then none of them is one, as in `"7/32`. */
const isSwallowed = (rows: readonly (readonly string[])[]): boolean => {
  const last = rows.at(-1)?.at(-1) ?? "";
  return last.length > TABLE_LIMITS.characters || last.split("\n").length > 40;
};

const parse = (text: string, delimiter: string): readonly (readonly string[])[] => {
  const format = dsvFormat(delimiter);
  const rows = format.parseRows(text);
  if (!isSwallowed(rows)) return rows;
  return format
    .parseRows(text.replaceAll('"', INCH_MARK))
    .map((row) => row.map((cell) => cell.replaceAll(INCH_MARK, '"')));
};

const cellsOf = (texts: readonly string[], number: number, counted: Counted): Cell[] => {
  const cells: Cell[] = [];
  for (const [index, text] of texts.entries()) {
    const trimmed = text.trim();
    if (trimmed !== "") counted.cell(trimmed, number, index + 1);
    if (index < TABLE_LIMITS.columns) cells.push({ text: trimmed });
  }
  return cells;
};

/**
 * A table of delimited text, its rows with something in them. Linear in its length.
 *
 * @throws {TableRefusal} where it is larger than `TABLE_LIMITS`
 * @example readCsv("item,LF\ntread,7/32\"\n").rows[1]?.cells[1]?.text // "7/32\""
 */
export const readCsv = (text: string): Grid => {
  const counted = new Counted();
  const own = named(text) === undefined ? 0 : 1;
  const rows: Row[] = [];
  for (const [index, texts] of parse(text, delimiterOf(text)).entries()) {
    if (index < own || texts.every((cell) => cell.trim() === "")) continue;
    counted.row();
    rows.push({ number: index + 1, cells: cellsOf(texts, index + 1, counted) });
  }
  return { name: "", rows };
};
