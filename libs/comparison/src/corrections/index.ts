import type { Correction, CorrectionPart } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { GaugeOffset, HistoryTable, InspectorLean } from "@evenhand/shared/history";
import type { Sha256 } from "@evenhand/shared/identifier";
import type { Report } from "@evenhand/shared/report";
import type { Item, ReadingSpec } from "@evenhand/shared/sheet";
import { rectangular } from "@evenhand/measurement/type-b";
import { convert, convertDifference, dimensionOf } from "@evenhand/measurement/unit";
import { readSide, sideEstimate, toleranceAt } from "@evenhand/sheet/reading-side";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";

/** What past pairs tell of whoever made a report: a sealed table, its hash, and which of the inspectors in it this one is. */
export type KnownReader = {
  readonly table: HistoryTable;
  readonly hash: Sha256;
  readonly inspector: string;
};

/** What is to be taken off a finding's reading; `undefined` where nothing is known of how it was read. */
export type CorrectionOf = (finding: Finding) => Correction | undefined;

/** A report with its readings as they are taken: what calls and rules judge. */
export type Corrected = { readonly taken: Report; readonly correctionOf: CorrectionOf };

/** An offset of a gauge, read on a check standard on the visit. */
type Checked = {
  readonly unit: ReadingSpec["unit"];
  readonly effect: number;
  readonly standardError: number;
};

/** So many times its ordinary accuracy off, a gauge is broken or a figure is a slip: nothing is corrected by it. Common practice, no source. */
const MOST_OFF = 5;

const CHECKS = new WeakMap<CompiledSheet, ReadonlyMap<string, Item>>();

const checksOf = (sheet: CompiledSheet): ReadonlyMap<string, Item> => {
  const known = CHECKS.get(sheet);
  if (known !== undefined) return known;
  const checks = new Map(
    sheet.sheet.items.filter((item) => item.checkStandard !== undefined).map((item) => [item.id, item]),
  );
  CHECKS.set(sheet, checks);
  return checks;
};

/**
 * The reading less what the standard is, with the uncertainty of both: of the reading without the gauge's own accuracy, since that is what
 * is measured here.
 */
const checkedOf = (
  finding: Finding,
  item: Item,
  report: Report,
  { sheet }: CompiledSheet,
): Checked | undefined => {
  const { reading: spec, checkStandard: standard } = item;
  const { answer, conditions } = finding;
  if (spec === undefined || standard === undefined || answer.kind !== "reading") return undefined;
  const stated = conditions?.[standard.nominal];
  if (typeof stated !== "number") return undefined;
  const { unit = spec.unit } = sheet.conditions.find(({ id }) => id === standard.nominal) ?? {};
  const nominal = convert(stated, unit, spec.unit);
  const gauge = report.instruments.find(({ id }) => id === finding.instrument);
  const { value, standardUncertainty } = sideEstimate(readSide(answer, spec, gauge), false);
  const ordinary = toleranceAt(spec.instrument.accuracy, nominal);
  if (Math.abs(value - nominal) > MOST_OFF * ordinary) return undefined;
  return {
    unit: spec.unit,
    effect: value - nominal,
    standardError: Math.hypot(standardUncertainty, rectangular(toleranceAt(standard.accuracy, nominal))),
  };
};

/** Offsets by gauge and dimension, of the gauges that were read on a standard. */
const checkedGauges = (report: Report, sheet: CompiledSheet): ReadonlyMap<string, Checked> => {
  const checks = checksOf(sheet);
  const gauges = new Map<string, Checked>();
  if (checks.size === 0) return gauges;
  for (const finding of report.findings) {
    // Most findings name no gauge, and need not be looked up.
    if (finding.instrument === undefined) continue;
    const item = checks.get(finding.item);
    if (item === undefined) continue;
    const checked = checkedOf(finding, item, report, sheet);
    if (checked !== undefined) gauges.set(`${finding.instrument} ${dimensionOf(checked.unit)}`, checked);
  }
  return gauges;
};

const byCheck = (checked: Checked, unit: ReadingSpec["unit"]): CorrectionPart => ({
  of: "check-standard",
  effect: convertDifference(checked.effect, checked.unit, unit),
  standardError: convertDifference(checked.standardError, checked.unit, unit),
});

const ofPast = (
  of: "inspector" | "gauge",
  { effect, standardError, pairs }: InspectorLean | GaugeOffset,
): CorrectionPart => ({ of, effect, standardError, pairs });

const isOf = (spec: ReadingSpec) => (learned: InspectorLean | GaugeOffset) =>
  learned.kind === spec.instrument.name && learned.unit === spec.unit;

/** Lean and offset as one. Their errors are taken as independent: they are not, but lean and offset of one hand err against each other. */
const summed = (parts: readonly CorrectionPart[]): Correction => ({
  effect: parts.reduce((sum, { effect }) => sum + effect, 0),
  standardError: Math.hypot(...parts.map(({ standardError }) => standardError)),
  parts: [...parts],
});

const partsFor = (
  finding: Finding,
  spec: ReadingSpec,
  report: Report,
  checked: ReadonlyMap<string, Checked>,
  known: KnownReader | undefined,
): CorrectionPart[] => {
  const gauge = report.instruments.find(({ id }) => id === finding.instrument);
  if (gauge === undefined) return [];
  const isKind = isOf(spec);
  const lean = known?.table.leans.find((one) => one.inspector === known.inspector && isKind(one));
  const check = checked.get(`${gauge.id} ${dimensionOf(spec.unit)}`);
  const calibrated = gauge.calibrated ?? null;
  const offset = known?.table.gauges.find(
    (one) => one.gauge === gauge.id && one.calibrated === calibrated && isKind(one),
  );
  return [
    ...(lean === undefined ? [] : [ofPast("inspector", lean)]),
    // What was read on a standard today says more of the gauge than what it did before.
    ...(check !== undefined
      ? [byCheck(check, spec.unit)]
      : offset === undefined
        ? []
        : [ofPast("gauge", offset)]),
  ];
};

const shifted = (finding: Finding, spec: ReadingSpec, { effect }: Correction): Finding => {
  const { answer } = finding;
  if (answer.kind !== "reading") return finding;
  const by = convertDifference(effect, spec.unit, answer.unit);
  return {
    ...finding,
    answer: { ...answer, values: answer.values.map((one) => ({ ...one, value: one.value - by })) },
  };
};

/**
 * What is to be taken off the readings of a report, and the report as it then stands: leans and offsets that past pairs tell, and offsets
 * that a gauge showed on a check standard on the visit, which go before those (JCGM 100:2008, 3.2.3). Only an inspector's report: what a
 * dealer's readings are off by is the claim, whatever the dealer says of the gauge.
 *
 * @param known what past pairs tell of the inspector; `undefined` where nothing
 * @returns `undefined` where every reading stands as it was read
 * @example correct(inspection, sheet, { table, hash, inspector })?.correctionOf(treadFinding) // { effect: 0.3, standardError: 0.1, … }
 */
export const correct = (report: Report, sheet: CompiledSheet, known?: KnownReader): Corrected | undefined => {
  if (report.author.role !== "inspector") return undefined;
  const checked = checkedGauges(report, sheet);
  const hasTable = known !== undefined && known.table.leans.length + known.table.gauges.length > 0;
  if (checked.size === 0 && !hasTable) return undefined;
  const corrections = new Map<string, Correction>();
  const findings = report.findings.map((finding) => {
    const item = sheet.items.get(finding.item)?.item;
    if (
      item?.reading === undefined ||
      item.checkStandard !== undefined ||
      finding.answer.kind !== "reading"
    ) {
      return finding;
    }
    const parts = partsFor(finding, item.reading, report, checked, known);
    if (parts.length === 0) return finding;
    const correction = summed(parts);
    corrections.set(`${finding.item} ${finding.position}`, correction);
    return shifted(finding, item.reading, correction);
  });
  if (corrections.size === 0) return undefined;
  return {
    taken: { ...report, findings },
    correctionOf: ({ item, position }) => corrections.get(`${item} ${position}`),
  };
};
