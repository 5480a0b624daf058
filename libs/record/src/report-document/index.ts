import type { ReportHeader, StoredHeader } from "@evenhand/shared/http/reports";
import type { ReportHandbook } from "@evenhand/shared/cross-check";
import { type Report, type ReportKind, Vehicle } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";

/** The sheet that new reports are written on. */
export const currentSheet = sheetVersion1;
/** The same with its items by id and what they refer to resolved; made once for everybody. */
export const compiledSheet = compileSheet(currentSheet);

export const newHeader = (header: ReportHeader): StoredHeader => ({
  sheet: { id: currentSheet.id, version: currentSheet.version },
  visit: header.visit,
  ...(header.terms === undefined ? {} : { terms: header.terms }),
  instruments: header.instruments ?? [],
  persons: header.persons ?? [],
  scales: header.scales ?? [],
  ...(header.cautionsRead === undefined ? {} : { cautionsRead: header.cautionsRead }),
});

export const readVehicle = (stored: unknown): Vehicle => Vehicle.parse(stored);

/** A finding as it is stored: its place stands beside it, whatever is in it. */
export type StoredPlace = { item: string; position: string; body: unknown };

const order = ({ item }: StoredPlace): number =>
  compiledSheet.items.get(item)?.order ?? Number.MAX_SAFE_INTEGER;
const byText = (a: string, b: string): number => Number(a > b) - Number(a < b);

/** In the order of the sheet; positions by name. */
export const inSheetOrder = (findings: readonly StoredPlace[]): unknown[] =>
  findings.toSorted((a, b) => order(a) - order(b) || byText(a.position, b.position)).map(({ body }) => body);

export type ReportParts = {
  kind: ReportKind;
  /** As stored, also where a part of it does not hold: checking the report names that part. */
  stored: Readonly<Record<string, unknown>>;
  vehicle: Vehicle;
  author: Report["author"];
  /** Absent where the firm entered nothing that speaks of the car. */
  handbook?: ReportHandbook | undefined;
  findings: readonly StoredPlace[];
};

/** The report as a file holds it, not yet checked. */
export const toReport = ({ kind, stored, vehicle, author, handbook, findings }: ReportParts) => ({
  format: "evenhand-report",
  version: 1,
  kind,
  ...stored,
  vehicle,
  author,
  ...(handbook === undefined ? {} : { handbook }),
  findings: inSheetOrder(findings),
});
