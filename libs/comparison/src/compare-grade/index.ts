import type { GradeFigures } from "@evenhand/shared/comparison";
import type { Direction, Outcome } from "@evenhand/shared/outcome";
import { houseStep } from "@evenhand/sheet/grade-scale";
import type { Stretch } from "@evenhand/sheet/grade-scale";
import { BOTH_BAD } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import type { Reason } from "../reason/index.ts";
import { standingOf } from "../standing/index.ts";

/** Stretches are fractions of few digits: what differs by less is rounding. */
const ROUNDING = 1e-9;

const middle = ([low, high]: Stretch): number => (low + high) / 2;

/**
 * How two stretches lie: the distance of their middles in house steps, and overlap over union.
 *
 * @example gradeFigures([0.6, 0.8], [0.4, 0.6]) // { of: "grade", steps: 1, overlap: 0, … }
 */
export const gradeFigures = (a: Stretch, b: Stretch): GradeFigures => {
  const overlap = Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));
  const union = Math.max(a[1], b[1]) - Math.min(a[0], b[0]);
  return {
    of: "grade",
    a: [a[0], a[1]],
    b: [b[0], b[1]],
    steps: (middle(a) - middle(b)) / houseStep,
    overlap: union === 0 ? 1 : overlap / union,
  };
};

const lies = (inner: Stretch, outer: Stretch): boolean =>
  inner[0] >= outer[0] - ROUNDING && inner[1] <= outer[1] + ROUNDING;

type Verdict = { readonly outcome: Outcome; readonly reason: Reason };

const byDistance = (steps: number, strict: boolean): Verdict => {
  const distance = Math.abs(steps) + ROUNDING;
  const [doubtfulFrom, differFrom] = strict ? [0.75, 1.5] : [1.5, 2];
  if (distance < doubtfulFrom) return { outcome: "consistent", reason: "grades-near" };
  return distance < differFrom
    ? { outcome: "doubtful", reason: "grades-apart" }
    : { outcome: "differ", reason: "grades-far-apart" };
};

const width = ([low, high]: Stretch): number => high - low;

const judge = (figures: GradeFigures, strict: boolean): Verdict => {
  const { a, b, overlap } = figures;
  if (overlap >= 0.5 - ROUNDING || lies(a, b) || lies(b, a)) {
    // Within one house step there is nothing finer to be said; a wider word confirms nothing, whoever used it.
    const fine = Math.max(width(a), width(b)) <= houseStep + ROUNDING;
    return fine
      ? { outcome: "agree", reason: "grades-overlap" }
      : { outcome: "consistent", reason: "grade-within-wider" };
  }
  return byDistance(figures.steps, strict);
};

const directionOf = (outcome: Outcome, steps: number): Direction => {
  if (outcome === "agree" || Math.abs(steps) < ROUNDING) return "neither";
  return steps > 0 ? "stated-better" : "found-better";
};

/**
 * Compares two grades on whatever scales by their stretches. In order: overlap over union ≥ ½, or one within the other, agrees
 * where neither is wider than a house step, else is consistent, for a wide word confirms nothing; else by the distance of the middles in house steps, tighter for strict items.
 * A single step still has a direction, since the same step again and again is a bias.
 *
 * @param same the same grade of the same scale: agrees whatever its stretch
 * @example compareGrade({ a: [0.8, 1], b: [0.2, 0.4], same: false, strict: false, bothBad: false }).outcome // "differ"
 */
export const compareGrade = (pair: {
  readonly a: Stretch;
  readonly b: Stretch;
  readonly same: boolean;
  readonly strict: boolean;
  readonly bothBad: boolean;
}): Judgment => {
  const figures = gradeFigures(pair.a, pair.b);
  const { outcome, reason }: Verdict = pair.same
    ? { outcome: "agree", reason: "same-grade" }
    : judge(figures, pair.strict);
  const tooCoarse = reason === "grade-within-wider";
  return {
    outcome,
    reason,
    direction: directionOf(outcome, figures.steps),
    standing: standingOf(outcome, { bothBad: pair.bothBad, tooCoarse }),
    figures,
    limits: undefined,
    marks: pair.bothBad && (outcome === "agree" || outcome === "consistent") ? BOTH_BAD : undefined,
    coverageOnly: undefined,
  };
};
