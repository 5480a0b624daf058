import { reportHandbookProblems } from "@evenhand/handbook/firm-handbook";
import { checkReport } from "@evenhand/sheet/check-report";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { readJson } from "./read-json.ts";
import { sheetWords } from "@evenhand/wording/sheet-words";
import type { SheetWords } from "@evenhand/wording/sheet-words";

export type ReadReport =
  | { readonly ok: true; readonly path: string; readonly report: Report }
  | { readonly ok: false; readonly path: string; readonly problems: readonly FieldProblem[] };

/** Reads a report file and checks it against the sheet: the whole report, or every problem in it. */
export const readReport = (path: string, sheet: Sheet): ReadReport => {
  const file = readJson(path);
  if (!file.ok) return { ok: false, path, problems: [{ at: "", reason: file.reason }] };
  const check = checkReport(file.json, sheet);
  if (!check.ok) return { ok: false, path, problems: check.problems };
  const problems = reportHandbookProblems(check.report);
  return problems.length === 0 ? { ok: true, path, report: check.report } : { ok: false, path, problems };
};

/** In words, and where it stands in the file; what is on no sheet has no words. */
const placeOf = ({ item = "", position = "", at }: FieldProblem, words: SheetWords): string =>
  words.findItem(item) === undefined ? at : `${words.place(item, position)} (${at})`;

/**
 * Problems of one file as lines: where, then why.
 *
 * @example problemLines("a.json", [{ at: "/findings/3", item: "wheels.pressure", position: "left-front", reason: "…" }], sheet)
 * // ["a.json: 1 problem", "  1. tire pressure, left front (/findings/3): …"]
 */
export const problemLines = (path: string, problems: readonly FieldProblem[], sheet: Sheet): string[] => [
  `${path}: ${problems.length} ${problems.length === 1 ? "problem" : "problems"}`,
  ...problems.map((problem, index) => {
    const place = placeOf(problem, sheetWords(sheet));
    return `  ${index + 1}. ${place === "" ? "" : `${place}: `}${problem.reason}`;
  }),
];
