/**
 * What a file of tables may hold: far more than any sheet of findings, and little enough that reading it ends soon and in bounded
 * memory. A bomb is known by what it inflates to, not by what it says of itself.
 */
export const TABLE_LIMITS = {
  /** Bytes of the file. */
  bytes: 12 * 2 ** 20,
  /** Bytes of all that is read of a workbook, once inflated. */
  inflated: 40 * 2 ** 20,
  /** Files in a workbook. */
  entries: 2_000,
  worksheets: 60,
  /** Rows that hold something, of the whole file. */
  rows: 60_000,
  /** Column of the last cell that holds something. */
  columns: 256,
  /** Cells that hold something, of the whole file. */
  cells: 1_000_000,
  /** Characters of one cell; the greatest that spreadsheets themselves allow. */
  characters: 32_767,
  /** How deep elements of a part of a workbook may stand in each other. */
  depth: 64,
} as const;
