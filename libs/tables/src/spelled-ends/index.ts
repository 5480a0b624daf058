import type { Cell, Grid, Row } from "../grid/index.ts";

const standsAlone = (letter: string): RegExp =>
  new RegExp(`^${letter}\\s+[A-Za-z]{2,}|[A-Za-z]{2,}\\s+${letter}$|^${letter}$`);
const [FRONT, LEFT, REAR] = [standsAlone("F"), standsAlone("L"), standsAlone("R")];

/** A name is short; a letter in prose may be anything. */
const LONGEST_NAME = 40;

const isNamed = (text: string, letter: RegExp): boolean =>
  text.length <= LONGEST_NAME && letter.test(text.trim()) && text.trim().length > 1;

/** Whether a row is headed by the bare letters `F` and `R`, and none of them by `L`. */
const headsEnds = ({ cells }: Row): boolean => {
  const letters = new Set(cells.map(({ text }) => text.trim()));
  return letters.has("F") && letters.has("R") && !letters.has("L") && !letters.has("P") && !letters.has("G");
};

const spelled = (cell: Cell): Cell => ({
  ...cell,
  text: cell.text.replace(/^(\s*)R\b/, "$1Rear").replace(/\bR(\s*)$/, "Rear$1"),
  written: cell.written ?? cell.text,
});

/**
 * A grid in which `R` is written out as the rear: where its names go by `F` and `R` (`Tires F`, `Tires R`) and none by `L`.
 *
 * @example spelledEnds(grid("F bumper", "R bumper")).rows[1]?.cells[0]?.text // "Rear bumper"
 */
export const spelledEnds = (grid: Grid): Grid => {
  const texts = grid.rows.flatMap(({ cells }) => cells.map(({ text }) => text));
  const named = texts.some((text) => isNamed(text, FRONT)) && !texts.some((text) => isNamed(text, LEFT));
  const rows = grid.rows.map((row) => {
    const headed = headsEnds(row);
    if (!named && !headed) return row;
    const cells = row.cells.map((cell) =>
      (named && isNamed(cell.text, REAR)) || (headed && cell.text.trim() === "R") ? spelled(cell) : cell,
    );
    return { ...row, cells };
  });
  return { ...grid, rows };
};
