import type { AnswerOf } from "@evenhand/shared/answer";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { mean, sampleStandardDeviation } from "@evenhand/measurement/type-a";
import { rectangular, resolution } from "@evenhand/measurement/type-b";
import { convert } from "@evenhand/measurement/unit";
import { repeatabilityAt, toleranceAt } from "../reading-side/index.ts";
import type { ReadingSide } from "../reading-side/index.ts";

/** Worse than so many times what is ordinary counts as soft, on either side: the design's own figure, no source. */
const SOFT_FROM = 3;
/** Exactly three times is not soft, in whatever unit it was written. */
const ROUNDING = 1e-9;

type Shown = { readonly resolution: number; readonly accuracy: number };

const uncertaintyOf = ({ resolution: step, accuracy }: Shown): number =>
  Math.hypot(resolution(step), rectangular(accuracy));

const ordinaryOf = ({ instrument }: ReadingSpec, size: number): Shown => ({
  resolution: instrument.resolution,
  accuracy: toleranceAt(instrument.accuracy, size),
});

/** No worse than the ordinary one in either, as nearly all are: three times need not be worked out. */
const isOrdinary = (side: ReadingSide, { instrument }: ReadingSpec): boolean =>
  side.resolution <= instrument.resolution && side.accuracy <= toleranceAt(instrument.accuracy, side.mean);

/** What an instrument's uncertainty may be before it is soft. */
const mostOf = (spec: ReadingSpec, size: number): number => SOFT_FROM * uncertaintyOf(ordinaryOf(spec, size));

/**
 * Whether a named instrument is worse than three times the item's ordinary one, by resolution and accuracy together. The eye and an
 * instrument that nobody named are the sheet's own, and counted by themselves.
 *
 * @example isSoftInstrument(readSide(answer, treadSpec, { id: "x", name: "x", accuracy: { share: 1 } }), treadSpec) // true
 */
export const isSoftInstrument = (side: ReadingSide, spec: ReadingSpec): boolean =>
  !side.byEye &&
  !side.unnamed &&
  !isOrdinary(side, spec) &&
  uncertaintyOf(side) > mostOf(spec, side.mean) * (1 + ROUNDING);

/**
 * Whether repeats of one reading lie farther apart than three times its ordinary scatter. Readings at named spots may rightly differ.
 *
 * @example isScattered({ kind: "reading", unit: "psi", values: [{ value: 100 }, { value: 140 }] }, compressionSpec) // true
 */
export const isScattered = ({ values, unit }: AnswerOf<"reading">, spec: ReadingSpec): boolean => {
  if (values.length < 2) return false;
  const read: number[] = [];
  for (let index = 0; index < values.length; index += 1) {
    const { value = Number.NaN, spot } = values[index] ?? {};
    if (spot !== undefined) return false;
    read.push(convert(value, unit, spec.unit));
  }
  const placement = spec.repeatability.over === "spots" ? 0 : spec.placement;
  const ordinary = Math.hypot(repeatabilityAt(spec, mean(read)), placement);
  return sampleStandardDeviation(read) > SOFT_FROM * ordinary * (1 + ROUNDING);
};

/**
 * The same reading, its instrument and its scatter taken for no worse than three times the ordinary ones: what a difference has to be
 * explained by where somebody named worse, or read so that two readings lie far apart. The side itself where it is no worse.
 *
 * @example firmSide(sideWithAnythingGoes, treadSpec).accuracy // three times the ordinary gauge's
 */
export const firmSide = (side: ReadingSide, spec: ReadingSpec): ReadingSide => {
  const soft = isSoftInstrument(side, spec);
  const most = SOFT_FROM * repeatabilityAt(spec, side.mean);
  const scattered = side.scatter > most * (1 + ROUNDING);
  if (!soft && !scattered) return side;
  const part = soft ? mostOf(spec, side.mean) / uncertaintyOf(side) : 1;
  const instrument = { resolution: part * side.resolution, accuracy: part * side.accuracy };
  const { degreesOfFreedom } = spec.repeatability;
  const scatter = scattered ? { scatter: most, scatterDegreesOfFreedom: degreesOfFreedom } : {};
  return { ...side, ...instrument, ...scatter };
};
