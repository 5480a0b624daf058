import { betaPertMean, betaPertVariance } from "../beta-pert/index.ts";
import type { ThreePoints } from "../beta-pert/index.ts";
import { drawTotals } from "./draw.ts";

/** A cost that falls due with some probability; costs of one group (a section of the sheet) may go together. */
export type UncertainCost = ThreePoints & { readonly probability: number; readonly group: string };

export type CostSumOptions = {
  /** Correlation of the normal scores of two costs of one group, from 0 to 1. */
  readonly correlation: number;
  readonly draws: number;
  /** Same seed, same figures, for ever. */
  readonly seed: number;
};

/** In the unit of the costs. `p10`, `p50` and `p90`: the total is at most this in 10, 50 and 90 of 100 cases. */
export type CostSum = {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
  /** Of the draws. */
  readonly mean: number;
  readonly standardDeviation: number;
  /** Without drawing: the mean holds at any correlation, the standard deviation at none. */
  readonly closedForm: { readonly mean: number; readonly standardDeviation: number };
};

/**
 * Mean and standard deviation of the total at no correlation: Σ pμ and Σ p(σ² + μ²) − (pμ)², with the beta-PERT μ and σ².
 *
 * @example closedForm([{ low: 8, likely: 10, high: 24, probability: 0.5, group: "body" }]).mean // 6
 */
export const closedForm = (costs: readonly UncertainCost[]): CostSum["closedForm"] => {
  let mean = 0;
  let variance = 0;
  for (const cost of costs) {
    const one = betaPertMean(cost);
    mean += cost.probability * one;
    variance += cost.probability * (betaPertVariance(cost) + one * one) - (cost.probability * one) ** 2;
  }
  return { mean, standardDeviation: Math.sqrt(variance) };
};

/**
 * Quantile of sorted draws: the least total that this share of them does not exceed (Hyndman and Fan's type 1). Always one
 * of the totals drawn: between nothing and the least cost there is no sum that anybody could be asked to pay.
 */
const quantileOf = (sorted: Float64Array, share: number): number =>
  // Less a rounding, or a tenth of 30 draws would be the fourth.
  sorted[Math.max(0, Math.ceil(sorted.length * share - 1e-9) - 1)] ?? 0;

const moments = (values: Float64Array): { mean: number; standardDeviation: number } => {
  let sum = 0;
  for (const value of values) sum += value;
  const mean = sum / values.length;
  let squares = 0;
  for (const value of values) squares += (value - mean) ** 2;
  return { mean, standardDeviation: Math.sqrt(squares / Math.max(1, values.length - 1)) };
};

const check = (costs: readonly UncertainCost[], { correlation, draws }: CostSumOptions): void => {
  if (!(correlation >= 0 && correlation <= 1)) throw new RangeError("A correlation lies between 0 and 1.");
  if (!Number.isInteger(draws) || draws < 1)
    throw new RangeError("The number of draws is a whole number from 1.");
  if (costs.some(({ probability }) => !(probability >= 0 && probability <= 1))) {
    throw new RangeError("A probability lies between 0 and 1.");
  }
};

/**
 * What everything in doubt may cost together. Each cost has a normal score; scores of one group share the part that makes their
 * correlation. The score decides whether the cost falls due (probability p) and, where it does, how much of its beta-PERT range:
 * cost = 0 for Φ(z) ≤ 1 − p, else the quantile at (Φ(z) − (1 − p))/p. So each cost keeps its own distribution exactly, whatever
 * the correlation. Beta-PERT with λ = 4, variance (μ − l)(h − μ)/7.
 *
 * @throws {RangeError} for a correlation or probability outside 0 to 1, or three points out of order
 * @example costSum([{ low: 5, likely: 5, high: 5, probability: 1, group: "tires" }], { correlation: 0, draws: 10, seed: 1 }).p50 // 5
 */
export const costSum = (costs: readonly UncertainCost[], options: CostSumOptions): CostSum => {
  check(costs, options);
  const totals = drawTotals(costs, options).sort();
  return {
    p10: quantileOf(totals, 0.1),
    p50: quantileOf(totals, 0.5),
    p90: quantileOf(totals, 0.9),
    ...moments(totals),
    closedForm: closedForm(costs),
  };
};
