import { EMPTY_CELL } from "../grid/index.ts";
import type { Cell } from "../grid/index.ts";
import type { Merge } from "./worksheet.ts";

/** Cells that repeated text may fill, of one worksheet: merged titles and groups, never a whole empty sheet. */
const MOST_FILLED = 200_000;

const put = (cells: Cell[], column: number, cell: Cell): void => {
  while (cells.length < column) cells.push(EMPTY_CELL);
  if ((cells[column] ?? EMPTY_CELL).text === "") cells[column] = cell;
};

/**
 * Repeats the text of each merged range in the cells under it, marked as such: to the right in its own row, and down in rows that hold
 * something of their own. A range over nothing fills nothing.
 */
export const fillMerged = (
  rows: ReadonlyMap<number, Cell[]>,
  merges: readonly Merge[],
  widest: number,
): void => {
  let filled = 0;
  const numbers = [...rows.keys()].toSorted((a, b) => a - b);
  for (const { top, left, bottom, right } of merges) {
    const text = rows.get(top + 1)?.[left]?.text ?? "";
    if (text === "") continue;
    for (let at = firstFrom(numbers, top + 1); at < numbers.length; at += 1) {
      const number = numbers[at] ?? 0;
      const cells = rows.get(number);
      if (number > bottom + 1 || cells === undefined) break;
      for (let column = left; column <= Math.min(right, widest - 1); column += 1) {
        if (number === top + 1 && column === left) continue;
        filled += 1;
        if (filled > MOST_FILLED) return;
        put(cells, column, { text, under: number === top + 1 ? "left" : "above" });
      }
    }
  }
};

/** Index of the first number that is not below `least`, in a rising list. */
const firstFrom = (numbers: readonly number[], least: number): number => {
  let [low, high] = [0, numbers.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((numbers[middle] ?? 0) < least) low = middle + 1;
    else high = middle;
  }
  return low;
};
