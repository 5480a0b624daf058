import type {
  CrossCheck,
  EntryReference,
  FirmLimits,
  MakerData,
  RuleResult,
} from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { SEVERITIES, severityRank } from "@evenhand/shared/severity";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import type { Sheet } from "@evenhand/shared/sheet";
import type { Prepared } from "../define-rule/index.ts";
import { oneFact } from "../one-fact/index.ts";
import { rules } from "../rules/index.ts";
import type { HandbookRule } from "../rules/index.ts";
import { withSecondReadings } from "../second-reading/index.ts";
import { indexFindings, nothingKnown } from "../view/index.ts";
import type { Found, IndexedReport, Side, View } from "../view/index.ts";

export { indexFindings };
export type { IndexedReport };

/** What a firm set and entered for the make. Left out, what the report itself holds is taken. */
export type CrossCheckOptions = { readonly firm?: FirmLimits; readonly maker?: MakerData };

const optionsOf = ({ handbook }: Report): CrossCheckOptions => ({
  firm: handbook?.limits,
  maker: handbook?.maker?.data,
});

const referenceTo = ({ side, item, position }: Found): EntryReference => ({ side, item, position });

const isSamePlace = (one: Found | undefined, other: Found | undefined): boolean =>
  one === other ||
  (one !== undefined &&
    other !== undefined &&
    one.side === other.side &&
    one.position === other.position &&
    one.item === other.item);

const claimed = ({ claim }: Prepared): Found | undefined => (typeof claim === "function" ? undefined : claim);

/** One rule's inputs with the same claim and places read are one check. Views list reads in one order. */
const isSameCheck = (one: Prepared, other: Prepared): boolean =>
  one.reads.length === other.reads.length &&
  isSamePlace(claimed(one), claimed(other)) &&
  one.reads.every((read, index) => isSamePlace(read, other.reads[index]));

/** What a break makes bad: as the rule says, else what was read where nobody claimed anything. */
const badOf = ({ bad, claim, reads }: Prepared, result: RuleResult): readonly Found[] => {
  if (result.verdict !== "breaks") return [];
  if (bad !== undefined) return bad(result);
  return claim === undefined ? reads : [];
};

const runCheck = (rule: HandbookRule, prepared: Prepared): CrossCheck => {
  const result = prepared.run();
  const claim = typeof prepared.claim === "function" ? prepared.claim(result) : prepared.claim;
  const { over, strength } = rule;
  const decided = claim !== undefined && strength === "contradicts" && result.verdict !== "cannot-tell";
  return {
    ...result,
    over,
    strength,
    reads: prepared.reads.map(referenceTo),
    claim: claim === undefined ? null : referenceTo(claim),
    bad: badOf(prepared, result).map(referenceTo),
    decides: decided ? [referenceTo(claim)] : [],
  };
};

const factOf = ({ reads }: CrossCheck): string => `${reads[0]?.item} ${reads[0]?.position}`;

const rank = ({ severity }: CrossCheck): number =>
  severity === null ? SEVERITIES.length : severityRank(severity);

/** The gravest of what stays undecided; of two as grave the later one, which reads both reports. */
const gravest = (undecided: readonly CrossCheck[]): CrossCheck[] => {
  const [first] = undecided.toReversed().toSorted((one, other) => rank(one) - rank(other));
  return first === undefined ? [] : [first];
};

/** Of checks about one place: of those that answer the same the last; what cannot be told gives way to what can. */
const lastOfEach = (same: readonly CrossCheck[]): readonly CrossCheck[] => {
  if (same.length === 1) return same;
  const decided = same.filter(({ verdict }) => verdict !== "cannot-tell");
  if (decided.length === 0) return gravest(same);
  return [...new Map(decided.map((check) => [`${check.reason} ${check.claim?.item}`, check])).values()];
};

/**
 * One rule and one fact is one line, whoever's readings agree: of checks that answer the same about one place the last stands,
 * which tests one's claim by the other's readings; what cannot be told gives way to what can.
 */
const onePerFact = (checks: CrossCheck[]): CrossCheck[] =>
  checks.length < 2 ? checks : [...Map.groupBy(checks, factOf).values()].flatMap(lastOfEach);

/** A rule's inputs in all views, each set of findings read and claim tested once: a view that finds nothing of its own repeats another. */
const preparedOnce = (rule: HandbookRule, views: readonly View[]): readonly Prepared[] => {
  let once: Prepared[] | undefined;
  for (const view of views) {
    for (const prepared of rule.prepare(view)) {
      if (once === undefined) once = [prepared];
      else if (!once.some((known) => isSameCheck(known, prepared))) once.push(prepared);
    }
  }
  return once ?? [];
};

/** Every rule whose inputs are there. */
const runViews = (own: readonly View[], across: readonly View[]): CrossCheck[] => {
  const all = [...own, ...across];
  const found: CrossCheck[] = [];
  for (const rule of rules) {
    const prepared = preparedOnce(rule, rule.over === "one-report" ? own : all);
    if (prepared.length === 0) continue;
    const checks = prepared.map((inputs) => runCheck(rule, inputs));
    for (const check of across.length === 0 ? checks : onePerFact(checks)) found.push(check);
  }
  return found;
};

const viewMaker = (
  sheet: CompiledSheet,
  reports: View["reports"],
  { firm = {}, maker = {} }: CrossCheckOptions,
) => {
  const known = { a: nothingKnown(), b: nothingKnown() };
  return (claims: Side, readings: readonly Side[]): View => ({
    sheet,
    reports,
    firm,
    maker,
    claims,
    readings,
    known,
  });
};

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
  const checks = runViews([view("a", ["a"]), view("b", ["b"])], [view("a", ["b", "a"])]);
  return oneFact(withSecondReadings(checks, { a, b }, sheet));
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
