import type { AnswerOf } from "@evenhand/shared/answer";
import type { LimitFigures, Mark, ReadingFigures, SideFigures } from "@evenhand/shared/comparison";
import type { Direction } from "@evenhand/shared/outcome";
import type { Instrument } from "@evenhand/shared/report";
import type { Item, ReadingSpec } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { convert } from "@evenhand/measurement/unit";
import type { CallContext } from "@evenhand/sheet/call";
import { difference } from "@evenhand/measurement/difference";
import { classifyInterval } from "@evenhand/measurement/equivalence";
import type { IntervalOutcome } from "@evenhand/measurement/equivalence";
import type { Estimate } from "@evenhand/measurement/estimate";
import { deltaOf } from "../delta/index.ts";
import { intervalFigures, worseBy, worseWay } from "../interval-figures/index.ts";
import type { Judgment } from "../judgment/index.ts";
import { hasLimits, limitFigures } from "../limit-figures/index.ts";
import type { LimitSide } from "../limit-figures/index.ts";
import {
  movingEstimate,
  movingSide,
  readSideInto,
  sideEstimate,
  sideEstimateInto,
} from "@evenhand/sheet/reading-side";
import type { MovingSide, Off, ReadingSide } from "@evenhand/sheet/reading-side";
import type { Reason } from "../reason/index.ts";
import { standingOf } from "../standing/index.ts";
import { asTaken, dayToDayOf, leftOf, takenDifference } from "../use-allowed/index.ts";
import type { VisitTimes } from "../visit-times/index.ts";
import { partsFirmly } from "./firm.ts";

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
  /** What is taken off each side's reading; the dealer's is never corrected. */
  readonly correctionA?: Off | undefined;
  readonly correctionB?: Off | undefined;
  /** How far the later reading may rightly have moved toward the worse; 0 where nothing is allowed. Asked only where it matters. */
  readonly useAllowed: () => number;
  /** How the two visits lie in time; asked only where it matters. */
  readonly times: () => VisitTimes;
};

const NO_LIMITS: LimitFigures[] = [];
Object.freeze(NO_LIMITS);

const sideFigures = (side: ReadingSide, whole: Estimate): SideFigures => {
  const figures: SideFigures = {
    mean: side.read,
    count: side.count,
    standardUncertainty: whole.standardUncertainty,
    degreesOfFreedom: Number.isFinite(whole.degreesOfFreedom) ? whole.degreesOfFreedom : null,
    scatterReplaced: side.scatterReplaced,
    byEye: side.byEye,
  };
  if (side.unnamed) figures.unnamed = true;
  if (side.mean !== side.read || side.correction > 0) figures.taken = side.mean;
  return figures;
};

/**
 * The use allowed between two visits, with the sign of Δ = A − B; 0 where it takes nothing off. Wear lowers a reading that is
 * better higher and raises any other; a movement the other way, or beyond what is allowed, counts in full.
 */
const useOf = (pair: ReadingPair, apart: number): number => {
  if (apart === 0) return 0;
  const useAllowed = pair.useAllowed();
  if (useAllowed === 0) return 0;
  const { later } = pair.times();
  if (later === null) return 0;
  const moved = later === "a" ? apart : -apart;
  const worn = pair.spec.betterIs === "higher" ? -moved : moved;
  return worn <= 0 ? 0 : Math.sign(apart) * useAllowed;
};

const REASONS: Readonly<Record<IntervalOutcome, Reason>> = {
  agree: "within-delta",
  consistent: "not-settled",
  doubtful: "beyond-chance",
  differ: "beyond-delta",
};

const directionOf = (figures: ReadingFigures, spec: ReadingSpec): Direction => {
  const { a, b } = asTaken(figures);
  const worse = worseBy({ a, b, difference: leftOf(figures) }, worseWay(spec)) ?? 0;
  if (worse === 0) return "neither";
  return worse > 0 ? "stated-better" : "found-better";
};

/** The two sides as estimates, each with its whole uncertainty. */
type Whole = { readonly a: Estimate; readonly b: Estimate };

/** Δ with the uncertainty of what the sides do not share. */
const differenceOf = (pair: ReadingPair, a: ReadingSide, b: ReadingSide, whole: Whole): Estimate =>
  pair.shared ? difference(sideEstimate(a, false), sideEstimate(b, false)) : difference(whole.a, whole.b);

/** The figures; the use allowed is among them only where it took something off the difference. */
const figuresOf = (pair: ReadingPair, a: ReadingSide, b: ReadingSide, whole: Whole): ReadingFigures => {
  const apart = differenceOf(pair, a, b, whole);
  const correction = (pair.correctionB?.effect ?? 0) - (pair.correctionA?.effect ?? 0);
  const corrected = a.read !== a.mean || b.read !== b.mean;
  return intervalFigures({
    unit: pair.spec.unit,
    a: sideFigures(a, whole.a),
    b: sideFigures(b, whole.b),
    difference: corrected ? a.read - b.read : apart.value,
    correction: corrected ? correction : undefined,
    useAllowed: useOf(pair, apart.value),
    standardUncertainty: apart.standardUncertainty,
    degreesOfFreedom: apart.degreesOfFreedom,
    delta: deltaOf(pair.spec.delta, a.mean, b.mean),
    worse: worseWay(pair.spec),
  });
};

/** A limit that judges neither side. */
const NOT_JUDGED: Pick<LimitFigures, "a" | "b"> = { a: null, b: null };

type Settled = { readonly outcome: Judgment["outcome"]; readonly reason: Reason };

/** What may rightly move from one day to another; δ where the sheet says nothing. */
const allowanceOf = ({ spec, drifts, times }: ReadingPair, figures: ReadingFigures): number =>
  drifts && times().differentDays ? dayToDayOf(spec, figures) : 0;

/** The same digits, as two people read one thing. */
const SAME_DIGITS = 0.04;
/** Written in one unit, and fitting in another: only where the units are far enough apart to be no accident. */
const FITS = 0.08;
const FAR_APART = 3;

const within = (share: number, a: number, b: number): boolean => Math.abs(a - b) <= share * Math.abs(b);

const meanWritten = ({ values }: AnswerOf<"reading">): number =>
  values.reduce((sum, { value }) => sum + value, 0) / values.length;

/** Whether one side's digits fit the other's mean when they are read in another unit than they were written in. */
const fitsElsewhere = (written: AnswerOf<"reading">, spec: ReadingSpec, other: number): boolean => {
  const digits = meanWritten(written);
  const fits = (unit: UnitSymbol): boolean => within(FITS, convert(digits, unit, spec.unit), other);
  return fits(spec.unit) || spec.alsoIn.some(fits);
};

/** Digits that fit in another unit of the item: a slip of the pen, before anything graver is said. */
const isUnitSlip = ({ a, b, spec }: ReadingPair, figures: ReadingFigures): boolean => {
  if (a.unit !== b.unit && within(SAME_DIGITS, meanWritten(a), meanWritten(b))) return true;
  const factor = Math.abs(figures.a.mean / figures.b.mean);
  if (!(factor > FAR_APART || factor < 1 / FAR_APART)) return false;
  return fitsElsewhere(a, spec, figures.b.mean) || fitsElsewhere(b, spec, figures.a.mean);
};

/**
 * The stated reading passes what the found one fails: never agree. Sure on both sides, or sure on the stated one and the two farther
 * apart than chance explains: differ.
 */
const oppositeCalls = (limits: readonly LimitFigures[], parted: boolean): Settled | undefined => {
  let unsure: Settled | undefined;
  for (let index = 0; index < limits.length; index += 1) {
    const { a, b } = limits[index] ?? NOT_JUDGED;
    if (a?.plain !== "pass" || b?.plain !== "fail") continue;
    if (a.call === "meets" && (b.call === "fails" || parted)) {
      return { outcome: "differ", reason: "opposite-calls" };
    }
    unsure = { outcome: "doubtful", reason: "opposite-calls-unsure" };
  }
  return unsure;
};

const bothFail = (limits: readonly LimitFigures[]): boolean =>
  limits.some(({ a, b }) => a?.plain === "fail" && b?.plain === "fail");

const classify = (figures: ReadingFigures): IntervalOutcome =>
  classifyInterval(leftOf(figures), figures.expandedUncertainty, figures.delta);

/** Use excuses a difference and never shows that there is none: what agrees only without what it took off is not contradicted. */
const isExcusedByUse = (figures: ReadingFigures): boolean =>
  figures.useAllowed !== undefined &&
  classifyInterval(takenDifference(figures), figures.expandedUncertainty, figures.delta) !== "agree";

/** What the interval alone says. */
const SETTLED: Readonly<Record<IntervalOutcome, Settled>> = {
  agree: { outcome: "agree", reason: REASONS.agree },
  consistent: { outcome: "consistent", reason: REASONS.consistent },
  doubtful: { outcome: "doubtful", reason: REASONS.doubtful },
  differ: { outcome: "differ", reason: REASONS.differ },
};

const WITHIN_USE: Settled = { outcome: "consistent", reason: "within-use" };
/** A difference that only a gauge named as very coarse, or readings far apart, would explain. */
const PARTS_FIRMLY: Settled = { outcome: "doubtful", reason: "beyond-ordinary" };

type Read = { readonly a: ReadingSide; readonly b: ReadingSide };

const settle = (
  pair: ReadingPair,
  figures: ReadingFigures,
  limits: readonly LimitFigures[],
  read: Read,
): Settled => {
  const { expandedUncertainty } = figures;
  const apart = leftOf(figures);
  const outcome = classify(figures);
  // Before anything graver, and never where both mean the same: nought is nought in any unit.
  if (outcome !== "agree" && figures.difference !== 0 && isUnitSlip(pair, figures)) {
    return { outcome: "doubtful", reason: "perhaps-the-unit" };
  }
  const opposite = oppositeCalls(limits, Math.abs(apart) > expandedUncertainty);
  if (opposite !== undefined) return outcome === "differ" ? SETTLED.differ : opposite;
  if (bothFail(limits)) return { outcome: "agree", reason: "both-past-limit" };
  if (outcome === "agree") return isExcusedByUse(figures) ? WITHIN_USE : SETTLED.agree;
  const isOpen = outcome !== "consistent";
  if (isOpen && Math.abs(apart) > expandedUncertainty + allowanceOf(pair, figures)) return SETTLED[outcome];
  const { spec, shared } = pair;
  if (partsFirmly(figures, { ...read, spec, shared }, () => allowanceOf(pair, figures))) return PARTS_FIRMLY;
  return isOpen ? { outcome: "consistent", reason: "changed-between-days" } : SETTLED.consistent;
};

const marksOf = (
  { reason }: Settled,
  limits: readonly LimitFigures[],
  figures: ReadingFigures,
  outcome: Judgment["outcome"],
): Mark[] => {
  const marks: Mark[] = [];
  if (reason === "both-past-limit") marks.push("both-bad");
  if (limits.some(({ b }) => b?.plain === "fail")) marks.push("over-limit");
  if (reason === "perhaps-the-unit") marks.push("perhaps-unit");
  if (outcome === "consistent" && figures.expandedUncertainty > figures.delta) marks.push("too-coarse");
  return marks;
};

/** From the mildest on. */
const RANK: readonly Judgment["outcome"][] = ["agree", "consistent", "doubtful", "differ"];

const WORST_SPOT: Partial<Record<Judgment["outcome"], Reason>> = {
  doubtful: "worst-spot-beyond-chance",
  differ: "worst-spot-beyond-delta",
};

/** The worst of several named spots by itself. */
const worstSpotOf = (answer: AnswerOf<"reading">, spec: ReadingSpec): AnswerOf<"reading"> => {
  const [first] = answer.values;
  if (first === undefined) return answer;
  const isWorse = (value: number, than: number): boolean =>
    spec.betterIs === "higher" ? value < than : value > than;
  const worst = answer.values.reduce((one, other) => (isWorse(other.value, one.value) ? other : one), first);
  return { ...answer, values: [worst] };
};

/**
 * Where spots of one place lie farther apart than chance explains, its mean stands for none of them (a tire worn at its inner edge):
 * worst spot against worst spot then, in the same way.
 */
const worstSpots = (pair: ReadingPair, a: ReadingSide, b: ReadingSide, limits: readonly LimitFigures[]) => {
  if (pair.spec.betterIs === "target" || !(a.patterned || b.patterned)) return undefined;
  const spots = { ...pair, a: worstSpotOf(pair.a, pair.spec), b: worstSpotOf(pair.b, pair.spec) };
  const [sideA, sideB] = [
    readSideInto(movingSide(), spots.a, pair.spec, pair.instrumentA, pair.correctionA),
    readSideInto(movingSide(), spots.b, pair.spec, pair.instrumentB, pair.correctionB),
  ];
  cancelShared(pair, sideA, sideB);
  const figures = figuresOf(spots, sideA, sideB, {
    a: sideEstimate(sideA, true),
    b: sideEstimate(sideB, true),
  });
  const settled = settle(spots, figures, limits, { a: sideA, b: sideB });
  const reason = settled.reason === REASONS[classify(figures)] ? WORST_SPOT[settled.outcome] : undefined;
  return { figures, settled: { ...settled, reason: reason ?? settled.reason } };
};

const judged = (
  { spec }: ReadingPair,
  figures: ReadingFigures,
  settled: Settled,
  limits: LimitFigures[],
): Judgment => {
  const { outcome, reason } = settled;
  const decided = outcome === "doubtful" || outcome === "differ" || reason === "both-past-limit";
  return {
    outcome,
    reason,
    direction: decided ? directionOf(figures, spec) : "neither",
    standing: standingOf(outcome, {
      bothBad: reason === "both-past-limit",
      tooCoarse: figures.expandedUncertainty > figures.delta,
    }),
    figures,
    limits: limits.length === 0 ? undefined : limits,
    marks: marksOf(settled, limits, figures, outcome),
    coverageOnly: undefined,
  };
};

/** The two sides and their estimates, moved over all the readings of a comparison; nobody keeps them. */
const SIDE_A = movingSide();
const SIDE_B = movingSide();
const MOVING = { a: movingEstimate(), b: movingEstimate() };
/** One gauge that both sides read with is as far off on both: that cancels in the difference, and stays against a limit. */
const cancelShared = (
  { shared, correctionA, correctionB }: ReadingPair,
  a: MovingSide,
  b: MovingSide,
): void => {
  if (!shared || correctionA?.effect !== correctionB?.effect) return;
  if (correctionA?.standardError !== correctionB?.standardError) return;
  a.correction = 0;
  b.correction = 0;
};

const AGAINST_A: LimitSide = { estimate: MOVING.a, extremes: SIDE_A };
const AGAINST_B: LimitSide = { estimate: MOVING.b, extremes: SIDE_B };

/**
 * Compares two readings of one item by the interval of their difference (agree, differ, consistent, doubtful). What drifts parts
 * only past a day's allowance; digits that fit in another unit are doubtful before anything graver; a stated reading on the good
 * side of a limit or alarm and a found one on the bad side never agree; past the same limit on both sides they agree, both bad. What
 * is known of an inspector's hand and gauge is taken off first and widens u; what was read is what the figures show.
 *
 * @throws {DimensionError} when a unit measures something else than the item (a checked report has none)
 * @example compareReading({ a: twelveThirtySeconds, b: fourThirtySeconds, spec: tread, … }).outcome // "differ"
 */
export const compareReading = (pair: ReadingPair): Judgment => {
  const a = readSideInto(SIDE_A, pair.a, pair.spec, pair.instrumentA, pair.correctionA);
  const b = readSideInto(SIDE_B, pair.b, pair.spec, pair.instrumentB, pair.correctionB);
  sideEstimateInto(MOVING.a, a, true);
  sideEstimateInto(MOVING.b, b, true);
  cancelShared(pair, a, b);
  const figures = figuresOf(pair, a, b, MOVING);
  const limits = hasLimits(pair.item, pair.contextA.position)
    ? limitFigures(pair.item, pair.contextA, pair.contextB, AGAINST_A, AGAINST_B)
    : NO_LIMITS;
  const settled = settle(pair, figures, limits, { a, b });
  const worst = worstSpots(pair, a, b, limits);
  return worst !== undefined && RANK.indexOf(worst.settled.outcome) > RANK.indexOf(settled.outcome)
    ? judged(pair, worst.figures, worst.settled, limits)
    : judged(pair, figures, settled, limits);
};
