import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { Finding } from "@evenhand/shared/finding";
import type { SheetReading, SheetRow } from "@evenhand/shared/http/readings";
import type { Report } from "@evenhand/shared/report";
import { asideWords, becauseWords, noteWords } from "@evenhand/tables/because-words";
import { namedFinding } from "@evenhand/tables/named-finding";
import { readFile } from "@evenhand/tables/read-file";
import { readTable } from "@evenhand/tables/read-table";
import type { RowOutcome, SettledLine } from "@evenhand/tables/read-table";
import { tableRefusalWords } from "@evenhand/tables/refused";
import { isReportTable, reportFromTable } from "@evenhand/tables/report-table";
import type { DraftRead } from "./draft-read.ts";
import { findingProblems, type ProblemOf } from "./finding-problem.ts";

type Unread = { readonly reason: string };

/** What one report says of its own making (people, files, looks, hours) is not true of another. */
const takenOver = (
  { item, position, answer, firmness, basis, note, instrument, conditions }: Finding,
  { header }: DraftRead,
): Finding => ({
  item,
  position,
  answer,
  firmness,
  basis,
  ...(note === undefined ? {} : { note }),
  ...(conditions === undefined ? {} : { conditions }),
  ...(header.instruments.some(({ id }) => id === instrument) ? { instrument } : {}),
});

const ofExport = (report: Report, form: SheetReading["form"], draft: DraftRead): SheetReading => {
  const name = namedFinding(report, sheetVersion1);
  const problemOf = findingProblems(draft, report.scales);
  return {
    form,
    exported: true,
    scales: report.scales,
    aside: [],
    rows: report.findings.map((original, at) => {
      const { item, place, answer } = name(original);
      const finding = takenOver(original, draft);
      const problem = problemOf(finding);
      return {
        grid: "",
        row: at + 1,
        text: [item, place, answer].filter((text) => text !== "").join(" | "),
        end: "finding",
        findings: [{ finding, confidence: 1, sure: true, line: "", settled: false, problem }],
        refused: [],
        note: null,
      };
    }),
  };
};

const rowOf = (
  { grid, row, text, end, findings, refused, note }: RowOutcome,
  problemOf: ProblemOf,
  settled: ReadonlyMap<string, SettledLine>,
): SheetRow => ({
  grid,
  row,
  text,
  end,
  findings: findings.map(({ finding: input, confidence, sure, line }) => {
    const finding = Finding.parse(input);
    return { finding, confidence, sure, line, settled: settled.has(line), problem: problemOf(finding) };
  }),
  refused: refused.map(({ why, item, line }) => ({ reason: becauseWords(why), item: item ?? null, line })),
  note: note === undefined ? null : noteWords(note),
});

/** A sheet as a draft for this car, row by row, or why the file is not read. */
export const readSheet = (
  bytes: Uint8Array,
  draft: DraftRead,
  settled: ReadonlyMap<string, SettledLine>,
): SheetReading | Unread => {
  const read = readFile(bytes);
  if (!read.ok) return { reason: tableRefusalWords(read.refused) };
  const { book } = read;
  if (isReportTable(book)) {
    const report = reportFromTable(book);
    return report === undefined
      ? {
          reason:
            "This is an exported report that was changed since, so that it can no longer be read. Export it again.",
        }
      : ofExport(report, book.form, draft);
  }
  const table = readTable(book, sheetVersion1, { form: draft.vehicle.form, settled });
  const problemOf = findingProblems(draft, table.scales);
  return {
    form: book.form,
    exported: false,
    rows: table.rows.map((row) => rowOf(row, problemOf, settled)),
    scales: [...table.scales],
    aside: table.aside.map(asideWords),
  };
};
