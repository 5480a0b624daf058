import { Counted, EMPTY_CELL } from "../grid/index.ts";
import type { Cell } from "../grid/index.ts";
import { readXml } from "../read-xml/index.ts";
import { TABLE_LIMITS } from "../table-limits/index.ts";
import { shownNumber } from "./number-formats.ts";
import type { NumberFormat } from "./number-formats.ts";
import { runText } from "./strings.ts";

/** What the cells of every worksheet go by. */
export type Shown = {
  readonly strings: readonly string[];
  readonly formats: readonly NumberFormat[];
  readonly from1904: boolean;
};

/** Rows and columns from 0. */
export type Merge = {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
};

export type Worksheet = {
  /** By row number, from 1. */
  readonly rows: ReadonlyMap<number, Cell[]>;
  readonly merges: readonly Merge[];
  readonly formulas: number;
};

/** `AB12` → column 27, row 11, both from 0. */
export const cellPlace = (name: string): { column: number; row: number } | undefined => {
  const parts = /^\$?([A-Z]{1,3})\$?([0-9]{1,7})$/.exec(name);
  if (parts?.[1] === undefined) return undefined;
  let column = 0;
  for (const letter of parts[1]) column = column * 26 + (letter.codePointAt(0) ?? 64) - 64;
  return { column: column - 1, row: Number(parts[2]) - 1 };
};

const mergeOf = (reference: string): Merge | undefined => {
  const [from, to] = reference.split(":").map(cellPlace);
  if (from === undefined || to === undefined) return undefined;
  return { top: from.row, left: from.column, bottom: to.row, right: to.column };
};

type Raw = { name: string; type: string; style: number; value: string; formula: boolean };

/** The words of yes and no that a spreadsheet shows for a checkbox. */
const shownText = ({ type, value, style }: Raw, rich: string, shown: Shown): string => {
  if (type === "s") return shown.strings[Number(value)] ?? "";
  if (type === "inlineStr") return rich;
  if (type === "b") return value === "1" ? "TRUE" : "FALSE";
  if (type === "str" || type === "e" || type === "d") return value;
  return shownNumber(value, shown.formats[style], shown.from1904);
};

/** Fills a row up to a column and puts a cell there. */
const place = (cells: Cell[], column: number, cell: Cell): void => {
  while (cells.length < column) cells.push(EMPTY_CELL);
  cells[column] = cell;
};

class Reading {
  readonly rows = new Map<number, Cell[]>();
  readonly merges: Merge[] = [];
  formulas = 0;
  private row = 0;
  private column = 0;
  private raw: Raw | undefined;
  private inside = "";
  private readonly run = runText();
  private readonly shown: Shown;
  private readonly counted: Counted;

  constructor(shown: Shown, counted: Counted) {
    this.shown = shown;
    this.counted = counted;
  }

  open(name: string, attributes: Readonly<Record<string, string>>): void {
    this.inside = name;
    this.run.open(name);
    if (name === "row") this.startRow(Number(attributes["r"]));
    else if (name === "c") this.startCell(attributes);
    else if (name === "f" && this.raw !== undefined) this.raw.formula = true;
    else if (name === "mergeCell") this.merge(attributes["ref"] ?? "");
  }

  text(text: string): void {
    this.run.text(text);
    if (this.inside === "v" && this.raw !== undefined) this.raw.value += text;
  }

  close(name: string): void {
    this.run.close(name);
    if (name === "v" || name === "f") this.inside = "";
    if (name === "c") this.endCell();
  }

  /** Rows and cells may leave out where they stand: then they follow on. */
  private startRow(number: number): void {
    this.row = Number.isInteger(number) && number > 0 ? number : this.row + 1;
    this.column = 0;
  }

  private startCell(attributes: Readonly<Record<string, string>>): void {
    const at = cellPlace(attributes["r"] ?? "");
    if (at !== undefined) this.column = at.column;
    this.raw = {
      name: attributes["r"] ?? "",
      type: attributes["t"] ?? "n",
      style: Number(attributes["s"] ?? 0),
      value: "",
      formula: false,
    };
  }

  private endCell(): void {
    if (this.raw === undefined) return;
    const text = shownText(this.raw, this.run.take(), this.shown).trim();
    if (this.raw.formula) this.formulas += 1;
    if (text !== "") this.keep(text, this.raw.formula);
    this.column += 1;
    this.raw = undefined;
  }

  private keep(text: string, formula: boolean): void {
    this.counted.cell(text, this.row, this.column + 1);
    let cells = this.rows.get(this.row);
    if (cells === undefined) {
      this.counted.row();
      cells = [];
      this.rows.set(this.row, cells);
    }
    place(cells, this.column, formula ? { text, formula } : { text });
  }

  private merge(reference: string): void {
    const merge = mergeOf(reference);
    if (merge !== undefined && this.merges.length < TABLE_LIMITS.rows) this.merges.push(merge);
  }
}

/** One worksheet's cells and merged ranges. What a formula gave is taken as text; what it would compute is nobody's business here. */
export const readWorksheet = (text: string, part: string, shown: Shown, counted: Counted): Worksheet => {
  const reading = new Reading(shown, counted);
  readXml(text, part, {
    open: (name, attributes) => reading.open(name, attributes),
    text: (piece) => reading.text(piece),
    close: (name) => reading.close(name),
  });
  return reading;
};
