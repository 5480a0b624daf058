import type { Cell, Row } from "../grid/index.ts";
import { isTitle } from "../heading-rows/index.ts";
import { findUnit } from "../unit-words/index.ts";

/** How people write that a cell says what the one above it says. */
const DITTO =
  /^(?:ditto|dto\.?|do\.|idem|(?:same\s+)?as\s+(?:the\s+)?(?:above|last|previous)|same\s+(?:again|above)|["'”“″〃]{1,2}|[-–]\s*["”“″〃]\s*[-–]|,,)[.!]?$/i;

/** Below a unit a lone inch mark is a unit. */
const isUnit = (cell: Cell, above: Cell): boolean =>
  findUnit(cell.text) !== undefined && findUnit(above.text) !== undefined;

const carried = (cell: Cell, above: Cell | undefined): Cell =>
  above === undefined ||
  above.text.trim() === "" ||
  !DITTO.test(cell.text.trim()) ||
  DITTO.test(above.text.trim()) ||
  isUnit(cell, above)
    ? cell
    : { ...cell, text: above.text, written: cell.written ?? cell.text };

/**
 * Rows in which `ditto`, `as above` and `"` are what stands above them in their column; a title between two rows parts them.
 *
 * @example carriedDown([row("Tire LF", "cracked"), row("Tire RF", "ditto")])[1]?.cells[1]?.text // "cracked"
 */
export const carriedDown = (rows: readonly Row[]): readonly Row[] => {
  let above: readonly Cell[] = [];
  return rows.map((row) => {
    if (isTitle(row)) {
      above = [];
      return row;
    }
    const cells = row.cells.map((cell, at) => carried(cell, above[at]));
    above = cells;
    return { ...row, cells };
  });
};
