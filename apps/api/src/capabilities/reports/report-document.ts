import type { ReportHeader } from "@evenhand/shared/http/reports";
import type { ReportHandbook } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import { Report, type ReportInput, type ReportKind, Vehicle } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";

/** The sheet that new reports are written on. */
export const currentSheet = sheetVersion1;
const places = compileSheet(currentSheet).items;

/** What is stored of a report beside its findings: the parts of the document that its author writes, and the sheet it is on. */
export type StoredHeader = Pick<Report, "sheet" | "visit" | "terms" | "instruments" | "persons" | "scales">;

export const newHeader = (header: ReportHeader): StoredHeader => ({
  sheet: { id: currentSheet.id, version: currentSheet.version },
  visit: header.visit,
  ...(header.terms === undefined ? {} : { terms: header.terms }),
  instruments: header.instruments ?? [],
  persons: header.persons ?? [],
  scales: header.scales ?? [],
});

const HeaderShape = Report.pick({
  sheet: true,
  visit: true,
  terms: true,
  instruments: true,
  persons: true,
  scales: true,
});
/** Reads a header back from where it is stored. */
export const readHeader = (stored: unknown): StoredHeader => HeaderShape.parse(stored);
export const readVehicle = (stored: unknown): Vehicle => Vehicle.parse(stored);

const order = (finding: Pick<Finding, "item">): number =>
  places.get(finding.item)?.order ?? Number.MAX_SAFE_INTEGER;
const byText = (a: string, b: string): number => Number(a > b) - Number(a < b);

/** In the order of the sheet; positions by name. */
export const inSheetOrder = (findings: readonly Finding[]): Finding[] =>
  findings.toSorted((a, b) => order(a) - order(b) || byText(a.position, b.position));

export type ReportParts = {
  kind: ReportKind;
  header: StoredHeader;
  vehicle: Vehicle;
  author: Report["author"];
  /** Absent where the firm entered nothing that speaks of the car. */
  handbook?: ReportHandbook | undefined;
  findings: readonly Finding[];
};

/** The report as a file holds it. */
export const toReport = ({
  kind,
  header,
  vehicle,
  author,
  handbook,
  findings,
}: ReportParts): ReportInput => ({
  format: "evenhand-report",
  version: 1,
  kind,
  ...header,
  vehicle,
  author,
  ...(handbook === undefined ? {} : { handbook }),
  findings: inSheetOrder(findings),
});
