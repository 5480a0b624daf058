import type { AnswerOf } from "@evenhand/shared/answer";
import type { Entry, LikeReadings } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { poissonBinomialTail } from "@evenhand/measurement/poisson-binomial";
import { roundsAlike } from "@evenhand/measurement/rounds-alike";
import { convert, convertDifference, dimensionOf } from "@evenhand/measurement/unit";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { resolutionOf } from "@evenhand/sheet/reading-side";
import { findingOf } from "../finding-of/index.ts";
import { writtenSteps } from "../written-steps/index.ts";
import type { WrittenSteps } from "../written-steps/index.ts";

type Reading = AnswerOf<"reading">;

/** The chance of a false alarm, and how many readings must be the same before anybody asks. */
const SIGNIFICANCE = 0.001;
const LEAST = 5;

type Written = {
  readonly finding: Finding;
  readonly answer: Reading;
  /** r, or the step it was written in where that is coarser; base unit. */
  readonly step: number;
};

type Pair = {
  readonly a: Written;
  readonly b: Written;
  readonly spec: ReadingSpec;
  /** How large the reading is, for what of s₀ is a share of it; base unit. */
  readonly size: number;
};

const inOrder = ({ values, unit }: Reading, spec: ReadingSpec): number[] => {
  const converted = values.map(({ value }) => convert(value, unit, spec.unit));
  return converted.length < 2 ? converted : converted.sort((one, other) => one - other);
};

/** The least value of a reading, in the item's unit. */
const leastOf = ({ values, unit }: Reading, spec: ReadingSpec): number => {
  let least = Number.POSITIVE_INFINITY;
  for (let at = 0; at < values.length; at += 1)
    least = Math.min(least, convert(values[at]?.value ?? Number.NaN, unit, spec.unit));
  return least;
};

/** The greatest value of a reading, in the item's unit. */
const greatestOf = ({ values, unit }: Reading, spec: ReadingSpec): number => {
  let greatest = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < values.length; at += 1)
    greatest = Math.max(greatest, convert(values[at]?.value ?? Number.NaN, unit, spec.unit));
  return greatest;
};

/** The same values, whatever their order and unit: those that tell are equally many, and few have even the least in common. */
const isSame = ({ a, b, spec }: Pair): boolean => {
  const [least, greatest] = [leastOf(a.answer, spec), greatestOf(a.answer, spec)];
  const nothing = 1e-9 * Math.max(1e-12, spec.delta.absolute, Math.abs(least), Math.abs(greatest));
  if (Math.abs(least - leastOf(b.answer, spec)) > nothing) return false;
  if (Math.abs(greatest - greatestOf(b.answer, spec)) > nothing) return false;
  const [one, other] = [inOrder(a.answer, spec), inOrder(b.answer, spec)];
  return one.every((value, at) => Math.abs(value - (other[at] ?? 0)) <= nothing);
};

/**
 * At most how often two people who each read it write the same: as if the car had not changed, both gauges were exact, and only
 * repeatability and placement parted them.
 */
const chanceOfSame = ({ a, b, spec, size }: Pair): number => {
  const { value, share } = spec.repeatability;
  const ofRepeats = (value ** 2 + (share * size) ** 2) / a.answer.values.length;
  const u = Math.sqrt(2 * (ofRepeats + spec.placement ** 2));
  return roundsAlike(Math.max(a.step, b.step), u);
};

const isSpotted = ({ values }: Reading): boolean => {
  for (let at = 0; at < values.length; at += 1) if (values[at]?.spot !== undefined) return true;
  return false;
};

/** Spread over spots that both name is the car's, and says nothing of how alike two people read one spot. */
const isTelling = ({ a, b, spec }: Pair): boolean =>
  a.answer.values.length === b.answer.values.length &&
  !(spec.repeatability.over === "spots" && (isSpotted(a.answer) || isSpotted(b.answer)));

const reader = (report: Report, steps: WrittenSteps) => {
  const instruments = new Map(report.instruments.map((instrument) => [instrument.id, instrument]));
  return (at: number | null, spec: ReadingSpec): Written | undefined => {
    const finding = findingOf(report.findings, at);
    if (finding?.answer.kind !== "reading" || dimensionOf(finding.answer.unit) !== dimensionOf(spec.unit)) {
      return undefined;
    }
    const { answer } = finding;
    const instrument = instruments.get(finding.instrument ?? "");
    const resolution = resolutionOf(spec, instrument, instrument === undefined && spec.eyesRead === true);
    const step = steps(finding);
    const written =
      step === Number.POSITIVE_INFINITY ? step : convertDifference(step, answer.unit, spec.unit);
    return { finding, answer, step: Math.max(resolution, written) };
  };
};

type Steps = { readonly a: WrittenSteps; readonly b: WrittenSteps };

const pairsOf = (
  entries: readonly Entry[],
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  steps: Steps,
): Pair[] => {
  const [readA, readB] = [reader(a, steps.a), reader(b, steps.b)];
  const pairs: Pair[] = [];
  for (let index = 0; index < entries.length; index += 1) {
    const entry = entries[index];
    if (entry?.figures?.of !== "reading" || entry.atom.of !== "answer") continue;
    const { finding, figures } = entry;
    const spec = sheet.items.get(entry.item)?.item.reading;
    const first = spec && readA(finding.a, spec);
    const second = spec && readB(finding.b, spec);
    if (spec === undefined || first === undefined || second === undefined) continue;
    const pair = { a: first, b: second, spec, size: figures.a.mean };
    if (isTelling(pair)) pairs.push(pair);
  }
  return pairs;
};

const laterOf = (a: Report, b: Report): LikeReadings["later"] => {
  const [first, second] = [Date.parse(a.visit.started), Date.parse(b.visit.started)];
  if (first === second) return null;
  return first < second ? "b" : "a";
};

/**
 * How many readings of two reports are the same to the last digit, and how many chance would make so: whether one may have been written
 * from the other is then a question, with its evidence. What the later side answered blind is no copy of the earlier, and is counted
 * apart. It knows these two reports and no third. A house's own reports on one car may rightly carry readings over: nothing is said.
 *
 * @returns `undefined` where one house wrote both, or no reading tells
 * @example likeReadings(entries, statement, inspection, sheet) // { compared: 61, same: 58, expected: 9.2…, chance: 1e-31, later: "b", blind: 0, … }
 */
export const likeReadings = (
  entries: readonly Entry[],
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  steps: Steps = { a: writtenSteps(a), b: writtenSteps(b) },
): LikeReadings | undefined => {
  if (a.author.organization === b.author.organization) return undefined;
  const pairs = pairsOf(entries, a, b, sheet, steps);
  if (pairs.length === 0) return undefined;
  const chances = pairs.map(chanceOfSame);
  const alike = pairs.filter(isSame);
  const later = laterOf(a, b);
  const chance = poissonBinomialTail(chances, alike.length);
  return {
    compared: pairs.length,
    same: alike.length,
    expected: chances.reduce((sum, one) => sum + one, 0),
    chance,
    moreThanChance: alike.length >= LEAST && chance < SIGNIFICANCE,
    later,
    blind: later === null ? 0 : alike.filter((pair) => pair[later].finding.blind === true).length,
  };
};
