import type { GradeScale } from "@evenhand/shared/report";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { Row } from "../grid/index.ts";
import { isPlaceOnly, labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import { isBlank, isMark, outcomeOf } from "../outcome-words/index.ts";
import type { Outcome } from "../outcome-words/index.ts";
import { readValue } from "../read-value/index.ts";
import type { Value } from "../read-value/index.ts";
import type { Writing } from "../read-value/numbers.ts";
import { scaleInHeading, scaleOfHeadings } from "../row-words/index.ts";
import { namesPlaces, ofCylinders } from "../table-shape/index.ts";
import type { Column, Table } from "../table-shape/index.ts";
import { findUnit } from "../unit-words/index.ts";

/** Something a row says of the car: of what, where, and what. Of which item is found out later. */
export type Claim = {
  /** What it may be named by, the likeliest first; each is tried until one names something. */
  readonly names: readonly Label[];
  /** What may say where: the row, its place column, the column's heading. */
  readonly where: readonly Label[];
  readonly value: Value;
  readonly note: string;
  readonly unit?: UnitSymbol | undefined;
  readonly scale?: GradeScale | undefined;
  /** Its value is a mark from a column of marks, and no figure. */
  readonly rated?: boolean | undefined;
  /** The heading of its column, where that names what was looked at: nothing else is meant. */
  readonly heading?: Label;
  /** Only a note says it; no value stands beside the name. */
  readonly fromNote: boolean;
  readonly column: number;
};

/** What the row says beside its claims. */
export type RowClaims = {
  readonly label: string;
  readonly claims: readonly Claim[];
  readonly note: string;
};

const textAt = (row: Row, { index }: Column): string => row.cells[index]?.text.trim() ?? "";

const notesAt = (row: Row, columns: readonly Column[]): string =>
  columns
    .flatMap(({ index }) => (row.cells[index]?.note === undefined ? [] : [row.cells[index]?.note ?? ""]))
    .join("; ");

/** What a table's columns say for all of its rows. */
export type Plan = {
  readonly columns: readonly Column[];
  readonly labels: readonly Column[];
  readonly rowsArePlaces: boolean;
  /** Heading of the column of names, where it says something itself: `Tire tread` over LF and RF. */
  readonly over: string;
  readonly scale?: GradeScale | undefined;
  /** Columns in which an x crosses something out, since something else ticks. */
  readonly crossed: ReadonlySet<number>;
};

const TICKS = /^[✓✔☑√✅]$|^(ok|yes|y)$/i;

/** Where one corner is ticked, an x under another crosses out. */
const crossedColumns = (columns: readonly Column[], rows: readonly Row[]): Set<number> => {
  const ticked = columns.filter(({ index }) =>
    rows.some((row) => TICKS.test(row.cells[index]?.text.trim() ?? "")),
  );
  const atPlaces = ticked.some(({ role }) => role === "at");
  return new Set(
    columns
      .filter((column) => ticked.includes(column) || (atPlaces && column.role === "at"))
      .map(({ index }) => index),
  );
};

/** What the columns of one table beside others say for each of its rows. */
export const planOf = (columns: readonly Column[], table: Table): Plan => {
  const labels = columns.filter(({ role }) => role === "label");
  const last = labels.at(-1);
  const texts = last === undefined ? [] : table.rows.map((row) => textAt(row, last));
  const grades = columns.flatMap(({ grade }) => (grade === undefined ? [] : [grade]));
  const headed = columns.map(({ heading }) => scaleInHeading(heading)).find((scale) => scale !== undefined);
  return {
    columns,
    labels,
    rowsArePlaces: namesPlaces(texts),
    over: last === undefined ? "" : last.heading,
    scale: scaleOfHeadings(grades) ?? headed,
    crossed: crossedColumns(columns, table.rows),
  };
};

const bad: Outcome = { says: "bad" };
const good: Outcome = { says: "good" };

/** An x beside ticks crosses out; one alone is a mark. */
const crossed = (text: string, column: Column, plan: Plan, value: Value): Value => {
  if (!/^[xX]$/.test(text)) return value;
  return { ...value, outcome: plan.crossed.has(column.index) ? bad : good };
};

/** A cell under `OK`, `Fail` or `Fair`: a mark means the heading, a text says it itself beside what the heading says. */
const ticked = (text: string, column: Column, writing: Writing): Value => {
  const own = readValue(text, writing);
  if (column.grade !== undefined && (isMark(text) || text.toLowerCase() === column.grade.toLowerCase()))
    return { ...own, text: column.grade, outcome: column.outcome, numeric: false, numbers: undefined };
  if (isMark(text) || (own.outcome !== undefined && own.outcome.says !== "unseen"))
    return {
      ...own,
      text: column.heading,
      outcome: column.outcome ?? own.outcome,
      numeric: false,
      numbers: undefined,
    };
  return { ...own, outcome: own.outcome ?? column.outcome };
};

/** What several cells of one row say of the same thing: the numbers of one, the verdict of another. */
const joined = (values: readonly Value[]): Value | undefined => {
  const [first] = values;
  if (first === undefined) return undefined;
  const numeric = values.find((value) => value.numeric);
  const words = values.filter((value) => !value.numeric);
  const worded = words.find(({ text }) => outcomeOf(text) === undefined) ?? words[0];
  const outcome = values.find((value) => value.outcome !== undefined)?.outcome;
  const remark = values.map((value) => value.remark).find((one) => one !== undefined);
  const hedged = values.find(({ firmness }) => firmness !== "asserted");
  return {
    text: worded?.text ?? first.text,
    numeric: numeric !== undefined,
    firmness: hedged?.firmness ?? "asserted",
    ...(outcome === undefined ? {} : { outcome }),
    ...(remark === undefined ? {} : { remark }),
    ...((numeric ?? worded)?.numbers === undefined ? {} : { numbers: (numeric ?? worded)?.numbers }),
  };
};

type Said = { readonly value: Value; readonly column: number; readonly rated?: boolean | undefined };

/** Under `OK? Y/N` yes is good, whatever is asked: of a noise, that there is none. */
const judged = ({ heading }: Column, value: Value): Value => {
  const says = value.outcome?.says;
  if (!/\b(?:ok|okay|pass)\b/i.test(heading) || (says !== "yes" && says !== "no")) return value;
  return { ...value, outcome: says === "yes" ? good : bad };
};

const RATING = /^\s*(?:rating|grade|score|marks?|points)\b/i;

/** `Rating 1-4`: its figures are marks, and what was measured stands elsewhere. */
const isRating = ({ heading }: Column, text: string): boolean =>
  RATING.test(heading) && /^\s*(?:\d{1,2}|[A-F])\s*$/.test(text);

const mainValue = (row: Row, plan: Plan, writing: Writing): Said | undefined => {
  const said = plan.columns.flatMap((column): Said[] => {
    const text = textAt(row, column);
    if (isBlank(text) || row.cells[column.index]?.under === "left") return [];
    if (column.role === "tick") return [{ value: ticked(text, column, writing), column: column.index }];
    if (column.role !== "value") return [];
    const value = judged(column, crossed(text, column, plan, readValue(text, writing)));
    return [{ value, column: column.index, rated: isRating(column, text) }];
  });
  const figures = said.filter(({ rated }) => rated !== true);
  const value = joined([...figures, ...said.filter(({ rated }) => rated)].map((one) => one.value));
  if (value === undefined) return undefined;
  return { value, column: said[0]?.column ?? 0, rated: figures.length === 0 };
};

/** Readings of one thing side by side, under `Inner | Middle | Outer` or `1 | 2 | 3`. */
const spotReadings = (row: Row, plan: Plan, writing: Writing): Said | undefined => {
  const spots = plan.columns.filter(({ role }) => role === "spot");
  const said = spots.flatMap((column): Said[] => {
    const text = textAt(row, column);
    return isBlank(text) || isNoteIn(column.role, text)
      ? []
      : [{ value: readValue(text, writing), column: column.index }];
  });
  const [first] = said;
  if (first === undefined || said.length < 2) return first;
  const numbers = said.flatMap(({ value }) => (value.numbers === undefined ? [] : [value.numbers]));
  if (numbers.length < said.length) return first;
  const unit = numbers.map((one) => one.unit).find((one) => one !== undefined);
  const of32 = numbers.every((one) => one.of32 === true);
  const values = numbers.flatMap((one) => one.values);
  return {
    column: first.column,
    value: {
      ...first.value,
      numbers: { values, ...(unit === undefined ? {} : { unit }), ...(of32 ? { of32: true } : {}) },
    },
  };
};

/** A name's words with a heading's: `Hood` under `Thickness (mils)`. */
const beside = (name: string, heading: string): Label => labelOf(`${name} ${heading}`.trim());

const whereOf = (row: Row, plan: Plan, label: string): Label[] => [
  labelOf(label),
  ...plan.columns
    .filter(({ role }) => role === "place")
    .map((column) => labelOf(`${column.heading} ${textAt(row, column)}`)),
];

const unitFor = (row: Row, plan: Plan): UnitSymbol | undefined =>
  plan.columns
    .filter(({ role }) => role === "unit")
    .map((column) => findUnit(textAt(row, column)))
    .find((unit) => unit !== undefined);

/** Words in a column of readings say something of them. */
const isNoteIn = (role: Column["role"], text: string): boolean =>
  role === "note" || (role === "spot" && !/\d|^#/.test(text) && outcomeOf(text) === undefined);

const noteOf = (row: Row, plan: Plan): string =>
  [
    ...plan.columns.map((column) => (isNoteIn(column.role, textAt(row, column)) ? textAt(row, column) : "")),
    notesAt(row, plan.columns),
  ]
    .filter((text) => text !== "")
    .join("; ");

const labelText = (row: Row, plan: Plan): string =>
  plan.labels.map((column) => textAt(row, column)).findLast((text) => !isBlank(text)) ?? "";

const overName = ({ over }: Plan): Label[] => (over === "" ? [] : [labelOf(over)]);

const headingUnit = (plan: Plan, column: number): UnitSymbol | undefined =>
  headedUnit(plan.columns.find(({ index }) => index === column)?.heading ?? "") ?? labelOf(plan.over).unit;

/** `Reading (mm)`, or the unit by itself: `Volts`. */
const headedUnit = (heading: string): UnitSymbol | undefined =>
  labelOf(heading).unit ?? (heading.trim().length > 1 ? findUnit(heading) : undefined);

/** `Leak %` beside `Cyl` is of cylinders. */
const cylinderName = (plan: Plan, heading: string): Label[] =>
  ofCylinders(plan.columns) ? [beside("cylinder", heading)] : [];

/** `LR cracked` beside a cross under LR, `surface rust` beside crosses under both rears: what the row's remark says of a cell. */
const isSharedBy = ({ places }: Label, { outcome, remark }: Value, note: string): boolean => {
  if (note === "" || outcome?.says !== "bad" || remark !== undefined || places.size === 0) return false;
  return [...labelOf(note).places].every((place) => places.has(place));
};

/** Cells whose column says where, or names what was looked at: a claim each. */
const crossClaims = (row: Row, plan: Plan, label: string, writing: Writing, rowNote: string): Claim[] =>
  plan.columns.flatMap((column): Claim[] => {
    const text = textAt(row, column);
    if ((column.role !== "at" && column.role !== "item") || isBlank(text)) return [];
    if (row.cells[column.index]?.under === "left") return [];
    const heading = labelOf(column.heading);
    const value = crossed(text, column, plan, readValue(text, writing));
    const pinned = row.cells[column.index]?.note ?? "";
    const own = labelOf(label);
    const rowNames = isPlaceOnly(own) || own.core.length === 0 || plan.rowsArePlaces;
    const names =
      column.role === "at"
        ? [own, ...overName(plan)]
        : rowNames
          ? [...cylinderName(plan, column.heading), heading, beside(label, column.heading)]
          : [beside(label, column.heading), heading];
    const unit = heading.unit ?? own.unit ?? unitFor(row, plan) ?? labelOf(plan.over).unit;
    const where = [...whereOf(row, plan, label), heading];
    const shared = isSharedBy(heading, value, rowNote) ? rowNote : "";
    const note = [pinned, value.remark ?? "", shared].filter((one) => one !== "").join("; ");
    return [
      {
        names,
        where,
        value,
        note,
        unit,
        ...(column.role === "item" ? { heading: cylinderName(plan, column.heading)[0] ?? heading } : {}),
        scale: scaleInHeading(column.heading) ?? plan.scale,
        fromNote: false,
        column: column.index,
      },
    ];
  });

const rowClaim = (
  row: Row,
  plan: Plan,
  label: string,
  said: Said,
  note: string,
  fromNote: boolean,
): Claim => {
  const own = labelOf(label);
  const placed = whereOf(row, plan, label);
  const placeNames = placed.slice(1).map((place) => beside(label, place.text));
  const names = own.core.length === 0 ? [...overName(plan), own] : [...placeNames, own];
  return {
    names,
    where: placed,
    value: said.value,
    note: [note, said.value.remark ?? ""].filter((one) => one !== "").join("; "),
    unit: unitFor(row, plan) ?? own.unit ?? headingUnit(plan, said.column),
    scale: plan.scale,
    rated: said.rated,
    fromNote,
    column: said.column,
  };
};

/**
 * What one row of a table says, by the roles of its columns.
 *
 * @param label the row's name where it is not in the row itself
 */
export const claimsOf = (row: Row, plan: Plan, writing: Writing): RowClaims => {
  const label = labelText(row, plan);
  const note = noteOf(row, plan);
  const cross = crossClaims(row, plan, label, writing, note);
  const main = mainValue(row, plan, writing) ?? spotReadings(row, plan, writing);
  const own = main === undefined || label === "" ? [] : [rowClaim(row, plan, label, main, note, false)];
  const claims = [...own, ...cross];
  if (claims.length > 0 || note === "" || label === "") return { label, claims, note };
  const value = readValue(note, writing);
  const noteOnly =
    outcomeOf(note) === undefined ? [rowClaim(row, plan, label, { value, column: -1 }, note, true)] : [];
  return { label, claims: noteOnly, note };
};
