import { normalCdf, normalQuantile } from "@evenhand/measurement/normal-distribution";
import { betaPertShape } from "../beta-pert/index.ts";
import type { ThreePoints } from "../beta-pert/index.ts";

/** Scores lie between these; Box and Muller's method cannot leave them, nor can two of its scores added with weights. */
export const greatestScore = 10;
/** Even cells of the score; one is 0.01 standard deviations wide, far under what ten thousand draws can tell apart. */
const cells = 2048;
export const cellsPerScore = cells / (2 * greatestScore);

const centerOf = (cell: number): number => (cell + 0.5) / cellsPerScore - greatestScore;

/** Φ at the middle of every cell. */
const shares = Float64Array.from({ length: cells }, (_, cell) => normalCdf(centerOf(cell)));

/** Steps of the beta distribution's own grid, and logarithms at every half step: density by one exponential each. */
const steps = 256;
const logarithms = Float64Array.from({ length: 2 * steps + 1 }, (_, half) => Math.log(half / (2 * steps)));

/** Power of 0 to 0 is 1, which the logarithm alone would not give. */
const powerOf = (half: number, exponent: number): number =>
  exponent === 0 ? 0 : exponent * (logarithms[half] ?? 0);

/** Cumulated beta density at even steps from 0 to 1, by Simpson's rule over each; the last is 1. */
const cumulatedBeta = (alpha: number, beta: number): Float64Array => {
  const density = (half: number): number =>
    Math.exp(powerOf(half, alpha - 1) + powerOf(2 * steps - half, beta - 1));
  const sums = new Float64Array(steps + 1);
  let before = density(0);
  for (let step = 1; step <= steps; step += 1) {
    const after = density(2 * step);
    sums[step] = (sums[step - 1] ?? 0) + before + 4 * density(2 * step - 1) + after;
    before = after;
  }
  const whole = sums[steps] ?? 1;
  return sums.map((sum) => sum / whole);
};

/** Walks up the grid for rising shares: the inverse of the cumulated density, linear between grid points. */
const inverse = (sums: Float64Array): ((share: number) => number) => {
  let step = 1;
  return (share) => {
    while (step < steps && (sums[step] ?? 1) < share) step += 1;
    const below = sums[step - 1] ?? 0;
    const width = (sums[step] ?? 1) - below;
    const part = width > 0 ? Math.min(1, Math.max(0, (share - below) / width)) : 0;
    return (step - 1 + part) / steps;
  };
};

/** The score from which a cost falls due, and what it then is in every cell of the score. */
export type ScoreTable = { readonly from: number; readonly costs: Float64Array };

/** Φ of it is 1 − p. */
const scoreFrom = (probability: number): number => {
  if (probability <= 0) return Number.POSITIVE_INFINITY;
  return probability >= 1 ? Number.NEGATIVE_INFINITY : normalQuantile(1 - probability);
};

/**
 * A cost by its score: nothing below `from`, and the beta-PERT quantile at (Φ − (1 − p))/p above. The cell in which it begins
 * to fall due holds the whole least cost, never a part of it, for nobody can be asked to pay that.
 */
export const scoreTable = (points: ThreePoints, probability: number): ScoreTable => {
  const costs = new Float64Array(cells);
  const from = scoreFrom(probability);
  if (probability <= 0) return { from, costs };
  const { alpha, beta } = betaPertShape(points);
  const quantile = inverse(cumulatedBeta(alpha, beta));
  const first = Math.max(0, Math.floor((from + greatestScore) * cellsPerScore));
  const width = points.high - points.low;
  for (let cell = first; cell < cells; cell += 1) {
    const share = Math.max(0, ((shares[cell] ?? 1) - (1 - probability)) / probability);
    costs[cell] = points.low + width * quantile(share);
  }
  return { from, costs };
};
