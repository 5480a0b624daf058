import type { Report } from "@evenhand/shared/report";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { readReport } from "../read-report.ts";
import type { ReadReport } from "../read-report.ts";
import { draftBeside, headerBeside, isTableName, readTableFile } from "../read/draft-file.ts";
import { countsOf } from "../read/row-lines.ts";
import { readWords } from "../read/words.ts";
import { isSpoken, readSpoken } from "../spoken/draft.ts";
import { draftLines } from "../spoken/index.ts";
import type { Shell } from "../shell.ts";

const problem = (path: string, reason: string): ReadReport => ({
  ok: false,
  path,
  problems: [{ at: "", reason }],
});

/** The first of the files is what was stated, the others what was found. */
const kindOf = (at: number): "statement" | "inspection" => (at === 0 ? "statement" : "inspection");

const readTableAt = (path: string, at: number, car: Report | undefined, shell: Shell): ReadReport => {
  const read = readTableFile(path, sheetVersion1, car?.vehicle);
  if (read.is === "report") return { ok: true, path, report: read.report };
  if (read.is === "unusable") return problem(path, read.reason);
  if (car === undefined) return problem(path, readWords.say("no-car"));
  const made = draftBeside(read.draft, headerBeside(car, kindOf(at), path), sheetVersion1);
  if (!made.ok) return problem(path, made.reason);
  shell.error(readWords.say("draft", { ...countsOf(read.draft), file: path }));
  return { ok: true, path, report: made.report };
};

const readSpokenAt = (path: string, car: Report | undefined, shell: Shell): ReadReport => {
  const read = readSpoken(path, car?.vehicle);
  if (!read.ok) return problem(path, read.reason);
  shell.error(draftLines(path, read.draft).join("\n"));
  return { ok: true, path, report: read.draft.report };
};

/**
 * Reads files to be compared, each a report file, an inspector's own sheet (CSV, XLSX) or captions of a spoken walkaround. A sheet says nothing of the car: that is taken
 * from the first report among them, and that it is a draft is said.
 */
export const readFiles = (paths: readonly string[], shell: Shell): ReadReport[] => {
  const reports = paths.map((path) =>
    isTableName(path) || isSpoken(path) ? undefined : readReport(path, sheetVersion1),
  );
  const exported = paths.map((path, at) => {
    if (reports[at] !== undefined || isSpoken(path)) return undefined;
    const read = readTableFile(path, sheetVersion1);
    return read.is === "report" ? read.report : undefined;
  });
  const car = reports.find((one) => one?.ok === true);
  const known = car?.ok === true ? car.report : exported.find((one) => one !== undefined);
  return paths.map(
    (path, at) =>
      reports[at] ??
      (isSpoken(path) ? readSpokenAt(path, known, shell) : readTableAt(path, at, known, shell)),
  );
};
