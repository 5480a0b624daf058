import { normalCdf, normalQuantile } from "@evenhand/measurement/normal-distribution";
import { betaPertShape } from "../beta-pert/index.ts";
import type { ThreePoints } from "../beta-pert/index.ts";

/** Steps of the table in the normal score, and of the beta distribution's own grid. */
const steps = 512;
const gridSteps = 512;
const greatestScore = 6;

/** Cumulated beta density on an even grid of 0 to 1, by Simpson's rule over each step; the last is 1. */
const cumulatedBeta = (alpha: number, beta: number): Float64Array => {
  const density = (x: number): number => x ** (alpha - 1) * (1 - x) ** (beta - 1);
  const sums = new Float64Array(gridSteps + 1);
  let before = density(0);
  for (let index = 1; index <= gridSteps; index += 1) {
    const after = density(index / gridSteps);
    sums[index] = (sums[index - 1] ?? 0) + before + 4 * density((index - 0.5) / gridSteps) + after;
    before = after;
  }
  const whole = sums[gridSteps] ?? 1;
  return sums.map((sum) => sum / whole);
};

/** Walks up the grid for rising shares: the inverse of the cumulated density, linear between grid points. */
const inverse = (sums: Float64Array): ((share: number) => number) => {
  let index = 1;
  return (share) => {
    while (index < gridSteps && (sums[index] ?? 1) < share) index += 1;
    const below = sums[index - 1] ?? 0;
    const above = sums[index] ?? 1;
    const part = above > below ? Math.min(1, Math.max(0, (share - below) / (above - below))) : 0;
    return (index - 1 + part) / gridSteps;
  };
};

/** Cost as a function of the normal score: nothing below `from`, then a table at even steps. */
export type ScoreTable = { readonly from: number; readonly scale: number; readonly costs: Float64Array };

/** Table of one cost: its distribution seen from the normal score. */
export const scoreTable = (points: ThreePoints, probability: number): ScoreTable => {
  const from = probability >= 1 ? -greatestScore : Math.min(greatestScore, normalQuantile(1 - probability));
  const { alpha, beta } = betaPertShape(points);
  const quantile = inverse(cumulatedBeta(alpha, beta));
  const costs = new Float64Array(steps + 2);
  const width = (greatestScore - from) / steps;
  const missed = probability >= 1 ? 0 : 1 - probability;
  for (let index = 0; index <= steps + 1; index += 1) {
    const share = (normalCdf(from + index * width) - missed) / (1 - missed || 1);
    costs[index] = points.low + (points.high - points.low) * quantile(Math.max(0, Math.min(1, share)));
  }
  return { from: probability <= 0 ? Infinity : from, scale: width > 0 ? 1 / width : 0, costs };
};
