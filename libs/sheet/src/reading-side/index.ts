import type { AnswerOf, ReadingValue } from "@evenhand/shared/answer";
import type { Instrument, Quantity } from "@evenhand/shared/report";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { Component } from "@evenhand/measurement/combine-uncertainty";
import type { Estimate } from "@evenhand/measurement/estimate";
import { fTest } from "@evenhand/measurement/f-test";
import { moderatedVariance } from "@evenhand/measurement/moderated-variance";
import { mean, sampleStandardDeviation } from "@evenhand/measurement/type-a";
import { rectangular, resolution } from "@evenhand/measurement/type-b";
import { convert, convertDifference, dimensionOf } from "@evenhand/measurement/unit";

/**
 * What one side's reading says, in the item's base unit, its uncertainty kept in parts because a part that both
 * sides share cancels in their difference and stays against a limit.
 */
export type ReadingSide = {
  /** What it is taken as: as read, less what was corrected. */
  readonly mean: number;
  /** As it was read. */
  readonly read: number;
  /** Standard uncertainty of the correction; 0 where there is none. */
  readonly correction: number;
  readonly count: number;
  readonly lowest: number;
  readonly highest: number;
  /** s̃: the item's repeatability s₀, drawn up by the scatter seen where that is larger; never under s₀. */
  readonly scatter: number;
  readonly scatterDegreesOfFreedom: number;
  /** The readings scattered more than s₀ (and placement, over several spots) accounts for. */
  readonly scatterReplaced: boolean;
  /** How many independent samples `scatter` is divided over: readings, or spots where s₀ is the spread over spots. */
  readonly samples: number;
  readonly resolution: number;
  /** a: half-width of the stated accuracy, or of the accuracy by eye. */
  readonly accuracy: number;
  readonly placement: number;
  readonly spots: number;
  /** Named spots of one place lie farther apart than chance explains: its mean stands for none of them. */
  readonly patterned: boolean;
  readonly byEye: boolean;
  /** No instrument was named where eyes cannot read it. */
  readonly unnamed: boolean;
};

type Reading = AnswerOf<"reading">;

/**
 * What ±(absolute + share) comes to for something of a size, in the same unit.
 *
 * @example toleranceAt({ absolute: 2, share: 0.03 }, 100) // 5
 */
export const toleranceAt = (
  part: { readonly absolute: number; readonly share: number },
  size: number,
): number => part.absolute + part.share * Math.abs(size);

const quantityIn = (quantity: Quantity | undefined, unit: UnitSymbol): number | undefined =>
  quantity !== undefined && dimensionOf(quantity.unit) === dimensionOf(unit)
    ? convertDifference(quantity.value, quantity.unit, unit)
    : undefined;

/** An instrument whose accuracy is not stated is held to the item's ordinary one. */
const instrumentAccuracy = (spec: ReadingSpec, { accuracy }: Instrument, size: number): number => {
  const absolute = quantityIn(accuracy?.absolute, spec.unit);
  if (accuracy === undefined || !(absolute !== undefined || accuracy.share > 0)) {
    return toleranceAt(spec.instrument.accuracy, size);
  }
  return (absolute ?? 0) + accuracy.share * Math.abs(size);
};

/** Where no instrument is named: the eye where eyes read, else the ordinary instrument at twice its stated accuracy. */
const accuracyOf = (
  spec: ReadingSpec,
  instrument: Instrument | undefined,
  size: number,
  byEye: boolean,
): number => {
  if (instrument !== undefined) return instrumentAccuracy(spec, instrument, size);
  if (byEye) return toleranceAt(spec.byEye, size);
  const ordinary = toleranceAt(spec.instrument.accuracy, size);
  return spec.instrument.readOff === true ? ordinary : 2 * ordinary;
};

/**
 * What a reading is rounded to in the item's base unit: by the instrument it was read with, by the item's ordinary one where none is
 * named, or its own is not stated; the eye has none.
 *
 * @example resolutionOf(treadSpec, undefined, false) // 0.5 (1/32 in)
 */
export const resolutionOf = (
  spec: ReadingSpec,
  instrument: Instrument | undefined,
  byEye: boolean,
): number => (byEye ? 0 : (quantityIn(instrument?.resolution, spec.unit) ?? spec.instrument.resolution));

/** Means of the readings at each named spot; a reading without a spot stands for itself. */
const spotMeans = (readings: readonly ReadingValue[], values: readonly number[]): number[] => {
  const sums = new Map<string, { sum: number; count: number }>();
  for (const [index, reading] of readings.entries()) {
    const spot = reading.spot ?? `#${index}`;
    const known = sums.get(spot) ?? { sum: 0, count: 0 };
    sums.set(spot, { sum: known.sum + (values[index] ?? 0), count: known.count + 1 });
  }
  return Array.from(sums.values(), ({ sum, count }) => sum / count);
};

const countNamedSpots = (readings: readonly ReadingValue[]): number => {
  if (readings.length === 1) return readings[0]?.spot === undefined ? 0 : 1;
  let named = 0;
  for (let index = 0; index < readings.length; index += 1) {
    const spot = readings[index]?.spot;
    let earlier = 0;
    while (earlier < index && readings[earlier]?.spot !== spot) earlier += 1;
    if (spot !== undefined && earlier === index) named += 1;
  }
  return named;
};

const inBaseUnit = ({ values, unit: from }: Reading, unit: UnitSymbol): number[] =>
  values.map(({ value }) => convert(value, from, unit));

/** The mean of the values, in the item's unit, without a list of them. */
const meanOf = ({ values, unit: from }: Reading, unit: UnitSymbol): number => {
  let sum = 0;
  for (let index = 0; index < values.length; index += 1)
    sum += convert(values[index]?.value ?? Number.NaN, from, unit);
  return sum / values.length;
};

/** Their standard deviation about it. */
const deviationOf = ({ values, unit: from }: Reading, unit: UnitSymbol, center: number): number => {
  let squares = 0;
  for (let index = 0; index < values.length; index += 1)
    squares += (convert(values[index]?.value ?? Number.NaN, from, unit) - center) ** 2;
  return Math.sqrt(squares / (values.length - 1));
};

/** The least and the greatest of the values, in the item's unit, without a list of them. */
const readExtremes = ({ values, unit: from }: Reading, unit: UnitSymbol, side: MovingSide): void => {
  side.lowest = Number.POSITIVE_INFINITY;
  side.highest = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < values.length; index += 1) {
    const value = convert(values[index]?.value ?? Number.NaN, from, unit);
    side.lowest = Math.min(side.lowest, value);
    side.highest = Math.max(side.highest, value);
  }
};

/** Where s₀ is the spread over spots, the means of spots are the samples. */
const readSpotMeans = (answer: Reading, unit: UnitSymbol, side: MovingSide): number => {
  const samples = spotMeans(answer.values, inBaseUnit(answer, unit));
  side.mean = mean(samples);
  side.samples = samples.length;
  return samples.length < 2 ? 0 : sampleStandardDeviation(samples);
};

/** Mean, samples and the scatter seen among them; one value, the most frequent case, has none. */
const readSamples = (
  answer: Reading,
  { unit, repeatability }: ReadingSpec,
  named: number,
  side: MovingSide,
): number => {
  if (answer.values.length === 1) {
    side.mean = side.lowest;
    side.samples = 1;
    return 0;
  }
  const count = answer.values.length;
  if (repeatability.over === "spots" && named > 0 && named < count) return readSpotMeans(answer, unit, side);
  side.mean = meanOf(answer, unit);
  side.samples = count;
  return deviationOf(answer, unit, side.mean);
};

/**
 * s₀ for a reading of this size: its absolute and its proportional part in quadrature.
 *
 * @example repeatabilityAt({ repeatability: { value: 3, share: 0.04, over: "repeats", degreesOfFreedom: 30 } }, 100) // 5
 */
export const repeatabilityAt = (
  { repeatability }: Pick<ReadingSpec, "repeatability">,
  size: number,
): number =>
  repeatability.share === 0
    ? repeatability.value
    : Math.hypot(repeatability.value, repeatability.share * size);

/** Whether named spots lie farther apart than s₀ and placement explain at 1 %: wear, which is no scatter. */
const isPatterned = (
  seen: number,
  samples: number,
  scatter: number,
  placement: number,
  degreesOfFreedom: number,
): boolean => {
  const expected = placement === 0 ? scatter : Math.hypot(scatter, placement);
  if (seen <= expected) return false;
  return fTest(
    { standardDeviation: seen, degreesOfFreedom: samples - 1 },
    { standardDeviation: expected, degreesOfFreedom },
  ).larger;
};

/** s̃ of readings that scatter by so much more than placement explains, in place of s₀, which the side has. */
const moderate = (side: MovingSide, seen: number, placement: number): void => {
  const { standardDeviation, degreesOfFreedom } = moderatedVariance(
    {
      standardDeviation: placement === 0 ? seen : Math.sqrt(Math.max(0, seen ** 2 - placement ** 2)),
      degreesOfFreedom: side.samples - 1,
    },
    { standardDeviation: side.scatter, degreesOfFreedom: side.scatterDegreesOfFreedom },
  );
  side.scatterReplaced = standardDeviation > side.scatter;
  side.scatter = standardDeviation;
  side.scatterDegreesOfFreedom = degreesOfFreedom;
};

/** What is to be taken off a reading, and what that may be off by, in the item's base unit. */
export type Off = { readonly effect: number; readonly standardError: number };

/** The mean and the extremes move, the uncertainty grows (JCGM 100:2008, 3.2.3). */
const takeOff = (side: MovingSide, { effect, standardError }: Off): void => {
  side.mean = side.read - effect;
  side.lowest -= effect;
  side.highest -= effect;
  side.correction = standardError;
};

/** Where a side is read into, over and over: what is made for every reading is what a comparison costs. */
export type MovingSide = { -readonly [Part in keyof ReadingSide]: ReadingSide[Part] };

/** A side that nothing was read into yet. Figures are no numbers from the start, which keeps room for fractions in them. */
export const movingSide = (): MovingSide => ({
  mean: Number.NaN,
  read: Number.NaN,
  correction: Number.NaN,
  count: 0,
  lowest: Number.NaN,
  highest: Number.NaN,
  scatter: Number.NaN,
  scatterDegreesOfFreedom: Number.NaN,
  scatterReplaced: false,
  samples: 0,
  resolution: Number.NaN,
  accuracy: Number.NaN,
  placement: Number.NaN,
  spots: 0,
  patterned: false,
  byEye: false,
  unnamed: false,
});

/**
 * Reads one side of a reading item, as `readSide` does, into a side that was made before and is good until the next reading.
 *
 * @throws {DimensionError} when the answer's unit measures something else (a checked report has none)
 * @example readSideInto(side, { kind: "reading", unit: "in", values: [{ value: 0.25 }] }, treadSpec, undefined).mean // 8 (1/32 in)
 */
export const readSideInto = (
  side: MovingSide,
  answer: Reading,
  spec: ReadingSpec,
  instrument: Instrument | undefined,
  off?: Off,
): MovingSide => {
  const count = answer.values.length;
  const named = countNamedSpots(answer.values);
  readExtremes(answer, spec.unit, side);
  const seen = readSamples(answer, spec, named, side);
  const { degreesOfFreedom } = spec.repeatability;
  const expected = repeatabilityAt(spec, side.mean);
  side.count = count;
  side.spots = named === 0 ? Math.min(count, spec.ask.spots) : named;
  side.placement = spec.repeatability.over === "spots" ? 0 : spec.placement;
  const placement = side.spots > 1 ? side.placement : 0;
  side.scatter = expected;
  side.scatterDegreesOfFreedom = degreesOfFreedom;
  side.scatterReplaced = false;
  // Values at named spots of one place may rightly differ: wear is not scatter.
  side.patterned = named > 1 && isPatterned(seen, side.samples, expected, placement, degreesOfFreedom);
  if (named <= 1 && seen > expected) moderate(side, seen, placement);
  side.byEye = instrument === undefined && spec.eyesRead === true;
  side.unnamed = instrument === undefined && !side.byEye && spec.instrument.readOff !== true;
  side.resolution = resolutionOf(spec, instrument, side.byEye);
  side.accuracy = accuracyOf(spec, instrument, side.mean, side.byEye);
  side.read = side.mean;
  side.correction = 0;
  if (off !== undefined) takeOff(side, off);
  return side;
};

/**
 * Reads one side of a reading item: u² = s̃²/n + r²/12 + a²/3 + p²/m (JCGM 100:2008, 4.2, 4.3 and F.2.2.1), in
 * parts; s̃ is s₀ moderated by the scatter seen (`moderatedVariance`). Without a named instrument the ordinary one at twice its stated accuracy (at its own where it is read off the car or its papers), or
 * the eye where eyes read, takes the place of r and a. Readings whose spots
 * are not named are taken to be at as many spots as the sheet asks for, and never at more than there are readings.
 *
 * @param instrument what the finding was read with; `undefined` where none is named
 * @param off what is to be taken off it; what was read stays in `read`
 * @returns all figures in the item's base unit
 * @throws {DimensionError} when the answer's unit measures something else (a checked report has none)
 * @example readSide({ kind: "reading", unit: "in", values: [{ value: 0.25 }] }, treadSpec, undefined).mean // 8 (1/32 in)
 */
export const readSide = (
  answer: Reading,
  spec: ReadingSpec,
  instrument: Instrument | undefined,
  off?: Off,
): ReadingSide => readSideInto(movingSide(), answer, spec, instrument, off);

/** A part taken as known: its degrees of freedom are infinite. */
const known = (standardUncertainty: number): Component => ({
  standardUncertainty,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

/**
 * The parts of a side's standard uncertainty that are not 0, each with its degrees of freedom.
 *
 * @param withAccuracy false where both sides share the instrument or the eye, whose error cancels
 */
export const uncertaintyParts = (side: ReadingSide, withAccuracy: boolean): readonly Component[] => {
  const parts: Component[] = [
    {
      standardUncertainty: side.scatter / Math.sqrt(side.samples),
      degreesOfFreedom: side.scatterDegreesOfFreedom,
    },
  ];
  if (side.resolution > 0) parts.push(known(resolution(side.resolution)));
  if (withAccuracy && side.accuracy > 0) parts.push(known(rectangular(side.accuracy)));
  if (side.placement > 0) parts.push(known(side.placement / Math.sqrt(side.spots)));
  if (side.correction > 0) parts.push(known(side.correction));
  return parts;
};

/** An estimate that is worked out over and over. */
export type MovingEstimate = { -readonly [Part in keyof Estimate]: Estimate[Part] };

/** An estimate that nothing was worked out into yet. */
export const movingEstimate = (): MovingEstimate => ({
  value: Number.NaN,
  standardUncertainty: Number.NaN,
  degreesOfFreedom: Number.NaN,
});

/**
 * What `sideEstimate` gives, in an estimate that was made before and is good until the next one.
 *
 * @example sideEstimateInto(estimate, readSide(answer, treadSpec, gauge), false).value // 8
 */
export const sideEstimateInto = (
  estimate: MovingEstimate,
  side: ReadingSide,
  withAccuracy: boolean,
): Estimate => {
  const ofScatter = (side.scatter / Math.sqrt(side.samples)) ** 2;
  let variance = ofScatter;
  if (side.resolution > 0) variance += resolution(side.resolution) ** 2;
  if (withAccuracy && side.accuracy > 0) variance += rectangular(side.accuracy) ** 2;
  if (side.placement > 0) variance += (side.placement / Math.sqrt(side.spots)) ** 2;
  if (side.correction > 0) variance += side.correction ** 2;
  const share = variance === 0 ? 0 : ofScatter / variance;
  estimate.value = side.mean;
  estimate.standardUncertainty = Math.sqrt(variance);
  estimate.degreesOfFreedom = 1 / (share ** 2 / side.scatterDegreesOfFreedom);
  return estimate;
};

/**
 * A side's mean with its combined standard uncertainty and effective degrees of freedom (JCGM 100:2008, equations 10 and G.2b): those
 * of its parts, of which all but the scatter are taken as known.
 *
 * @param withAccuracy false where both sides share the instrument or the eye, whose error cancels
 * @example sideEstimate(readSide(answer, treadSpec, gauge), false).value // 8
 */
export const sideEstimate = (side: ReadingSide, withAccuracy: boolean): Estimate =>
  sideEstimateInto(movingEstimate(), side, withAccuracy);
