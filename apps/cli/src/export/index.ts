import { writeFileSync } from "node:fs";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { namedFinding } from "@evenhand/tables/named-finding";
import { reportCsv, reportTable, reportWorkbook } from "@evenhand/tables/report-table";
import { problemLines, readReport } from "../read-report.ts";
import { done, unusable } from "../shell.ts";
import type { Shell } from "../shell.ts";
import { usage } from "../usage.ts";

/** `export REPORT.json FILE.csv|FILE.xlsx`: 0 where it was written, 2 where the report cannot be used or the name says no kind of table. */
export const exportCommand = (args: readonly string[], shell: Shell): number => {
  const [from, to = "", ...others] = args;
  const kind = /\.(csv|xlsx)$/i.exec(to)?.[1]?.toLowerCase();
  if (from === undefined || kind === undefined || others.length > 0) {
    shell.error(usage.export);
    return unusable;
  }
  const read = readReport(from, sheetVersion1);
  if (!read.ok) {
    shell.error(problemLines(read.path, read.problems, sheetVersion1).join("\n"));
    return unusable;
  }
  const table = reportTable(read.report, namedFinding(read.report, sheetVersion1));
  writeFileSync(to, kind === "csv" ? reportCsv(table) : reportWorkbook(table));
  return done;
};
