import type { Uncertainty } from "../estimate/index.ts";
import { coverageFactor } from "../student-factor/index.ts";
import { lossOf } from "../welch-satterthwaite/index.ts";

/** One item, one side that would read again, and the other side as it stands. All in the item's base unit. */
export type ReadingPlan = {
  /** Δ as it stands now. */
  readonly difference: number;
  /** δ, the difference that matters. */
  readonly delta: number;
  /** s₀ and its degrees of freedom. */
  readonly repeatability: Uncertainty;
  /** r, the step of the indicator. */
  readonly resolution: number;
  /** a, the half-width of the stated accuracy. */
  readonly accuracy: number;
  /** p, the standard uncertainty of touching one spot; 0 where s₀ already is the spread over spots. */
  readonly placement: number;
  /** How many spots are touched: a fixed number, or "each" when every reading takes a spot of its own. */
  readonly spots: number | "each";
  /** The unshared uncertainty of the side that does not read again. */
  readonly other: Uncertainty;
  /** The most readings worth proposing. 100 when left out. */
  readonly most?: number;
  readonly coverage?: number;
};

/**
 * - `readings`: that many readings in all settle the item, if Δ stays what it is
 * - `tooMany`: some number would, but more than `most`
 * - `never`: what no further reading reduces is already too much
 */
export type ReadingsToSettle =
  | { readonly kind: "readings"; readonly readings: number }
  | { readonly kind: "tooMany"; readonly most: number }
  | { readonly kind: "never"; readonly floor: number };

/** What stays however often one reads, as a variance; the placement stays too where the spots do. */
const fixedVarianceOf = ({ resolution, accuracy, placement, spots, other }: ReadingPlan): number =>
  (resolution / Math.sqrt(12)) ** 2 +
  (accuracy / Math.sqrt(3)) ** 2 +
  (spots === "each" ? 0 : placement / Math.sqrt(spots)) ** 2 +
  other.standardUncertainty ** 2;

/** U of what stays: all of it is taken as known but the other side. */
const floorOf = ({ other, coverage }: ReadingPlan, fixed: number): number => {
  const loss = lossOf(other.standardUncertainty, fixed, other.degreesOfFreedom);
  return coverageFactor(1 / loss, coverage) * Math.sqrt(fixed);
};

/** The variance of so many readings, beside what stays. */
const ofReadings = ({ repeatability, placement, spots }: ReadingPlan, readings: number): number =>
  (repeatability.standardUncertainty / Math.sqrt(readings)) ** 2 +
  (spots === "each" ? (placement / Math.sqrt(readings)) ** 2 : 0);

/** What may be rounding in a comparison that only spares work. */
const ROUNDING = 1e-9;

/** From how many readings on U can come down to the target at all: Student's factor is never under the normal one. */
const leastReadings = (plan: ReadingPlan, fixed: number, target: number, most: number): number => {
  const variance = (target / coverageFactor(Number.POSITIVE_INFINITY, plan.coverage)) ** 2 * (1 + ROUNDING);
  const least = Math.floor((ofReadings(plan, 1) / (variance - fixed)) * (1 - ROUNDING));
  return variance <= fixed ? most + 1 : Math.max(1, least);
};

/**
 * U with so many readings: the same sum of parts as above, written out, for it is asked a hundred times a line.
 *
 * @param fixed the variance of what stays
 */
const expandedWith = (plan: ReadingPlan, fixed: number, readings: number): number => {
  const { repeatability, other, placement, spots } = plan;
  const ofOther = other.standardUncertainty ** 2;
  const ofScatter = (repeatability.standardUncertainty / Math.sqrt(readings)) ** 2;
  const ofPlacement = spots === "each" ? (placement / Math.sqrt(readings)) ** 2 : 0;
  const variance = fixed + ofScatter + ofPlacement;
  // Resolution, accuracy and placement are known: they lose no degrees of freedom.
  const loss =
    variance === 0
      ? 0
      : (ofOther / variance) ** 2 / other.degreesOfFreedom +
        (ofScatter / variance) ** 2 / repeatability.degreesOfFreedom;
  return coverageFactor(1 / loss, plan.coverage) * Math.sqrt(variance);
};

/**
 * How many readings one side would have to take for the interval [Δ − U, Δ + U] to fall wholly within or
 * wholly outside [−δ, δ], supposing the difference stays what it is now: U has to come down to |δ − |Δ||.
 * u² = s₀²/n + r²/12 + a²/3 + p²/m for the reading side (JCGM 100:2008, 4.2 and 4.3), plus the other side's.
 *
 * The number is of readings in all, not of further ones. It is arithmetic on the present difference, which new
 * readings will move.
 *
 * @throws {RangeError} when δ is negative
 * @example
 * readingsToSettle({
 *   difference: 0, delta: 1, resolution: 0, accuracy: 0, placement: 0, spots: 1,
 *   repeatability: { standardUncertainty: 1, degreesOfFreedom: Infinity },
 *   other: { standardUncertainty: 0, degreesOfFreedom: Infinity },
 * }) // { kind: "readings", readings: 4 }
 */
export const readingsToSettle = (plan: ReadingPlan): ReadingsToSettle => {
  if (!(plan.delta >= 0))
    throw new RangeError(`The difference that matters must be a number from 0: ${plan.delta}`);
  const target = Math.abs(plan.delta - Math.abs(plan.difference));
  const most = plan.most ?? 100;
  const fixed = fixedVarianceOf(plan);
  const floor = floorOf(plan, fixed);
  if (floor >= target) return { kind: "never", floor };
  for (let readings = leastReadings(plan, fixed, target, most); readings <= most; readings += 1) {
    if (expandedWith(plan, fixed, readings) <= target) return { kind: "readings", readings };
  }
  return { kind: "tooMany", most };
};
