import type { Book, Cell } from "../grid/index.ts";
import type { Writing } from "../read-value/numbers.ts";

/** How far a file is looked into for how it writes decimals. */
const LOOKED = 4_000;

/** `1.1 | Hood | …`: running numbers write no decimals. */
const withoutNumbering = (cells: readonly Cell[]): readonly Cell[] =>
  cells.length > 2 && /^\s*\d{1,2}(?:[.,]\d{1,2})+\.?\s*$/.test(cells[0]?.text ?? "")
    ? cells.slice(1)
    : cells;

/**
 * Whether a file writes decimals with a comma: where more numbers have a comma before one or two last figures than a point. Only then
 * is `98.412` a number of thousands.
 */
export const writingOf = ({ grids }: Book): Writing => {
  let [commas, points, looked] = [0, 0, 0];
  for (const { rows } of grids)
    for (const { cells } of rows)
      for (const { text } of withoutNumbering(cells)) {
        looked += 1;
        if (looked > LOOKED) return { comma: commas > points };
        if (/(?<![\d.,])\d+,\d{1,2}(?![\d.,])/.test(text)) commas += 1;
        if (/(?<![\d.,])\d+\.\d{1,2}(?![\d.,])/.test(text)) points += 1;
      }
  return { comma: commas > points };
};
