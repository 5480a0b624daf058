import type { AnswerOf } from "@evenhand/shared/answer";
import type { LimitFigures, ReadingFigures, SideFigures } from "@evenhand/shared/comparison";
import type { Direction } from "@evenhand/shared/outcome";
import type { Instrument } from "@evenhand/shared/report";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { combineUncertainty } from "@evenhand/measurement/combine-uncertainty";
import { difference } from "@evenhand/measurement/difference";
import { classifyInterval } from "@evenhand/measurement/equivalence";
import type { IntervalOutcome } from "@evenhand/measurement/equivalence";
import type { Estimate } from "@evenhand/measurement/estimate";
import { welchSatterthwaite } from "@evenhand/measurement/welch-satterthwaite";
import { deltaOf } from "../delta/index.ts";
import { intervalFigures, worseBy, worseWay } from "../interval-figures/index.ts";
import type { Judgment } from "../judgment/index.ts";
import { failsLimit, limitConflict, limitFigures } from "../limit-figures/index.ts";
import type { LimitSide } from "../limit-figures/index.ts";
import { readSide, uncertaintyParts } from "@evenhand/sheet/reading-side";
import type { ReadingSide } from "@evenhand/sheet/reading-side";
import type { Reason } from "../reason/index.ts";
import { standingOf } from "../standing/index.ts";
import type { VisitTimes } from "../visit-times/index.ts";

/** What a comparison of two readings needs to know beside them. */
export type ReadingPair = {
  readonly a: AnswerOf<"reading">;
  readonly b: AnswerOf<"reading">;
  readonly spec: ReadingSpec;
  readonly instrumentA: Instrument | undefined;
  readonly instrumentB: Instrument | undefined;
  /** One instrument, or one person's eye, read both sides. */
  readonly shared: boolean;
  readonly drifts: boolean;
  /** How far the later reading may rightly have moved toward the worse; 0 where nothing is allowed. */
  readonly useAllowed: number;
  /** How the two visits lie in time; asked only where it matters. */
  readonly times: () => VisitTimes;
};

const estimateOf = (side: ReadingSide, withAccuracy: boolean): Estimate => {
  const parts = uncertaintyParts(side, withAccuracy);
  return {
    value: side.mean,
    standardUncertainty: combineUncertainty(parts),
    degreesOfFreedom: welchSatterthwaite(parts),
  };
};

const sideFigures = (side: ReadingSide, whole: Estimate): SideFigures => ({
  mean: side.mean,
  count: side.count,
  standardUncertainty: whole.standardUncertainty,
  degreesOfFreedom: Number.isFinite(whole.degreesOfFreedom) ? whole.degreesOfFreedom : null,
  scatterReplaced: side.scatterReplaced,
  byEye: side.byEye,
});

/**
 * What is left of Δ = A − B after the use allowed between two visits. Wear lowers a reading that is better higher
 * and raises any other; a movement the other way, or beyond what is allowed, counts in full.
 */
const lessUseAllowed = (pair: ReadingPair, apart: number): number => {
  if (pair.useAllowed === 0 || apart === 0) return apart;
  const { later } = pair.times();
  if (later === null) return apart;
  const moved = later === "a" ? apart : -apart;
  const worn = pair.spec.betterIs === "higher" ? -moved : moved;
  if (worn <= 0) return apart;
  const left = Math.max(0, worn - pair.useAllowed);
  return left === 0 ? 0 : Math.sign(apart) * left;
};

const REASONS: Readonly<Record<IntervalOutcome, Reason>> = {
  agree: "within-delta",
  consistent: "not-settled",
  doubtful: "beyond-chance",
  differ: "beyond-delta",
};

const limitSide = (side: ReadingSide, estimate: Estimate): LimitSide => ({
  estimate,
  lowest: side.lowest,
  highest: side.highest,
});

const directionOf = (figures: ReadingFigures, spec: ReadingSpec): Direction => {
  const worse = worseBy(figures, worseWay(spec)) ?? 0;
  if (worse === 0) return "neither";
  return worse > 0 ? "stated-better" : "found-better";
};

/** The two sides as estimates, each with its whole uncertainty. */
type Whole = { readonly a: Estimate; readonly b: Estimate };

/** Δ with the uncertainty of what the sides do not share. */
const differenceOf = (pair: ReadingPair, a: ReadingSide, b: ReadingSide, whole: Whole): Estimate =>
  pair.shared ? difference(estimateOf(a, false), estimateOf(b, false)) : difference(whole.a, whole.b);

/** The figures; the use allowed is among them only where it took something off the difference. */
const figuresOf = (pair: ReadingPair, a: ReadingSide, b: ReadingSide, whole: Whole): ReadingFigures => {
  const apart = differenceOf(pair, a, b, whole);
  const left = lessUseAllowed(pair, apart.value);
  const figures = intervalFigures({
    unit: pair.spec.unit,
    a: sideFigures(a, whole.a),
    b: sideFigures(b, whole.b),
    difference: left,
    standardUncertainty: apart.standardUncertainty,
    degreesOfFreedom: apart.degreesOfFreedom,
    delta: deltaOf(pair.spec.delta, a.mean, b.mean),
    worse: worseWay(pair.spec),
  });
  if (left !== apart.value) figures.useAllowed = pair.useAllowed;
  return figures;
};

const excusedByDrift = (pair: ReadingPair, limits: readonly LimitFigures[]): boolean =>
  pair.drifts && !failsLimit(limits, "a") && !failsLimit(limits, "b") && pair.times().differentDays;

type Settled = { readonly outcome: IntervalOutcome; readonly reason: Reason };

/**
 * What drifts is only in doubt where one side of the difference is the worse one (a battery's volts), and contradicts
 * nothing where none is (the speed a figure was taken at).
 */
const softenDrift = (outcome: IntervalOutcome, spec: ReadingSpec): Settled => {
  if (worseWay(spec).is === "unknown") return { outcome: "consistent", reason: "changed-between-days" };
  return outcome === "differ"
    ? { outcome: "doubtful", reason: "drifts-between-days" }
    : { outcome, reason: REASONS[outcome] };
};

const settle = (pair: ReadingPair, figures: ReadingFigures, limits: readonly LimitFigures[]): Settled => {
  const outcome = classifyInterval(figures.difference, figures.expandedUncertainty, figures.delta);
  const apart = outcome === "doubtful" || outcome === "differ";
  return apart && excusedByDrift(pair, limits)
    ? softenDrift(outcome, pair.spec)
    : { outcome, reason: REASONS[outcome] };
};

/**
 * Compares two readings of one item by the interval of their difference (design of the comparison: agree, differ,
 * consistent, doubtful), with limits judged beside the outcome and never inside it.
 *
 * @throws {DimensionError} when a unit measures something else than the item (a checked report has none)
 * @example compareReading({ a: twelveThirtySeconds, b: fourThirtySeconds, spec: tread, … }).outcome // "differ"
 */
export const compareReading = (pair: ReadingPair): Judgment => {
  const a = readSide(pair.a, pair.spec, pair.instrumentA);
  const b = readSide(pair.b, pair.spec, pair.instrumentB);
  const whole = { a: estimateOf(a, true), b: estimateOf(b, true) };
  const figures = figuresOf(pair, a, b, whole);
  const limits =
    pair.spec.limits.length === 0
      ? []
      : limitFigures(pair.spec, limitSide(a, whole.a), limitSide(b, whole.b));
  const { outcome, reason } = settle(pair, figures, limits);
  const decided = outcome === "doubtful" || outcome === "differ";
  return {
    outcome,
    reason,
    direction: decided ? directionOf(figures, pair.spec) : "neither",
    standing: standingOf(outcome, {
      limits: limitConflict(limits),
      tooCoarse: figures.expandedUncertainty > figures.delta,
    }),
    figures,
    limits: limits.length === 0 ? undefined : limits,
  };
};
