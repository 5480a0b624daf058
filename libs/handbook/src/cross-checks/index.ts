import type { CrossCheck, EntryReference, FirmLimits, MakerData } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import type { Sheet } from "@evenhand/shared/sheet";
import type { Ruling } from "../define-rule/index.ts";
import { oneFact } from "../one-fact/index.ts";
import { onePerFact } from "./one-per-fact.ts";
import { rules } from "../rules/index.ts";
import type { HandbookRule } from "../rules/index.ts";
import { withSecondReadings } from "../second-reading/index.ts";
import { indexReport } from "../view/index.ts";
import type { Found, Side, View } from "../view/index.ts";

/** What a firm set and entered for the make. Left out, what the report itself holds is taken. */
export type CrossCheckOptions = { readonly firm?: FirmLimits; readonly maker?: MakerData };

const optionsOf = ({ handbook }: Report): CrossCheckOptions => ({
  firm: handbook?.limits,
  maker: handbook?.maker?.data,
});

const referenceTo = ({ side, item, position }: Found): EntryReference => ({ side, item, position });

/** What a break makes bad: as the rule says, else what was read where nobody claimed anything. */
const badOf = ({ bad, claim, reads, result }: Ruling): readonly Found[] => {
  if (result.verdict !== "breaks") return [];
  if (bad !== undefined) return bad(result);
  return claim === undefined ? reads : [];
};

const checkOf = ({ over, strength }: Running, ruling: Ruling): CrossCheck => {
  const { result, claim, reads } = ruling;
  const tested = claim === undefined ? null : referenceTo(claim);
  const decides = tested !== null && strength === "contradicts" && result.verdict !== "cannot-tell";
  return {
    ...result,
    over,
    strength,
    reads: reads.map(referenceTo),
    claim: tested,
    bad: badOf(ruling).map(referenceTo),
    decides: decides ? [tested] : [],
  };
};

/** What running a rule takes, of one shape for all of them. */
type Running = Pick<HandbookRule, "rule" | "over" | "strength">;

const RUNNING: readonly Running[] = rules.map(({ rule, over, strength }) => ({ rule, over, strength }));

/** Every rule whose inputs are there. */
const runViews = (own: readonly View[], across: readonly View[]): CrossCheck[] => {
  const all = [...own, ...across];
  const found: CrossCheck[] = [];
  for (const rule of RUNNING) {
    const rulings = rule.rule(rule.over === "one-report" ? own : all);
    const facts = across.length === 0 ? rulings : onePerFact(rulings);
    for (const ruling of facts) found.push(checkOf(rule, ruling));
  }
  return found;
};

const viewMaker = (
  sheet: CompiledSheet,
  reports: View["reports"],
  { firm = {}, maker = {} }: CrossCheckOptions,
) => {
  return (claims: Side, readings: readonly Side[]): View => ({
    sheet,
    reports,
    firm,
    maker,
    claims,
    readings,
    kept: [],
  });
};

/**
 * Every rule of the handbook over two reports: each report's claims against its own readings, and the claims of A
 * against the readings of B (A's own where B has none). A check says which findings it read and whose claim it tests.
 *
 * Order: by subject and rule, then A by itself, B by itself, A against B. Same input, same output.
 *
 * @param a the report whose claims are tested, checked against the sheet
 * @param b the report that answers it; its author's own figures are the ones in force, since whoever made the claims must not
 *   choose what they are judged by
 * @example crossChecks(statement, inspection, compiledSheet).filter(({ verdict }) => verdict === "breaks")
 */
export const crossChecks = (
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  options: CrossCheckOptions = optionsOf(b),
): CrossCheck[] => {
  const reports = { a: indexReport(a, sheet, "a"), b: indexReport(b, sheet, "b") };
  const view = viewMaker(sheet, reports, options);
  const checks = runViews([view("a", ["a"]), view("b", ["b"])], [view("a", ["b", "a"])]);
  return oneFact(withSecondReadings(checks, reports, sheet));
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
  const compiled = compileSheet(sheet);
  const reports = { a: indexReport(report, compiled, "a") };
  return runViews([viewMaker(compiled, reports, options)("a", ["a"])], []);
};
