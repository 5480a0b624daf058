import { TableRefusal } from "../refused/index.ts";
import { TABLE_LIMITS } from "../table-limits/index.ts";

/** What stands in a cell, as text. */
export type Cell = {
  readonly text: string;
  /** A note pinned to the cell. */
  readonly note?: string;
  /** The text is what a formula gave when the file was saved; nothing was computed. */
  readonly formula?: true;
  /** The cell lies under a merged one, whose text it repeats. */
  readonly under?: "above" | "left";
  /** What stands there, where the text is that of the cell above: `ditto`. */
  readonly written?: string;
};

/** A row that holds something; `number` is the one the spreadsheet shows. Cells from the first column on, empty ones between. */
export type Row = { readonly number: number; readonly cells: readonly Cell[] };

/** One worksheet, or a whole CSV file. */
export type Grid = { readonly name: string; readonly rows: readonly Row[] };

/** What was left aside while a file was read, so that it can be said. */
export type Aside =
  | { readonly kind: "formulas"; readonly count: number }
  | { readonly kind: "external-links"; readonly count: number }
  | { readonly kind: "macros" }
  | { readonly kind: "hidden-worksheet"; readonly name: string };

/** A file of tables. */
export type Book = {
  readonly form: "csv" | "xlsx";
  readonly grids: readonly Grid[];
  readonly aside: readonly Aside[];
};

/** An empty cell, one for all. */
export const EMPTY_CELL: Cell = { text: "" };

/** Counts what a file holds against what it may hold, over all its worksheets. */
export class Counted {
  private rows = 0;
  private cells = 0;

  /** @throws {TableRefusal} past the greatest number of rows */
  row(): void {
    this.rows += 1;
    if (this.rows > TABLE_LIMITS.rows) throw new TableRefusal({ reason: "rows", most: TABLE_LIMITS.rows });
  }

  /** @throws {TableRefusal} where a cell is too long, too far to the right, or one too many */
  cell(text: string, row: number, column: number): void {
    this.cells += 1;
    if (this.cells > TABLE_LIMITS.cells)
      throw new TableRefusal({ reason: "cells", most: TABLE_LIMITS.cells });
    if (column > TABLE_LIMITS.columns)
      throw new TableRefusal({ reason: "columns", found: column, most: TABLE_LIMITS.columns });
    if (text.length > TABLE_LIMITS.characters)
      throw new TableRefusal({
        reason: "characters",
        row,
        found: text.length,
        most: TABLE_LIMITS.characters,
      });
  }
}
