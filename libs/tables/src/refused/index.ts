import { defineMessages } from "@evenhand/message/define-messages";

const MESSAGES = {
  empty: "The file holds nothing. Save the sheet again and send that.",
  bytes: "The file has {found} MiB, and {most} MiB are the most. Leave pictures out of it and send it again.",
  inflated:
    "What is packed in the file comes to more than {most} MiB. Copy the sheet into a new workbook and send that.",
  entries: "The file has {found} parts, and {most} are the most. Copy the sheet into a new workbook.",
  worksheets: "The file has {found} worksheets, and {most} are the most. Send those of one car.",
  rows: "The file has more than {most} rows. Send the sheet of one car.",
  columns:
    "Something stands in column {found}, and {most} columns are the most. Delete what stands so far to the right.",
  cells: "The file has more than {most} cells. Send the sheet of one car.",
  characters:
    "The cell at row {row} has {found} characters, and {most} are the most. In a CSV file, look for a quotation mark that is never closed.",
  depth:
    "The parts of the file stand in each other deeper than any spreadsheet writes them. Save it again as XLSX.",
  damaged: "The workbook is damaged: {part} cannot be read. Open it, save it again as XLSX, and send that.",
  cut: "The workbook ends before it should: something cut it off. Send the original again.",
  declarations:
    "The workbook declares entities of its own ({part}), which no spreadsheet needs and which can be made to swell. Save it again as XLSX.",
  locked: "The workbook is locked with a password. Save it without one.",
  "old-excel":
    "This is a workbook of the old kind (XLS), or one locked with a password. Save it as XLSX, or as CSV.",
  "open-document": "This is an OpenDocument spreadsheet. Save it as XLSX, or as CSV.",
  "other-archive":
    "This is an archive, but no workbook is in it. Send the sheet itself as XLSX or CSV; in Numbers, choose Export to.",
  "other-file": "This is no table: by its bytes it is {kind}. Send the sheet as XLSX or CSV.",
} as const;

const { say } = defineMessages("table-refusal", MESSAGES);

/** Why a file of tables is not read, with the figures its sentence names. */
export type TableRefused =
  | {
      readonly reason: "bytes" | "entries" | "worksheets" | "columns";
      readonly found: number;
      readonly most: number;
    }
  | { readonly reason: "inflated" | "rows" | "cells"; readonly most: number }
  | {
      readonly reason: "characters";
      readonly row: number;
      readonly found: number;
      readonly most: number;
    }
  | { readonly reason: "damaged" | "declarations"; readonly part: string }
  | { readonly reason: "other-file"; readonly kind: string }
  | {
      readonly reason: "empty" | "depth" | "cut" | "locked" | "old-excel" | "open-document" | "other-archive";
    };

/** Thrown inside the readers, which end where something may not be; `readFile` answers with it as data. */
export class TableRefusal extends Error {
  readonly refused: TableRefused;

  constructor(refused: TableRefused) {
    super(refused.reason);
    this.name = "TableRefusal";
    this.refused = refused;
  }
}

/**
 * Why a file of tables was not read and what would work.
 *
 * @example tableRefusalWords({ reason: "locked" }) // "The workbook is locked with a password. Save it without one."
 */
export const tableRefusalWords = (refused: TableRefused): string => {
  switch (refused.reason) {
    case "bytes":
    case "entries":
    case "worksheets":
    case "columns":
      return say(refused.reason, { found: refused.found, most: refused.most });
    case "inflated":
    case "rows":
    case "cells":
      return say(refused.reason, { most: refused.most });
    case "characters":
      return say("characters", { row: refused.row, found: refused.found, most: refused.most });
    case "damaged":
    case "declarations":
      return say(refused.reason, { part: refused.part });
    case "other-file":
      return say("other-file", { kind: refused.kind });
    default:
      return say(refused.reason);
  }
};
