import type { ReadingValue } from "@evenhand/shared/answer";
import type { RepeatsOfSide } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import type { Spread } from "@evenhand/measurement/f-test";
import { pooledRepeats } from "@evenhand/measurement/pooled-repeats";
import type { Repeats } from "@evenhand/measurement/pooled-repeats";
import { mean } from "@evenhand/measurement/type-a";
import { convert, convertDifference, dimensionOf } from "@evenhand/measurement/unit";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { readSide, repeatabilityAt } from "@evenhand/sheet/reading-side";
import { writtenSteps } from "../written-steps/index.ts";
import type { WrittenSteps } from "../written-steps/index.ts";

/** Readings of one spot, in the item's unit: those that name it, or all where the item is read at one spot and none is named. */
const sameSpots = (values: readonly ReadingValue[], { ask }: ReadingSpec): (readonly ReadingValue[])[] => {
  const isNamed = values.some(({ spot }) => spot !== undefined);
  if (!isNamed) return ask.spots > 1 ? [] : [values];
  return [...Map.groupBy(values, ({ spot }) => spot)].flatMap(([spot, group]) =>
    spot === undefined ? [] : [group],
  );
};

/** s and ν of repeats within their spots, pooled. */
const spreadWithin = (spots: readonly (readonly number[])[]): Spread => {
  let [squares, degreesOfFreedom] = [0, 0];
  for (const values of spots) {
    const center = mean(values);
    for (const value of values) squares += (value - center) ** 2;
    degreesOfFreedom += values.length - 1;
  }
  return {
    standardDeviation: degreesOfFreedom === 0 ? 0 : Math.sqrt(squares / degreesOfFreedom),
    degreesOfFreedom,
  };
};

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
  const side = readSide(answer, spec, used);
  const seen = spreadWithin(
    sameSpots(answer.values, spec).map((spot) =>
      spot.map(({ value }) => convert(value, answer.unit, spec.unit)),
    ),
  );
  const repeats = {
    seen,
    repeatability: repeatabilityAt(spec, side.mean),
    // Whoever rounds more coarsely than the gauge reads as coarsely as they round.
    resolution: Math.max(side.resolution, convertDifference(step, answer.unit, spec.unit)),
    placement: spec.placement,
  };
  return seen.degreesOfFreedom > 0 && repeats.resolution <= repeats.repeatability ? repeats : undefined;
};

/** What of a report is repeats: most findings are no reading. */
const allRepeats = (report: Report, sheet: CompiledSheet, steps: WrittenSteps): PlacedRepeats[] => {
  const all: PlacedRepeats[] = [];
  for (const finding of report.findings) {
    if (finding.answer.kind !== "reading") continue;
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
