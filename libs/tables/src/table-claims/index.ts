import type { GradeScale } from "@evenhand/shared/report";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { Row } from "../grid/index.ts";
import { isPlaceOnly, labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import { isBlank, outcomeOf } from "../outcome-words/index.ts";
import { readValue } from "../read-value/index.ts";
import type { Value } from "../read-value/index.ts";
import type { Writing } from "../read-value/numbers.ts";
import { scaleInHeading } from "../legends/index.ts";
import { ofCylinders } from "../table-columns/index.ts";
import type { Column } from "../table-columns/index.ts";
import { textAt } from "../table-plan/index.ts";
import type { Plan } from "../table-plan/index.ts";
import { findUnit } from "../unit-words/index.ts";
import { severalIn, crossed, isNoteIn, mainValue, spotReadings } from "./main-value.ts";
import type { Said } from "./main-value.ts";

/** Something a row says of the car: of what, where, and what. Of which item is found out later. */
export type Claim = {
  /** What it may be named by, the likeliest first; each is tried until one names something. */
  readonly names: readonly Label[];
  /** What may say where: the row, its place column, the column's heading. */
  readonly where: readonly Label[];
  readonly value: Value;
  /** Where a heading or the worksheet's name says that it was read. */
  readonly below?: Label;
  /** Places it is not said of. */
  readonly except?: readonly Label[];
  readonly note: string;
  readonly unit?: UnitSymbol | undefined;
  readonly scale?: GradeScale | undefined;
  /** Its value is a mark from a column of marks, and no figure. */
  readonly rated?: boolean | undefined;
  /** The heading of its column, where that names what was looked at: nothing else is meant. */
  readonly heading?: Label;
  /** What the row asks of what the heading names: `Repainted?` of each panel. */
  readonly asks?: Label;
  /** Of a part of a cell, the words of its own. */
  readonly own?: Label;
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

const notesAt = (row: Row, columns: readonly Column[]): string =>
  columns
    .flatMap(({ index }) => (row.cells[index]?.note === undefined ? [] : [row.cells[index]?.note ?? ""]))
    .join("; ");

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

/** `Tires | LF`: the name stands in the column before. */
const groupNames = (row: Row, plan: Plan): Label[] =>
  plan.labels
    .slice(0, -1)
    .map((column) => textAt(row, column))
    .filter((text) => !isBlank(text))
    .map(labelOf);

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

const AS_OTHER = /^(?:same\s+)?as\s+(?:the\s+)?(?<place>[\w/' -]{1,20})$/i;

/** `As l/h` under R/H is what stands under L/H. */
const referred = (row: Row, plan: Plan, text: string): string => {
  const place = labelOf((AS_OTHER.exec(text)?.groups?.["place"] ?? "").toUpperCase());
  if (place.places.size === 0) return text;
  const other = plan.columns.find(
    ({ role, heading }) =>
      role === "at" && [...labelOf(heading).places].sort().join() === [...place.places].sort().join(),
  );
  return other === undefined ? text : textAt(row, other);
};

/** Of several readings under one heading the first column says all. */
const isFurther = (column: Column, { columns }: Plan): boolean =>
  column.ofSeveral === true && columns.find(({ heading }) => heading === column.heading) !== column;

const ACROSS: ReadonlySet<Column["role"]> = new Set(["at", "item", "when"]);

/** Cells whose column says where, or names what was looked at: a claim each. */
const crossClaims = (row: Row, plan: Plan, label: string, writing: Writing, rowNote: string): Claim[] =>
  plan.columns.flatMap((column): Claim[] => {
    const text = referred(row, plan, textAt(row, column));
    if (!ACROSS.has(column.role) || isBlank(text) || isFurther(column, plan)) return [];
    if (row.cells[column.index]?.under === "left") return [];
    const heading = labelOf(column.heading);
    const value =
      column.ofSeveral === true
        ? severalIn(
            row,
            plan.columns.filter(({ heading: name }) => name === column.heading),
            writing,
          )
        : crossed(text, column, plan, readValue(text, writing));
    const pinned = row.cells[column.index]?.note ?? "";
    const own = labelOf(label);
    const rowNames = isPlaceOnly(own) || own.core.length === 0 || plan.rowsArePlaces;
    const names =
      column.role === "when"
        ? [beside(label, column.heading), beside(`${label} ${plan.over}`, column.heading)]
        : column.role === "at"
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
        ...(column.role === "item" && !rowNames ? { asks: own } : {}),
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
  const names =
    own.core.length === 0 ? [...overName(plan), ...groupNames(row, plan), own] : [...placeNames, own];
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
  // `See notes` points elsewhere; `N/A` and `ok` in the remarks say what they say.
  const says = outcomeOf(note)?.says ?? "";
  const noteOnly = ["bad", "unseen"].includes(says)
    ? []
    : [rowClaim(row, plan, label, { value, column: -1 }, note, true)];
  return { label, claims: noteOnly, note };
};
