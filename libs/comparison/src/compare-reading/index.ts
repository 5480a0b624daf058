import type { AnswerOf } from "@evenhand/shared/answer";
import type { LimitFigures, Mark, ReadingFigures, SideFigures } from "@evenhand/shared/comparison";
import type { Direction } from "@evenhand/shared/outcome";
import type { Instrument } from "@evenhand/shared/report";
import type { Item, ReadingSpec } from "@evenhand/shared/sheet";
import { convert } from "@evenhand/measurement/unit";
import type { CallContext } from "@evenhand/sheet/call";
import { combineUncertainty } from "@evenhand/measurement/combine-uncertainty";
import { difference } from "@evenhand/measurement/difference";
import { classifyInterval } from "@evenhand/measurement/equivalence";
import type { IntervalOutcome } from "@evenhand/measurement/equivalence";
import type { Estimate } from "@evenhand/measurement/estimate";
import { welchSatterthwaite } from "@evenhand/measurement/welch-satterthwaite";
import { deltaOf } from "../delta/index.ts";
import { intervalFigures, worseBy, worseWay } from "../interval-figures/index.ts";
import type { Judgment } from "../judgment/index.ts";
import { limitFigures, limitsInForce } from "../limit-figures/index.ts";
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
  /** Whose limits and yardstick judge beside the outcome. */
  readonly item: Pick<Item, "reading" | "yardstickNeeds">;
  readonly spec: ReadingSpec;
  /** What of each report a limit may hang on. */
  readonly contextA: CallContext;
  readonly contextB: CallContext;
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
  ...(side.unnamed ? { unnamed: true } : {}),
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

type Settled = { readonly outcome: Judgment["outcome"]; readonly reason: Reason };

/** What may rightly move from one day to another; δ where the sheet says nothing. */
const allowanceOf = ({ spec, drifts, times }: ReadingPair, { a, b, delta }: ReadingFigures): number => {
  if (!drifts || !times().differentDays) return 0;
  const { dayToDay, dayToDayShare = 0 } = spec;
  if (dayToDay === undefined && dayToDayShare === 0) return delta;
  return (dayToDay ?? 0) + dayToDayShare * Math.max(Math.abs(a.mean), Math.abs(b.mean));
};

/** The same digits, as two people read one thing. */
const SAME_DIGITS = 0.04;
/** Written in one unit, and fitting in another: only where the units are far enough apart to be no accident. */
const FITS = 0.08;
const FAR_APART = 3;

const within = (share: number, a: number, b: number): boolean => Math.abs(a - b) <= share * Math.abs(b);

const meanWritten = ({ values }: AnswerOf<"reading">): number =>
  values.reduce((sum, { value }) => sum + value, 0) / values.length;

/** Digits that fit in another unit of the item: a slip of the pen, before anything graver is said. */
const isUnitSlip = ({ a, b, spec }: ReadingPair, figures: ReadingFigures): boolean => {
  const [writtenA, writtenB] = [meanWritten(a), meanWritten(b)];
  if (a.unit !== b.unit && within(SAME_DIGITS, writtenA, writtenB)) return true;
  const factor = Math.abs(figures.a.mean / figures.b.mean);
  if (!(factor > FAR_APART || factor < 1 / FAR_APART)) return false;
  return [spec.unit, ...spec.alsoIn].some(
    (unit) =>
      (unit !== a.unit && within(FITS, convert(writtenA, unit, spec.unit), figures.b.mean)) ||
      (unit !== b.unit && within(FITS, convert(writtenB, unit, spec.unit), figures.a.mean)),
  );
};

/** The stated reading passes what the found one fails: never agree. Sure on both sides: differ. */
const oppositeCalls = (limits: readonly LimitFigures[]): Settled | undefined => {
  let unsure: Settled | undefined;
  for (const { a, b } of limits) {
    if (a?.plain !== "pass" || b?.plain !== "fail") continue;
    if (a.call === "meets" && b.call === "fails") return { outcome: "differ", reason: "opposite-calls" };
    unsure = { outcome: "doubtful", reason: "opposite-calls-unsure" };
  }
  return unsure;
};

const bothFail = (limits: readonly LimitFigures[]): boolean =>
  limits.some(({ a, b }) => a?.plain === "fail" && b?.plain === "fail");

const settle = (pair: ReadingPair, figures: ReadingFigures, limits: readonly LimitFigures[]): Settled => {
  const { difference: apart, expandedUncertainty, delta } = figures;
  const outcome = classifyInterval(apart, expandedUncertainty, delta);
  if (outcome !== "agree" && isUnitSlip(pair, figures)) {
    return { outcome: "doubtful", reason: "perhaps-the-unit" };
  }
  const opposite = oppositeCalls(limits);
  if (opposite !== undefined) return outcome === "differ" ? { outcome, reason: REASONS[outcome] } : opposite;
  if (bothFail(limits)) return { outcome: "agree", reason: "both-past-limit" };
  if (outcome === "doubtful" || outcome === "differ") {
    const allowance = allowanceOf(pair, figures);
    if (allowance > 0 && Math.abs(apart) <= expandedUncertainty + allowance) {
      return { outcome: "consistent", reason: "changed-between-days" };
    }
  }
  return { outcome, reason: REASONS[outcome] };
};

const marksOf = (
  { reason }: Settled,
  limits: readonly LimitFigures[],
  figures: ReadingFigures,
  outcome: Judgment["outcome"],
): Mark[] => [
  ...(reason === "both-past-limit" ? (["both-bad"] as const) : []),
  ...(limits.some(({ b }) => b?.plain === "fail") ? (["over-limit"] as const) : []),
  ...(reason === "perhaps-the-unit" ? (["perhaps-unit"] as const) : []),
  ...(outcome === "consistent" && figures.expandedUncertainty > figures.delta
    ? (["too-coarse"] as const)
    : []),
];

/**
 * Compares two readings of one item by the interval of their difference (agree, differ, consistent, doubtful). What drifts parts
 * only past a day's allowance; digits that fit in another unit are doubtful before anything graver; a stated reading on the good
 * side of a limit or alarm and a found one on the bad side never agree; past the same limit on both sides they agree, both bad.
 *
 * @throws {DimensionError} when a unit measures something else than the item (a checked report has none)
 * @example compareReading({ a: twelveThirtySeconds, b: fourThirtySeconds, spec: tread, … }).outcome // "differ"
 */
export const compareReading = (pair: ReadingPair): Judgment => {
  const a = readSide(pair.a, pair.spec, pair.instrumentA);
  const b = readSide(pair.b, pair.spec, pair.instrumentB);
  const whole = { a: estimateOf(a, true), b: estimateOf(b, true) };
  const figures = figuresOf(pair, a, b, whole);
  const inForce = limitsInForce(pair.item, pair.contextA, pair.contextB);
  const limits =
    inForce.length === 0
      ? []
      : limitFigures(pair.spec, inForce, limitSide(a, whole.a), limitSide(b, whole.b));
  const settled = settle(pair, figures, limits);
  const { outcome, reason } = settled;
  const decided = outcome === "doubtful" || outcome === "differ" || reason === "both-past-limit";
  return {
    outcome,
    reason,
    direction: decided ? directionOf(figures, pair.spec) : "neither",
    standing: standingOf(outcome, {
      bothBad: reason === "both-past-limit",
      tooCoarse: figures.expandedUncertainty > figures.delta,
    }),
    figures,
    limits: limits.length === 0 ? undefined : limits,
    marks: marksOf(settled, limits, figures, outcome),
  };
};
