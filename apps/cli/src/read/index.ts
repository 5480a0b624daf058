import { parseArgs } from "node:util";
import type { Report } from "@evenhand/shared/report";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { asideWords } from "@evenhand/tables/because-words";
import type { TableDraft } from "@evenhand/tables/read-table";
import { problemLines, readReport } from "../read-report.ts";
import { done, unusable } from "../shell.ts";
import type { Shell } from "../shell.ts";
import { isSpoken } from "../spoken/draft.ts";
import { readSpokenFile } from "../spoken/index.ts";
import { usage } from "../usage.ts";
import { draftBeside, headerBeside, readTableFile } from "./draft-file.ts";
import { countsOf, rowLines } from "./row-lines.ts";
import { readWords } from "./words.ts";

type Wanted = { readonly file: string; readonly table: boolean; readonly beside?: string };

const wantedOf = (args: readonly string[]): Wanted => {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { table: { type: "boolean", default: false }, beside: { type: "string" } },
    allowPositionals: true,
  });
  const [file, ...others] = positionals;
  if (file === undefined || others.length > 0) throw new TypeError("Name one file.");
  return { file, table: values.table, ...(values.beside === undefined ? {} : { beside: values.beside }) };
};

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** A report that lacks what a sheet does not say; whoever knows the car puts it in. */
const partOf = ({ rows, scales }: TableDraft) => ({
  format: "evenhand-report",
  version: 1,
  sheet: { id: sheetVersion1.id, version: sheetVersion1.version },
  scales,
  findings: rows.flatMap(({ findings }) => findings.map(({ finding }) => finding)),
});

const sayCounts = (draft: TableDraft, shell: Shell): void => {
  shell.error(readWords.say("summary", countsOf(draft)));
  for (const left of draft.aside) shell.error(asideWords(left));
};

const printWhole = (draft: TableDraft, other: Report, file: string, shell: Shell): number => {
  const made = draftBeside(draft, headerBeside(other, "inspection", file), sheetVersion1);
  if (!made.ok) {
    shell.error(made.reason);
    return unusable;
  }
  for (const { row, grid, reason } of made.leftOut)
    shell.error(
      readWords.say("not-taken", { row, grid: grid === "" ? "" : readWords.say("of", { grid }), reason }),
    );
  shell.out(JSON.stringify(made.report, undefined, 1));
  return done;
};

/** `read FILE`: 0 where it was read, 2 where it cannot be. */
export const readCommand = (args: readonly string[], shell: Shell): number => {
  let wanted: Wanted;
  try {
    wanted = wantedOf(args);
  } catch (error) {
    shell.error(`${messageOf(error)}\n\n${usage.read}`);
    return unusable;
  }
  const { file, table, beside } = wanted;
  const other = beside === undefined ? undefined : readReport(beside, sheetVersion1);
  if (other?.ok === false) {
    shell.error(problemLines(other.path, other.problems, sheetVersion1).join("\n"));
    return unusable;
  }
  if (isSpoken(file)) return readSpokenFile({ file, table, vehicle: other?.report.vehicle }, shell);
  const read = readTableFile(file, sheetVersion1, other?.report.vehicle);
  if (read.is === "unusable") {
    shell.error(`${file}: ${read.reason}`);
    return unusable;
  }
  if (read.is === "report") {
    shell.out(JSON.stringify(read.report, undefined, 1));
    return done;
  }
  sayCounts(read.draft, shell);
  if (table) {
    shell.out(rowLines(read.draft, sheetVersion1, shell.terminal).join("\n"));
    return done;
  }
  if (other !== undefined) return printWhole(read.draft, other.report, file, shell);
  shell.error(readWords.say("missing"));
  shell.out(JSON.stringify(partOf(read.draft), undefined, 1));
  return done;
};
