import type { AnswerOf, ReadingValue } from "@evenhand/shared/answer";
import type { Instrument, Quantity } from "@evenhand/shared/report";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { Component } from "@evenhand/measurement/combine-uncertainty";
import type { Estimate } from "@evenhand/measurement/estimate";
import { fTest } from "@evenhand/measurement/f-test";
import { mean, sampleStandardDeviation } from "@evenhand/measurement/type-a";
import { rectangular, resolution } from "@evenhand/measurement/type-b";
import { convert, convertDifference, dimensionOf } from "@evenhand/measurement/unit";

/**
 * What one side's reading says, in the item's base unit, its uncertainty kept in parts because a part that both
 * sides share cancels in their difference and stays against a limit.
 */
export type ReadingSide = {
  readonly mean: number;
  readonly count: number;
  readonly lowest: number;
  readonly highest: number;
  /** s: the item's repeatability s₀, or the scatter seen where that is larger than chance allows. */
  readonly scatter: number;
  readonly scatterDegreesOfFreedom: number;
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

const sizeWithShare = (part: { readonly absolute: number; readonly share: number }, size: number): number =>
  part.absolute + part.share * Math.abs(size);

const quantityIn = (quantity: Quantity | undefined, unit: UnitSymbol): number | undefined =>
  quantity !== undefined && dimensionOf(quantity.unit) === dimensionOf(unit)
    ? convertDifference(quantity.value, quantity.unit, unit)
    : undefined;

/** An instrument whose accuracy is not stated is held to the item's ordinary one. */
const instrumentAccuracy = (spec: ReadingSpec, { accuracy }: Instrument, size: number): number => {
  const absolute = quantityIn(accuracy?.absolute, spec.unit);
  if (accuracy === undefined || !(absolute !== undefined || accuracy.share > 0)) {
    return sizeWithShare(spec.instrument.accuracy, size);
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
  return byEye ? sizeWithShare(spec.byEye, size) : 2 * sizeWithShare(spec.instrument.accuracy, size);
};

/** That of the item's ordinary instrument where none is named, or its own is not stated; the eye has none. */
const resolutionOf = (spec: ReadingSpec, instrument: Instrument | undefined, byEye: boolean): number =>
  byEye ? 0 : (quantityIn(instrument?.resolution, spec.unit) ?? spec.instrument.resolution);

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
  let named = 0;
  for (let index = 0; index < readings.length; index += 1) {
    const spot = readings[index]?.spot;
    let earlier = 0;
    while (earlier < index && readings[earlier]?.spot !== spot) earlier += 1;
    if (spot !== undefined && earlier === index) named += 1;
  }
  return named;
};

const allInBaseUnit = ({ values, unit: from }: Reading, unit: UnitSymbol): number[] =>
  values.map(({ value }) => convert(value, from, unit));

/** One value is by far the most frequent case. */
const inBaseUnit = (answer: Reading, unit: UnitSymbol): number[] => {
  const [first] = answer.values;
  return first !== undefined && answer.values.length === 1
    ? [convert(first.value, answer.unit, unit)]
    : allInBaseUnit(answer, unit);
};

const least = (values: readonly number[]): number => {
  let lowest = Number.POSITIVE_INFINITY;
  for (let index = 0; index < values.length; index += 1) lowest = Math.min(lowest, values[index] ?? lowest);
  return lowest;
};

const most = (values: readonly number[]): number => {
  let highest = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < values.length; index += 1)
    highest = Math.max(highest, values[index] ?? highest);
  return highest;
};

/** s₀ for a reading of this size: its absolute and its proportional part in quadrature. */
const expectedScatter = ({ repeatability }: ReadingSpec, size: number): number =>
  repeatability.share === 0
    ? repeatability.value
    : Math.hypot(repeatability.value, repeatability.share * size);

/** Whether a scatter seen is larger than s₀ (and placement, over several spots) explains at 1 %. */
const isBeyondChance = (
  seen: number,
  samples: number,
  scatter: number,
  placement: number,
  degreesOfFreedom: number,
): boolean => {
  if (seen <= scatter) return false;
  const expected = placement === 0 ? scatter : Math.hypot(scatter, placement);
  if (seen <= expected) return false;
  return fTest(
    { standardDeviation: seen, degreesOfFreedom: samples - 1 },
    { standardDeviation: expected, degreesOfFreedom },
  ).larger;
};

/**
 * Reads one side of a reading item: u² = s₀²/n + r²/12 + a²/3 + p²/m (JCGM 100:2008, 4.2, 4.3 and F.2.2.1), in
 * parts. Without a named instrument the ordinary one at twice its stated accuracy, or the eye where eyes read, takes the place of r and a. Readings whose spots
 * are not named are taken to be at as many spots as the sheet asks for, and never at more than there are readings.
 *
 * @param instrument what the finding was read with; `undefined` where none is named
 * @returns all figures in the item's base unit
 * @throws {DimensionError} when the answer's unit measures something else (a checked report has none)
 * @example readSide({ kind: "reading", unit: "in", values: [{ value: 0.25 }] }, treadSpec, undefined).mean // 8 (1/32 in)
 */
export const readSide = (
  answer: Reading,
  spec: ReadingSpec,
  instrument: Instrument | undefined,
): ReadingSide => {
  const values = inBaseUnit(answer, spec.unit);
  const named = countNamedSpots(answer.values);
  const spots = named === 0 ? Math.min(values.length, spec.ask.spots) : named;
  const overSpots = spec.repeatability.over === "spots";
  const samples = overSpots && named > 0 && named < values.length ? spotMeans(answer.values, values) : values;
  const center = mean(samples);
  const placement = overSpots ? 0 : spec.placement;
  const byEye = instrument === undefined && spec.eyesRead === true;
  const { degreesOfFreedom } = spec.repeatability;
  const expected = expectedScatter(spec, center);
  const seen = samples.length < 2 ? 0 : sampleStandardDeviation(samples);
  const isBeyond = isBeyondChance(
    seen,
    samples.length,
    expected,
    spots > 1 ? placement : 0,
    degreesOfFreedom,
  );
  // Values at named spots of one place may rightly differ: wear is not scatter.
  const patterned = named > 1 && isBeyond;
  const scatterReplaced = isBeyond && !patterned;
  return {
    mean: center,
    count: values.length,
    lowest: least(values),
    highest: most(values),
    scatter: scatterReplaced ? seen : expected,
    scatterDegreesOfFreedom: scatterReplaced ? samples.length - 1 : degreesOfFreedom,
    scatterReplaced,
    samples: samples.length,
    resolution: resolutionOf(spec, instrument, byEye),
    accuracy: accuracyOf(spec, instrument, center, byEye),
    placement,
    spots,
    patterned,
    byEye,
    unnamed: instrument === undefined && !byEye,
  };
};

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
  return parts;
};

/**
 * A side's mean with its combined standard uncertainty and effective degrees of freedom (JCGM 100:2008, equations 10 and G.2b): those
 * of its parts, of which all but the scatter are taken as known.
 *
 * @param withAccuracy false where both sides share the instrument or the eye, whose error cancels
 * @example sideEstimate(readSide(answer, treadSpec, gauge), false).value // 8
 */
export const sideEstimate = (side: ReadingSide, withAccuracy: boolean): Estimate => {
  const ofScatter = (side.scatter / Math.sqrt(side.samples)) ** 2;
  let variance = ofScatter;
  if (side.resolution > 0) variance += resolution(side.resolution) ** 2;
  if (withAccuracy && side.accuracy > 0) variance += rectangular(side.accuracy) ** 2;
  if (side.placement > 0) variance += (side.placement / Math.sqrt(side.spots)) ** 2;
  const share = variance === 0 ? 0 : ofScatter / variance;
  return {
    value: side.mean,
    standardUncertainty: Math.sqrt(variance),
    degreesOfFreedom: 1 / (share ** 2 / side.scatterDegreesOfFreedom),
  };
};
