import { writeFileSync } from "node:fs";
import type { Report } from "@evenhand/shared/report";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { reportCsv, reportTable, reportWorkbook } from "@evenhand/tables/report-table";
import type { Named } from "@evenhand/tables/report-table";
import { answerWords } from "@evenhand/wording/answer-words";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { problemLines, readReport } from "../read-report.ts";
import { done, unusable } from "../shell.ts";
import type { Shell } from "../shell.ts";
import { usage } from "../usage.ts";

const sections = new Map(sheetVersion1.sections.map(({ id, words }) => [id, words.american]));

/** How a finding reads for whoever opens the table. */
const namedIn = (report: Report): ((finding: Report["findings"][number]) => Named) => {
  const words = sheetWords(sheetVersion1);
  return ({ item, position, answer }) => {
    const known = words.findItem(item);
    return {
      section: sections.get(known?.section ?? "") ?? "",
      item: words.place(item, ""),
      place: position === "" ? "" : words.place(item, position),
      answer: answerWords(answer, { sheet: words, item: known, scales: report.scales }),
    };
  };
};

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
  const table = reportTable(read.report, namedIn(read.report));
  writeFileSync(to, kind === "csv" ? reportCsv(table) : reportWorkbook(table));
  return done;
};
