import type { AnswerOf } from "@evenhand/shared/answer";
import type { RepeatsOfSide } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { Spread } from "@evenhand/measurement/f-test";
import { pooledRepeats } from "@evenhand/measurement/pooled-repeats";
import type { Repeats } from "@evenhand/measurement/pooled-repeats";
import { convert, convertDifference, dimensionOf } from "@evenhand/measurement/unit";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { movingSide, readSideInto, repeatabilityAt } from "@evenhand/sheet/reading-side";
import { writtenSteps } from "../written-steps/index.ts";
import type { WrittenSteps } from "../written-steps/index.ts";

type Reading = AnswerOf<"reading">;

const isAnyNamed = ({ values }: Reading): boolean => {
  for (let index = 0; index < values.length; index += 1) if (values[index]?.spot !== undefined) return true;
  return false;
};

/** Whether no value before it is of the same spot. */
const isFirstOfSpot = ({ values }: Reading, at: number): boolean => {
  for (let index = 0; index < at; index += 1) if (values[index]?.spot === values[at]?.spot) return false;
  return true;
};

/** Σ (value − mean)² within spots. */
type Within = { squares: number; degreesOfFreedom: number };

/** Adds the values of one spot, in the item's unit, of which the first is given. */
const addSpot = (within: Within, { values, unit: from }: Reading, first: number, unit: UnitSymbol): void => {
  const spot = values[first]?.spot;
  let [sum, count] = [0, 0];
  for (let index = first; index < values.length; index += 1) {
    const read = values[index];
    if (read === undefined || read.spot !== spot) continue;
    sum += convert(read.value, from, unit);
    count += 1;
  }
  const center = sum / count;
  for (let index = first; index < values.length; index += 1) {
    const read = values[index];
    if (read === undefined || read.spot !== spot) continue;
    within.squares += (convert(read.value, from, unit) - center) ** 2;
  }
  within.degreesOfFreedom += count - 1;
};

/**
 * s and ν of repeats within their spots, pooled, in the item's unit: of the spots that are named, or of all values where the item is read
 * at one spot and none is named.
 */
const spreadWithin = (answer: Reading, { ask, unit }: ReadingSpec): Spread => {
  const isNamed = isAnyNamed(answer);
  const within: Within = { squares: 0, degreesOfFreedom: 0 };
  if (isNamed || ask.spots <= 1) {
    for (let at = 0; at < answer.values.length; at += 1) {
      const isOfSpot = !isNamed || answer.values[at]?.spot !== undefined;
      if (isOfSpot && isFirstOfSpot(answer, at)) addSpot(within, answer, at, unit);
    }
  }
  const { squares, degreesOfFreedom } = within;
  return {
    standardDeviation: degreesOfFreedom === 0 ? 0 : Math.sqrt(squares / degreesOfFreedom),
    degreesOfFreedom,
  };
};

/** Moved over all the readings of a report; nobody keeps it. */
const SIDE = movingSide();

type PlacedRepeats = Repeats & { readonly placement: number };

/** The repeats of one finding with the placement of its item; `undefined` where they are none, or an eye's, which has no repeatability. */
const repeatsOf = (
  { answer, instrument }: Finding,
  spec: ReadingSpec,
  report: Report,
  step: number,
): PlacedRepeats | undefined => {
  if (answer.kind !== "reading" || answer.values.length < 2 || instrument === undefined) return undefined;
  if (spec.repeatability.over === "spots" || dimensionOf(answer.unit) !== dimensionOf(spec.unit))
    return undefined;
  const used = report.instruments.find(({ id }) => id === instrument);
  const side = readSideInto(SIDE, answer, spec, used);
  const seen = spreadWithin(answer, spec);
  const repeatability = repeatabilityAt(spec, side.mean);
  // Whoever rounds more coarsely than the gauge reads as coarsely as they round.
  const resolution = Math.max(side.resolution, convertDifference(step, answer.unit, spec.unit));
  return seen.degreesOfFreedom > 0 && resolution <= repeatability
    ? { seen, repeatability, resolution, placement: spec.placement }
    : undefined;
};

/** What of a report is repeats: most findings are no reading. */
const allRepeats = (report: Report, sheet: CompiledSheet, steps: WrittenSteps): PlacedRepeats[] => {
  const all: PlacedRepeats[] = [];
  const { findings } = report;
  // By index: walked otherwise, a list of many shapes makes garbage with every finding.
  for (let index = 0; index < findings.length; index += 1) {
    const finding = findings[index];
    if (finding?.answer.kind !== "reading" || finding.answer.values.length < 2) continue;
    const spec = sheet.items.get(finding.item)?.item.reading;
    const repeats = spec === undefined ? undefined : repeatsOf(finding, spec, report, steps(finding));
    if (repeats !== undefined) all.push(repeats);
  }
  return all;
};

/**
 * Whether the repeats of one report, all together, scatter as the sheet says such readings do. Only repeats at one spot with a named
 * instrument count: what lies apart from spot to spot is the car's, and an eye does not read twice. "Too alike" is measured against
 * s₀ alone, "scatters more" against s₀ and placement, for a gauge may or may not be set down anew.
 *
 * @example repeatsOfSide(statement, sheet).found // "as-declared"
 */
export const repeatsOfSide = (
  report: Report,
  sheet: CompiledSheet,
  steps: WrittenSteps = writtenSteps(report),
): RepeatsOfSide => {
  const all = allRepeats(report, sheet, steps);
  const alike = pooledRepeats(all);
  const { degreesOfFreedom } = alike;
  if (alike.kind === "tooFew") return { found: "too-few", places: all.length, degreesOfFreedom };
  const { ratio, chanceOfLess } = alike;
  const counted = { places: all.length, degreesOfFreedom };
  if (alike.kind === "tooAlike") return { ...counted, found: "too-alike", ratio, chance: chanceOfLess };
  if (ratio <= 1) return { ...counted, found: "as-declared", ratio };
  const placed = all.map((one) => ({ ...one, repeatability: Math.hypot(one.repeatability, one.placement) }));
  const more = pooledRepeats(placed);
  return more.kind === "scattersMore"
    ? { ...counted, found: "scatters-more", ratio: more.ratio, chance: more.chanceOfMore }
    : { ...counted, found: "as-declared", ratio };
};
