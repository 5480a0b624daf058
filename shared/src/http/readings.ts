import { z } from "zod";
import { Finding } from "../finding.ts";
import { ItemId, PositionId } from "../identifier.ts";
import { GradeScale } from "../report.ts";
import type { Contract } from "./paging.ts";

/** Most bytes of a body that carries a recording's captions or a sheet: in base64 a file of three mebibytes. */
export const readingBytes = 4 * 1024 * 1024;

/** Captions of a spoken walkaround (WebVTT, SubRip, or plain text with times), as they stand in the file. */
export const SpokenRequest = z.strictObject({ text: z.string().min(1) });
export type SpokenRequest = z.infer<typeof SpokenRequest>;

/** An inspector's own sheet: the bytes of a CSV or XLSX file in base64 (RFC 4648, section 4). */
export const SheetRequest = z.strictObject({ file: z.base64().min(1) });
export type SheetRequest = z.infer<typeof SheetRequest>;

/** 0 to 1: how well it fits. */
const Confidence = z.number().min(0).max(1);
/** Why the report would not take it as it stands; `null` where it would. */
const Problem = z.string().nullable();

/** Something a walkaround claims, as a finding nobody has confirmed. */
export const SpokenRemark = z.strictObject({
  finding: Finding,
  /** Second of the recording at which it begins. */
  second: z.number().nonnegative(),
  /** Where in `text` the words stand it came from, and those words. */
  start: z.int().nonnegative(),
  end: z.int().nonnegative(),
  words: z.string(),
  confidence: Confidence,
  /** The part or its side was not named, and is the one last in view. */
  inferred: z.boolean(),
  /** Words that were misheard, as they were heard. */
  heard: z.array(z.string()),
  problem: Problem,
});
export type SpokenRemark = z.infer<typeof SpokenRemark>;

/** A draft of what was said. Nothing of it is written anywhere. */
export const SpokenReading = z.strictObject({
  form: z.enum(["webvtt", "subrip", "timed-text"]),
  text: z.string(),
  /** The text in stretches, each with its second. */
  passages: z.array(
    z.strictObject({
      start: z.int().nonnegative(),
      end: z.int().nonnegative(),
      second: z.number().nonnegative(),
    }),
  ),
  remarks: z.array(SpokenRemark),
  /** Items that were never mentioned, gravest first. */
  unmentioned: z.array(ItemId),
});
export type SpokenReading = z.infer<typeof SpokenReading>;

/** Longest name of a line that is kept. */
export const MOST_LINE_NAME = 300;
/** What the firm's sheet calls a line, by which it is known again. */
const LineName = z.string().min(1).max(MOST_LINE_NAME);

export const SheetRowFinding = z.strictObject({
  finding: Finding,
  confidence: Confidence,
  /** Nothing about it is for a person to settle. */
  sure: z.boolean(),
  line: z.string(),
  /** The line was settled by hand before. */
  settled: z.boolean(),
  problem: Problem,
});
export type SheetRowFinding = z.infer<typeof SheetRowFinding>;

/** One row of a sheet, and what became of it: none is dropped. */
export const SheetRow = z.strictObject({
  /** Name of its worksheet. */
  grid: z.string(),
  /** Its number as the spreadsheet shows it. */
  row: z.int().positive(),
  text: z.string(),
  end: z.enum(["finding", "note", "refused"]),
  findings: z.array(SheetRowFinding),
  /** What of it became no finding: why, in words, and the item it seems to be of. */
  refused: z.array(z.strictObject({ reason: z.string(), item: ItemId.nullable(), line: z.string() })),
  /** What a row is that holds no finding, in words. */
  note: z.string().nullable(),
});
export type SheetRow = z.infer<typeof SheetRow>;

/** A draft of what a sheet says. Nothing of it is written anywhere. */
export const SheetReading = z.strictObject({
  form: z.enum(["csv", "xlsx"]),
  /** A report of ours that was exported as a table. */
  exported: z.boolean(),
  rows: z.array(SheetRow),
  /** Scales its grades are on, beside the house's: a report that takes such a grade needs its scale. */
  scales: z.array(GradeScale),
  /** What of the file was left aside, a sentence each. */
  aside: z.array(z.string()),
});
export type SheetReading = z.infer<typeof SheetReading>;

/** A line of the firm's sheet is that item at these places from now on; without an item it is forgotten and read as any other. */
export const SettledLine = z.union([
  z.strictObject({
    line: LineName,
    item: ItemId,
    positions: z.array(PositionId).min(1).max(100),
  }),
  z.strictObject({ line: LineName, item: z.null() }),
]);
export type SettledLine = z.infer<typeof SettledLine>;

export const SettledLines = z.strictObject({ lines: z.array(SettledLine).min(1).max(500) });
export type SettledLines = z.infer<typeof SettledLines>;

/** Two hundred lines with all places of each, as far as one press of somebody goes. */
const linesBytes = 512 * 1024;

export const TableQuery = z.strictObject({ form: z.enum(["csv", "xlsx"]) });
export type TableQuery = z.infer<typeof TableQuery>;

const isTable = (bytes: unknown): boolean =>
  bytes instanceof Uint8Array &&
  ["PK", "\u00ef\u00bb"].includes(String.fromCharCode(...bytes.subarray(0, 2)));

/** `text/csv` (RFC 4180) in UTF-8 with its mark, or a workbook (ECMA-376). */
const Table = z.unknown().refine(isTable, "CSV or XLSX").meta({ type: "string", format: "binary" });

export const readingContracts = {
  "reports.readSpoken": {
    body: SpokenRequest,
    bodyBytes: readingBytes,
    costly: true,
    status: 200,
    answer: SpokenReading,
  },
  "reports.readSheet": {
    body: SheetRequest,
    bodyBytes: readingBytes,
    costly: true,
    status: 200,
    answer: SheetReading,
  },
  "reports.settleLines": { body: SettledLines, bodyBytes: linesBytes, status: 204, answer: null },
  "reports.table": { query: TableQuery, costly: true, status: 200, answer: Table },
  "reportVersions.table": { query: TableQuery, costly: true, status: 200, answer: Table },
} as const satisfies Record<string, Contract>;
