import type { ComparedReport, Comparison, Entry, ReadingFigures } from "@evenhand/shared/comparison";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { ReportHandbook } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { crossChecks } from "@evenhand/handbook/cross-checks";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { applyRules } from "../apply-rules/index.ts";
import type { FirstLine } from "../apply-rules/index.ts";
import { agreementOf } from "../agreement/index.ts";
import { biasOf } from "../bias/index.ts";
import { chanceOf, qValuesOf } from "../chance/index.ts";
import { compareByPlace } from "../compare/index.ts";
import type { CompareOptions, Lines } from "../compare/index.ts";
import { weighByScatter } from "../declared-scatter/index.ts";
import { coverageCounter, lookOver } from "../coverage/index.ts";
import { ENGINE } from "../engine/index.ts";
import { findingOf } from "../finding-of/index.ts";
import { likeReadings } from "../like-readings/index.ts";
import { costsOf, expectedLoss } from "../expected-loss/index.ts";
import { order } from "../order/index.ts";
import { repeatsOfSide } from "../repeats/index.ts";
import { settlerOf } from "../readings-to-settle/index.ts";
import type { Settler } from "../readings-to-settle/index.ts";
import { findSharing } from "../sharing/index.ts";
import { softnessCounter } from "../softness/index.ts";
import { tallyOf } from "../tally/index.ts";
import { writtenSteps } from "../written-steps/index.ts";
import { dayToDayOf } from "../use-allowed/index.ts";
import { visitTimes } from "../visit-times/index.ts";

export type AnalyzeOptions = CompareOptions & {
  /** The table discrepancies are ordered by; without one they go by severity alone. */
  readonly costs?: CostTable;
  /** SHA-256 of the sealed reports. */
  readonly seals?: { readonly a: string | null; readonly b: string | null };
};

const compared = (report: Report, seal: string | null): ComparedReport => ({
  kind: report.kind,
  organization: report.author.organization,
  seal,
  started: report.visit.started,
});

const figuresOf = ({ limits, maker }: ReportHandbook): NonNullable<Comparison["handbook"]> => ({
  side: "b",
  limits,
  makerSource: maker?.source ?? null,
});

/** The tables that the inspectors' readings were set against, whether or not they spoke of one. */
const historyOf = (a: Report, b: Report, { history }: CompareOptions): Pick<Comparison, "history"> => {
  const ofA = a.author.role === "inspector" ? history?.a?.hash : undefined;
  const ofB = b.author.role === "inspector" ? history?.b?.hash : undefined;
  if (ofA === undefined && ofB === undefined) return {};
  return {
    history: {
      ...(ofA === undefined ? {} : { a: ofA }),
      ...(ofB === undefined ? {} : { b: ofB }),
    },
  };
};

const linesAt = (entries: readonly Entry[], indexes: readonly number[]): Entry[] => {
  const lines: Entry[] = [];
  for (const index of indexes) {
    const entry = entries[index];
    if (entry !== undefined) lines.push(entry);
  }
  return lines;
};

/** Both in one look at every place, for looking at them is most of the work. */
const coverageAndSoftness = (
  lines: Lines,
  entries: readonly Entry[],
  { a, b, sheet }: { readonly a: Report; readonly b: Report; readonly sheet: CompiledSheet },
): Pick<Comparison, "coverage" | "softness"> => {
  const covered = coverageCounter(sheet);
  const soft = softnessCounter(a, b);
  lookOver(lines, entries, a, b, (seen) => {
    covered.count(seen);
    soft.count(seen);
  });
  return { coverage: covered.coverage(), softness: soft.softness(entries) };
};

const firstLineOf =
  ({ firstOfItem }: Lines, { items }: CompiledSheet): FirstLine =>
  (item) =>
    firstOfItem[items.get(item)?.order ?? -1] ?? -1;

/** How far a reading may rightly have moved between the two looks, as the comparison allowed it. */
const driftAllowed =
  (a: Report, b: Report, { items }: CompiledSheet) =>
  ({ item: id, finding }: Entry, figures: ReadingFigures): number => {
    const item = items.get(id)?.item;
    const [stated, found] = [findingOf(a.findings, finding.a), findingOf(b.findings, finding.b)];
    if (item?.reading === undefined || item.time !== "drifts" || stated === undefined || found === undefined)
      return 0;
    return visitTimes(stated, a, found, b).differentDays ? dayToDayOf(item.reading, figures) : 0;
  };

/** q-values and readings to settle, into figures that this analysis alone holds. */
const completeFigures = (entries: readonly Entry[], settle: Settler) => {
  const qValues = qValuesOf(entries);
  let next = 0;
  for (const entry of entries) {
    const { figures } = entry;
    if (figures?.of !== "reading") continue;
    figures.qValue = qValues[next] ?? null;
    next += 1;
    const readings = settle(entry);
    if (readings !== undefined) figures.settle = readings;
  }
};

/**
 * The whole comparison of two reports as a document: outcomes, the handbook's rules over both, coverage, how soft both
 * are, agreement and bias, what chance would give, how far both people scatter, and the discrepancies in order. A pure function: the same
 * reports, sheet and tables give the same bytes.
 *
 * @param a what was stated; `checkReport` accepted it
 * @param b what was found
 * @throws {RangeError} when a finding's place is not on the sheet
 * @example analyze(statement, inspection, compileSheet(sheetVersion1)).tally.differ
 */
export const analyze = (
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  options: AnalyzeOptions = {},
): Comparison => {
  const lines = compareByPlace(a, b, sheet, options);
  const { entries: found, measured: withFigures, corrected } = lines;
  const [takenA, takenB] = [corrected.a?.taken ?? a, corrected.b?.taken ?? b];
  const checks = crossChecks(takenA, takenB, sheet);
  const settle = settlerOf(a, b, sheet, findSharing(a, b, options), {
    a: corrected.a?.correctionOf,
    b: corrected.b?.correctionOf,
  });
  completeFigures(linesAt(found, withFigures), settle);
  const ruled = applyRules(found, checks, sheet, firstLineOf(lines, sheet));
  const { entries, scatter } = weighByScatter(ruled, sheet, withFigures);
  const measured = linesAt(entries, withFigures);
  const known = coverageAndSoftness(lines, entries, { a, b, sheet });
  const costs = costsOf(options.costs);
  const steps = { a: writtenSteps(a), b: writtenSteps(b) };
  const alike = likeReadings(measured, a, b, sheet, steps);
  const { make, model, modelYear, identification } = a.vehicle;
  return {
    format: "evenhand-comparison",
    version: 1,
    engine: ENGINE,
    sheet: { id: sheet.sheet.id, version: sheet.sheet.version },
    vehicle: { make, model, modelYear, identification },
    a: compared(a, options.seals?.a ?? null),
    b: compared(b, options.seals?.b ?? null),
    entries,
    order: order(entries, (entry) => expectedLoss(entry, costs, sheet, b)),
    crossChecks: checks,
    ...(b.handbook === undefined ? {} : { handbook: figuresOf(b.handbook) }),
    ...historyOf(a, b, options),
    ...tallyOf(entries),
    ...known,
    agreement: agreementOf(measured, b),
    bias: biasOf(measured, sheet),
    chance: chanceOf(measured, driftAllowed(a, b, sheet)),
    scatter,
    repeats: { a: repeatsOfSide(a, sheet, steps.a), b: repeatsOfSide(b, sheet, steps.b) },
    ...(alike === undefined ? {} : { likeReadings: alike }),
  };
};
