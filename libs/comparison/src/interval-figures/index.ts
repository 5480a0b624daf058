import type { ReadingFigures, SideFigures } from "@evenhand/shared/comparison";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { eNumber } from "@evenhand/measurement/e-number";
import { ROUNDING_SHARE } from "@evenhand/measurement/equivalence";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { studentTail } from "@evenhand/measurement/student-tail";
import { zetaScore } from "@evenhand/measurement/zeta-score";
import { asTaken, leftOf } from "../use-allowed/index.ts";

/** Which way a car is worse: at lower values, at higher ones, away from a target, or not known which way. */
export type WorseWay =
  | { readonly is: "lower" }
  | { readonly is: "higher" }
  | { readonly is: "unknown" }
  | { readonly is: "away"; readonly target: number };

const LOWER: WorseWay = { is: "lower" };
const HIGHER: WorseWay = { is: "higher" };
const UNKNOWN: WorseWay = { is: "unknown" };

/**
 * Two means and the uncertainty of their difference, all in one unit. `difference` is A − B as it was read; `useAllowed`, of the
 * same sign, how far it may rightly lie that way.
 */
export type MeasuredPair = {
  readonly unit: UnitSymbol;
  readonly a: SideFigures;
  readonly b: SideFigures;
  readonly difference: number;
  readonly useAllowed?: number;
  /** What corrections add to the difference; `undefined` where there are none. */
  readonly correction?: number | undefined;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  readonly delta: number;
  readonly worse: WorseWay;
};

/** Which way a reading item is worse. */
export const worseWay = (spec: Pick<ReadingSpec, "betterIs" | "target">): WorseWay => {
  if (spec.betterIs === "higher") return LOWER;
  if (spec.betterIs === "lower") return HIGHER;
  return spec.target === undefined ? UNKNOWN : { is: "away", target: spec.target };
};

type Means = {
  readonly a: { readonly mean: number };
  readonly b: { readonly mean: number };
  readonly difference: number;
};

/**
 * How far B lies on the worse side of A; `undefined` where nobody knows which side is worse.
 *
 * @example worseBy({ a: { mean: 8 }, b: { mean: 5 }, difference: 3 }, { is: "lower" }) // 3
 */
export const worseBy = ({ a, b, difference }: Means, worse: WorseWay): number | undefined => {
  if (worse.is === "lower") return difference;
  if (worse.is === "higher") return -difference;
  if (worse.is === "unknown") return undefined;
  return Math.abs(b.mean - worse.target) - Math.abs(a.mean - worse.target);
};

const probabilityAtMost = (t: number, degreesOfFreedom: number): number => {
  const tail = studentTail(Math.abs(t), degreesOfFreedom);
  return t > 0 ? 1 - tail : tail;
};

/**
 * P(worse than stated): that the true difference lies on the worse side. Where no side is the worse one, that the
 * difference is larger than what matters, either way.
 */
const probabilityWorse = (pair: MeasuredPair, difference: number, lowerTail: number): number => {
  const { standardUncertainty: u, degreesOfFreedom: nu, delta } = pair;
  const { a, b } = asTaken(pair);
  const worse = worseBy({ a, b, difference }, pair.worse);
  if (worse === undefined) {
    if (u === 0) return Math.abs(difference) > delta ? 1 : 0;
    return probabilityAtMost((difference - delta) / u, nu) + probabilityAtMost((-difference - delta) / u, nu);
  }
  if (u === 0) return worse > 0 ? 1 : 0;
  if (Math.abs(worse) === Math.abs(difference)) return worse > 0 ? 1 - lowerTail : lowerTail;
  return probabilityAtMost(worse / u, nu);
};

const rounded = (value: number, delta: number): number =>
  Math.abs(value) < ROUNDING_SHARE * delta ? 0 : value;

const finiteOrNull = (value: number): number | null => (Number.isFinite(value) ? value : null);

/**
 * The figures of a difference: U = k·u with the two-sided 95 % Student factor, the zeta score (ISO 13528:2015,
 * 9.6), E_n (ISO/IEC 17043:2010, B.3.1.3), the p-value of no difference, P(worse), all of what the use allowed leaves of it. A
 * difference smaller than 1e-9 of δ is rounding and becomes 0.
 *
 * @returns `qValue` is null: it depends on the other entries
 * @example
 * intervalFigures({ unit: "1", a, b, difference: 1, standardUncertainty: 0.5, degreesOfFreedom: Infinity,
 *   delta: 2, worse: { is: "lower" } }).zetaScore // 2
 */
export const intervalFigures = (measured: MeasuredPair): ReadingFigures => {
  const { unit, a, b, standardUncertainty, degreesOfFreedom, delta, useAllowed = 0 } = measured;
  const difference = rounded(leftOf(measured), delta);
  const factor = coverageFactor(degreesOfFreedom);
  const expanded = factor * standardUncertainty;
  const lowerTail =
    standardUncertainty === 0
      ? difference === 0
        ? 0.5
        : 0
      : studentTail(Math.abs(difference) / standardUncertainty, degreesOfFreedom);
  return {
    of: "reading",
    unit,
    a,
    b,
    difference: rounded(measured.difference, delta),
    // There or not, as what settles it is below: all figures of readings are of one shape.
    useAllowed: useAllowed === 0 ? undefined : useAllowed,
    correction: measured.correction,
    standardUncertainty,
    degreesOfFreedom: finiteOrNull(degreesOfFreedom),
    coverageFactor: factor,
    expandedUncertainty: expanded,
    delta,
    zetaScore: finiteOrNull(zetaScore(difference, standardUncertainty)),
    eNumber: finiteOrNull(eNumber(difference, expanded, 0)),
    pValue: 2 * lowerTail,
    qValue: null,
    probabilityWorse: probabilityWorse(measured, difference, lowerTail),
    settle: undefined,
  };
};
