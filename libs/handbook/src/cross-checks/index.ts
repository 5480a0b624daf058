import type { CrossCheck, FirmLimits, MakerData } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import type { Sheet } from "@evenhand/shared/sheet";
import type { RuleRecord } from "../rule-record/index.ts";
import { ruleRecords } from "../rules/index.ts";
import { bodyChecks } from "./body-checks.ts";
import { dateChecks } from "./date-checks.ts";
import { engineChecks } from "./engine-checks.ts";
import { identityChecks } from "./identity-checks.ts";
import { keyOf, partsOf } from "./prepared.ts";
import type { Checks, Prepared } from "./prepared.ts";
import { useChecks } from "./use-checks.ts";
import { indexFindings } from "./view.ts";
import type { IndexedReport, Side, View } from "./view.ts";
import { wheelChecks } from "./wheel-checks.ts";

export { indexFindings };
export type { IndexedReport };

/** What a firm set and entered for the make. Left out, what the report itself holds is taken. */
export type CrossCheckOptions = { readonly firm?: FirmLimits; readonly maker?: MakerData };

const optionsOf = ({ handbook }: Report): CrossCheckOptions => ({
  firm: handbook?.limits,
  maker: handbook?.maker?.data,
});

const GROUPS: readonly Checks[] = [
  identityChecks,
  dateChecks,
  wheelChecks,
  engineChecks,
  bodyChecks,
  useChecks,
];

const runCheck = (prepared: Prepared): CrossCheck => {
  const record: RuleRecord = ruleRecords[prepared.rule];
  const result = prepared.run();
  const { over, strength, consequence } = record;
  return { ...result, over, strength, consequence, ...partsOf(prepared, result) };
};

/** Each set of findings read and claim tested once: a view that finds nothing of its own repeats another. */
const runOnce = (prepared: readonly Prepared[]): CrossCheck[] => {
  const seen = new Set<string>();
  return prepared.flatMap((check) => {
    const key = keyOf(check);
    if (seen.has(key)) return [];
    seen.add(key);
    return [runCheck(check)];
  });
};

/** Every rule whose inputs are there: of each report by itself, and of one's claims against the other's readings. */
const runViews = (own: readonly View[], across: readonly View[]): CrossCheck[] =>
  GROUPS.flatMap(({ oneReport, bothReports }) => [
    ...runOnce(oneReport.flatMap((find) => own.flatMap((view) => find(view)))),
    ...runOnce(bothReports.flatMap((find) => [...own, ...across].flatMap((view) => find(view)))),
  ]);

const viewMaker =
  (sheet: CompiledSheet, reports: View["reports"], { firm = {}, maker = {} }: CrossCheckOptions) =>
  (claims: Side, readings: readonly Side[]): View => ({ sheet, reports, firm, maker, claims, readings });

/**
 * Every rule of the handbook over two reports: each report's claims against its own readings, and the claims of A
 * against the readings of B (A's own where B has none). A check says which findings it read and whose claim it tests.
 *
 * Order: by subject and rule, then A by itself, B by itself, A against B. Same input, same output.
 *
 * @param a the report whose claims are tested, checked against the sheet and indexed
 * @param b the report that answers it; its author's own figures are the ones in force, since whoever made the claims must not
 *   choose what they are judged by
 * @example crossChecks({ report: a, index: indexFindings(a) }, { report: b, index: indexFindings(b) }, compiledSheet)
 */
export const crossChecks = (
  a: IndexedReport,
  b: IndexedReport,
  sheet: CompiledSheet,
  options: CrossCheckOptions = optionsOf(b.report),
): CrossCheck[] => {
  const view = viewMaker(sheet, { a, b }, options);
  return runViews([view("a", ["a"]), view("b", ["b"])], [view("a", ["b", "a"])]);
};

/**
 * Every rule one report gives the inputs for, as help while it is being written. Its findings are side `a`.
 *
 * @example singleReportChecks(report, sheetVersion1).filter(({ verdict }) => verdict === "breaks")
 */
export const singleReportChecks = (
  report: Report,
  sheet: Sheet,
  options: CrossCheckOptions = optionsOf(report),
): CrossCheck[] => {
  const a = { report, index: indexFindings(report) };
  return runViews([viewMaker(compileSheet(sheet), { a }, options)("a", ["a"])], []);
};
