import { readFileSync } from "node:fs";
import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { draftReport } from "@evenhand/tables/draft-report";
import type { DraftHeader, LeftOut } from "@evenhand/tables/draft-report";
import { readFile } from "@evenhand/tables/read-file";
import { readTable } from "@evenhand/tables/read-table";
import type { TableDraft } from "@evenhand/tables/read-table";
import { tableRefusalWords } from "@evenhand/tables/refused";
import { isReportTable, reportFromTable } from "@evenhand/tables/report-table";

/** A file of tables: a report of ours that was exported, an inspector's own sheet as a draft, or why it is neither. */
export type TableFile =
  | { readonly is: "report"; readonly report: Report }
  | { readonly is: "draft"; readonly draft: TableDraft }
  | { readonly is: "unusable"; readonly reason: string };

/** Whether a file's name is one of a sheet; what it holds is told by its bytes. */
export const isTableName = (path: string): boolean =>
  /\.(csv|tsv|tab|txt|xlsx|xlsm|xls|ods|numbers)$/i.test(path);

const why = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Reads a file of tables. Where the car is known, positions it does not have are not meant. */
export const readTableFile = (path: string, sheet: Sheet, car?: Report["vehicle"]): TableFile => {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    return { is: "unusable", reason: `The file cannot be read: ${why(error)}` };
  }
  const read = readFile(bytes);
  if (!read.ok) return { is: "unusable", reason: tableRefusalWords(read.refused) };
  if (!isReportTable(read.book))
    return { is: "draft", draft: readTable(read.book, sheet, car === undefined ? {} : { form: car.form }) };
  const report = reportFromTable(read.book);
  return report === undefined
    ? {
        is: "unusable",
        reason:
          "This is an exported report that was changed since, so that it can no longer be read. Export it again.",
      }
    : { is: "report", report };
};

/** What the other report says of the car and the day stands in for what a sheet does not say. */
export const headerBeside = (other: Report, kind: "statement" | "inspection", path: string): DraftHeader => ({
  kind,
  vehicle: other.vehicle,
  author: {
    organization: `Draft from ${path.split(/[/\\]/).at(-1) ?? path}`.slice(0, 200),
    role: kind === "statement" ? "dealer" : "inspector",
  },
  visit: other.visit,
});

/** A sheet as a report beside another: the report, the draft it was made from, and what the sheet would not take. */
export type DraftBeside =
  | {
      readonly ok: true;
      readonly report: Report;
      readonly draft: TableDraft;
      readonly leftOut: readonly LeftOut[];
    }
  | { readonly ok: false; readonly reason: string };

/** Makes a draft a report on the car of another. */
export const draftBeside = (draft: TableDraft, header: DraftHeader, sheet: Sheet): DraftBeside => {
  const made = draftReport(draft, header, sheet);
  return made.ok
    ? { ok: true, report: made.report, draft, leftOut: made.leftOut }
    : { ok: false, reason: made.reasons.join("; ") };
};
