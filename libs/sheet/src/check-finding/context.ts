import type { FieldProblem } from "@evenhand/shared/problem";
import type { GradeScale, Instrument, Report, ReportKind, VehicleForm } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { compileSheet } from "../compile-sheet/index.ts";
import type { CompiledItem, CompiledSheet } from "../compile-sheet/index.ts";

/** What of a report a finding refers to. */
export type ReportHeader = Pick<Report, "vehicle" | "instruments" | "persons" | "scales"> &
  Partial<Pick<Report, "kind">>;

/**
 * What is known of the report around a finding. `undefined` in place of a form, instrument or scale: it is there, but could not be
 * read, which is said once where it stands and never again at each finding.
 */
export type FindingContext = {
  readonly sheet: CompiledSheet;
  readonly form: VehicleForm | undefined;
  /** Whose report it is, where known: what only a seller can claim is not asked of an inspector. */
  readonly kind: ReportKind | undefined;
  readonly instruments: ReadonlyMap<string, Instrument | undefined>;
  readonly persons: ReadonlySet<string>;
  readonly scales: ReadonlyMap<string, GradeScale | undefined>;
};

/** One finding's item, and where it is said, for the problems found in it. */
export type Place = {
  readonly at: string;
  readonly item: string;
  readonly position: string;
  /** How the item is called, quoted, as the sentences have it. */
  readonly name: string;
};

/** An item's words as a name in a sentence: a person knows the item by them, and never by its id. */
export const nameOf = (words: string): string => `“${words.charAt(0).toUpperCase()}${words.slice(1)}”`;

export function contextOf(header: ReportHeader, sheet: Sheet): FindingContext {
  return {
    sheet: compileSheet(sheet),
    form: header.vehicle.form,
    kind: header.kind,
    instruments: new Map(header.instruments.map((instrument) => [instrument.id, instrument])),
    persons: new Set(header.persons.map(({ id }) => id)),
    scales: new Map(header.scales.map((scale) => [scale.id, scale])),
  };
}

/** A JSON Pointer (RFC 6901) below another. */
export function pointer(at: string, ...path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (whole, part) => `${whole}/${String(part).replaceAll("~", "~0").replaceAll("/", "~1")}`,
    at,
  );
}

export function problemAt(place: Place, path: readonly PropertyKey[], reason: string): FieldProblem {
  return { at: pointer(place.at, ...path), reason, item: place.item, position: place.position };
}

/** `a, b or c`; a long list is cut. */
export function oneOf(names: readonly string[]): string {
  const most = 14;
  if (names.length === 0) return "nothing";
  if (names.length > most) return `${names.slice(0, most).join(", ")} … (${names.length} in all)`;
  return names.length === 1 ? String(names[0]) : `${names.slice(0, -1).join(", ")} or ${names.at(-1)}`;
}

export const quote = (text: string): string => JSON.stringify(text);

export type { CompiledItem };
