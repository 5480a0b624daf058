import { wordsOf } from "../cell-parts/index.ts";
import type { Grid, Row } from "../grid/index.ts";
import { labelOf } from "../label/index.ts";
import { readValue } from "../read-value/index.ts";
import type { Writing } from "../read-value/numbers.ts";
import { labelAndValue } from "../row-words/index.ts";
import { sensedIn } from "../sensed-words/index.ts";
import type { Claim } from "../table-claims/index.ts";

export const ownCells = (row: Row): readonly string[] =>
  row.cells
    .filter(({ text, under }) => text.trim() !== "" && under !== "left")
    .map(({ text }) => text.trim());

/** So many rows of one cell each, without a colon, are notes in somebody's own words. */
const [LEAST_NOTES, MOST_OF_ROWS] = [8, 0.8];

export const isListOfRemarks = ({ rows }: Grid): boolean => {
  const notes = rows.filter((row) => {
    const cells = ownCells(row);
    return cells.length === 1 && labelAndValue(cells[0] ?? "") === undefined;
  });
  return notes.length >= LEAST_NOTES && notes.length >= MOST_OF_ROWS * rows.length;
};

/** What is out is a lamp, and the lamp is part of the name. */
const LAMP = /^(?:lamps?|lights?|bulbs?)\s+/i;

/** `LF tire 5/32`: what a note names, and all of it as what is said. */
export const inItsWords = (text: string, column: number, writing: Writing): Claim => {
  const said = Math.min(text.search(/\d|$/), ...sensedIn(text).map(({ start }) => start));
  const from = said + (LAMP.exec(text.slice(said))?.[0].length ?? 0);
  const name = labelOf(text.slice(0, from));
  const isNamed = name.core.length > 0;
  return {
    names: isNamed ? [name, labelOf(text)] : [labelOf(text), labelOf(wordsOf(text))],
    where: [labelOf(text.replaceAll(/\d[\d.,/]*/g, " "))],
    value: readValue(isNamed && from < text.length ? text.slice(from) : text, writing),
    note: "",
    fromNote: false,
    column,
  };
};
