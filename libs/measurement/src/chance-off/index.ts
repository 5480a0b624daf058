import { normalCdf } from "../normal-distribution/index.ts";
import type { Apart, PairScatter } from "../over-dispersion/index.ts";

/** How often readings of this pair are truly off, as far as they tell; the weights add up to 1. */
export type ShareOff = readonly { readonly share: number; readonly weight: number }[];

export type ChanceOff = {
  /** That the thing is worse than stated by more than δ. */
  readonly worse: number;
  /** That it is better by more than δ. */
  readonly better: number;
};

/** What is off is off by some 2 δ, either way (an assumption). */
const SLAB_SIZE = 2;

/** From one reading in 200 to one in two, equal steps of the logarithm, all alike before anything was read. */
const SHARES = [0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5];

/** Rungs that weigh less change no chance. */
const NEGLIGIBLE = 1e-7;
/** So many times the slab's width away a reading is off, and exponentials begin to vanish. */
const FARTHEST = 25;

const checkDelta = ({ delta }: Apart): void => {
  if (!(delta > 0)) throw new RangeError(`The difference that matters must be positive: ${delta}`);
};

type Likelihood = {
  /** If the statement is true. */
  spike: number;
  /** If it is off: altogether, and with the thing worse, or better, by more than δ. */
  slab: number;
  worse: number;
  better: number;
};

const density = (x: number, variance: number): number =>
  Math.exp((-0.5 * x * x) / variance) / Math.sqrt(variance);

/** What a reading says, over both explanations of the pair's scatter, half each. */
const likelihoodOf = (reading: Apart, { noisier, darker }: PairScatter): Likelihood => {
  const { standardUncertainty: u, delta } = reading;
  const slabVariance = (SLAB_SIZE * delta) ** 2;
  const farthest = FARTHEST * Math.sqrt(u ** 2 + slabVariance);
  const x = Math.max(-farthest, Math.min(farthest, reading.foundBetter));
  const sum: Likelihood = { spike: 0, slab: 0, worse: 0, better: 0 };
  for (const ladder of [noisier, darker]) {
    for (const { noise, dark, weight } of ladder) {
      if (weight < NEGLIGIBLE) continue;
      const variance = (noise * u) ** 2 + (dark * delta) ** 2;
      const slab = (weight / 2) * density(x, variance + slabVariance);
      // Where the truth lies, given that it is off: the reading drawn toward what was stated.
      const truth = (x * slabVariance) / (variance + slabVariance);
      const spread = Math.sqrt((variance * slabVariance) / (variance + slabVariance));
      sum.spike += (weight / 2) * density(x, variance);
      sum.slab += slab;
      sum.worse += slab * normalCdf((-delta - truth) / spread);
      sum.better += slab * normalCdf((truth - delta) / spread);
    }
  }
  return sum;
};

/**
 * How many of a pair's readings are truly off, read off all of them: the posterior of the share π on a small grid.
 *
 * Idea: two groups (Efron 2004). A reading scatters about what was stated with the pair's own scatter (the spike), or, with the share π,
 * about a truth that lies some 2 δ from it (the slab). Likelihood: Π (1 − π)·f₀(x) + π·f₁(x).
 *
 * @throws {RangeError} when a δ is not positive
 * @example shareOff([], AS_DECLARED).length // 7
 */
export const shareOff = (readings: readonly Apart[], scatter: PairScatter): ShareOff => {
  for (const reading of readings) checkDelta(reading);
  const logarithms = SHARES.map(() => 0);
  for (const reading of readings) {
    const { spike, slab } = likelihoodOf(reading, scatter);
    for (const [index, share] of SHARES.entries()) {
      logarithms[index] = (logarithms[index] ?? 0) + Math.log((1 - share) * spike + share * slab);
    }
  }
  const most = Math.max(...logarithms);
  const weights = logarithms.map((logarithm) => Math.exp(logarithm - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return SHARES.map((share, index) => ({ share, weight: (weights[index] ?? 0) / total }));
};

/**
 * The chance that a reading is off by more than what matters: spike and slab (Mitchell and Beauchamp 1988) with the pair's own scatter.
 *
 * P(worse by more than δ) = Σ over π of π·f₁(x)·P(truth < −δ | x, off) / ((1 − π)·f₀(x) + π·f₁(x)). A difference that
 * scatter explains has a small chance, however sure it is that the two figures are not the same to the last digit: unlike P(worse than
 * stated by anything), which is a half where nothing is wrong.
 *
 * @param reading one of the pair's
 * @param scatter of `pairScatter`
 * @param shares of `shareOff`, over all readings of the pair
 * @throws {RangeError} when δ is not positive
 * @example
 * chanceOff({ foundBetter: -4, standardUncertainty: 1, delta: 4 }, AS_DECLARED, [{ share: 0.1, weight: 1 }]).worse // 0.4625…
 * @example
 * chanceOff({ foundBetter: -8, standardUncertainty: 1, delta: 4 }, AS_DECLARED, [{ share: 0.1, weight: 1 }]).worse // 0.9999…
 */
export const chanceOff = (reading: Apart, scatter: PairScatter, shares: ShareOff): ChanceOff => {
  checkDelta(reading);
  const { spike, slab, worse, better } = likelihoodOf(reading, scatter);
  let odds = 0;
  for (const { share, weight } of shares) odds += (weight * share) / ((1 - share) * spike + share * slab);
  return { worse: Math.min(1, odds * worse), better: Math.min(1, odds * better) };
};
