import { normalCdf } from "../normal-distribution/index.ts";
import type { Apart, Ladder, PairScatter, Rung } from "../over-dispersion/index.ts";
import { posteriorWeights } from "../posterior-weights/index.ts";

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

/** So many times the slab's width away a reading is off, and exponentials begin to vanish. */
const FARTHEST = 25;

const checkDelta = ({ delta }: Apart): void => {
  if (!(delta > 0)) throw new RangeError(`The difference that matters must be positive: ${delta}`);
};

/** Explanations of a pair's scatter as variances: `noise` times u², and `dark` times δ². */
type Widths = readonly { readonly noise: number; readonly dark: number; readonly weight: number }[];

/** Rungs that weigh less change no chance. */
const NEGLIGIBLE = 1e-7;

const isDeclared = ({ noise, dark }: Rung): boolean => noise === 1 && dark === 0;

/** The rungs of both explanations, half each; "as declared", which is in both, once. */
const widthsOf = ({ noisier, darker }: PairScatter): Widths => {
  const rungs = [...noisier, ...darker];
  const declared = rungs.filter(isDeclared).reduce((sum, { weight }) => sum + weight / 2, 0);
  const wider = rungs
    .filter((rung) => !isDeclared(rung))
    .map(({ noise, dark, weight }) => ({ noise: noise ** 2, dark: dark ** 2, weight: weight / 2 }));
  return [{ noise: 1, dark: 0, weight: declared }, ...wider].filter(({ weight }) => weight >= NEGLIGIBLE);
};

/** What of one ladder is wider than declared, as one rung of the same mean variance. */
const inTwo = (ladder: Ladder): Ladder => {
  const [first, ...wider] = ladder;
  const weight = wider.reduce((sum, rung) => sum + rung.weight, 0);
  if (first === undefined || weight < NEGLIGIBLE) return ladder.slice(0, 1);
  const meanOf = (of: (rung: Rung) => number): number =>
    Math.sqrt(wider.reduce((sum, rung) => sum + rung.weight * of(rung) ** 2, 0) / weight);
  return [first, { noise: meanOf(({ noise }) => noise), dark: meanOf(({ dark }) => dark), weight }];
};

/**
 * A pair's scatter with one rung for all that is noisier than declared and one for all that is darker, each of their mean variance: a
 * quarter of the work, and the chances stay calibrated.
 *
 * @param scatter of `pairScatter`: ladders from "as declared" on
 * @example inThree(pairScatter(readings)).noisier.length // 2
 */
export const inThree = ({ noisier, darker }: PairScatter): PairScatter => ({
  noisier: inTwo(noisier),
  darker: inTwo(darker),
});

const density = (x: number, variance: number): number =>
  Math.exp((-0.5 * x * x) / variance) / Math.sqrt(variance);

/** Beyond it the normal distribution is 0 or 1 to the last digit. */
const CERTAIN = 8.3;
const atMost = (z: number): number => (z > CERTAIN ? 1 : z < -CERTAIN ? 0 : normalCdf(z));

/** A reading no farther off than exponentials can tell. */
const within = ({ foundBetter, standardUncertainty, delta }: Apart): number => {
  const farthest = FARTHEST * Math.sqrt(standardUncertainty ** 2 + (SLAB_SIZE * delta) ** 2);
  return Math.max(-farthest, Math.min(farthest, foundBetter));
};

const varianceOf = ({ noise, dark }: Widths[number], { standardUncertainty: u, delta }: Apart): number =>
  noise * u * u + dark * delta * delta;

/** How likely a reading is if what was stated is true, and if it is off. */
const spikeAndSlab = (reading: Apart, widths: Widths): readonly [spike: number, slab: number] => {
  const x = within(reading);
  const slabVariance = (SLAB_SIZE * reading.delta) ** 2;
  let [spike, slab] = [0, 0];
  for (const width of widths) {
    const variance = varianceOf(width, reading);
    spike += width.weight * density(x, variance);
    slab += width.weight * density(x, variance + slabVariance);
  }
  return [spike, slab];
};

/** Each factor is at least one in 200, so that so many can be multiplied before their logarithm is taken. */
const AT_ONCE = 32;

const moveToLogarithms = (logarithms: number[], running: number[]): void => {
  for (let index = 0; index < SHARES.length; index += 1) {
    logarithms[index] = (logarithms[index] ?? 0) + Math.log(running[index] ?? 1);
    running[index] = 1;
  }
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
  const widths = widthsOf(scatter);
  const running = SHARES.map(() => 1);
  const logarithms = SHARES.map(() => 0);
  for (const [place, reading] of readings.entries()) {
    checkDelta(reading);
    const [spike, slab] = spikeAndSlab(reading, widths);
    const most = Math.max(spike, slab);
    for (let index = 0; index < SHARES.length; index += 1) {
      const share = SHARES[index] ?? 0;
      running[index] = (running[index] ?? 1) * (((1 - share) * spike + share * slab) / most);
    }
    if (place % AT_ONCE === AT_ONCE - 1) moveToLogarithms(logarithms, running);
  }
  moveToLogarithms(logarithms, running);
  const { weights } = posteriorWeights(logarithms);
  return SHARES.map((share, index) => ({ share, weight: weights[index] ?? 0 }));
};

/** What a pair's chances are worked out with, made once for many readings. */
export type PairChance = { readonly widths: Widths; readonly shares: ShareOff };

/**
 * What `chanceWorse` and `chanceOff` need of a pair.
 *
 * @param scatter of `pairScatter`
 * @param shares of `shareOff`, over all readings of the pair
 * @example pairChance(AS_DECLARED, shareOff([], AS_DECLARED)).shares.length // 7
 */
export const pairChance = (scatter: PairScatter, shares: ShareOff): PairChance => ({
  widths: widthsOf(scatter),
  shares,
});

/**
 * The chance that a thing is worse than stated by more than what matters: spike and slab (Mitchell and Beauchamp 1988) with the pair's own scatter.
 *
 * P(worse by more than δ) = Σ over π of π·f₁(x)·P(truth < −δ | x, off) / ((1 − π)·f₀(x) + π·f₁(x)). A difference that
 * scatter explains has a small chance, however sure it is that the two figures are not the same to the last digit: unlike P(worse than
 * stated by anything), which is a half where nothing is wrong.
 *
 * @param reading one of the pair's
 * @param pair of `pairChance`: the scatter of `pairScatter`, the shares of `shareOff`, over all readings of the pair
 * @throws {RangeError} when δ is not positive
 * @example
 * chanceWorse({ foundBetter: -4, standardUncertainty: 1, delta: 4 }, pairChance(AS_DECLARED, [{ share: 0.1, weight: 1 }])) // 0.4625…
 * @example
 * chanceWorse({ foundBetter: -8, standardUncertainty: 1, delta: 4 }, pairChance(AS_DECLARED, [{ share: 0.1, weight: 1 }])) // 0.9999…
 */
export const chanceWorse = (reading: Apart, { widths, shares }: PairChance): number => {
  checkDelta(reading);
  const x = within(reading);
  const slabVariance = (SLAB_SIZE * reading.delta) ** 2;
  let [spike, slab, beyond] = [0, 0, 0];
  for (const width of widths) {
    const variance = varianceOf(width, reading);
    const whole = variance + slabVariance;
    const off = width.weight * density(x, whole);
    // Where the truth lies, given that it is off: the reading drawn toward what was stated.
    const truth = (x * slabVariance) / whole;
    spike += width.weight * density(x, variance);
    slab += off;
    beyond += off * atMost((-reading.delta - truth) / Math.sqrt((variance * slabVariance) / whole));
  }
  let odds = 0;
  for (const { share, weight } of shares) odds += (weight * share) / ((1 - share) * spike + share * slab);
  return Math.min(1, odds * beyond);
};

/**
 * The chances that a thing is worse, and that it is better, than stated by more than what matters: `chanceWorse` both ways.
 *
 * @throws {RangeError} when δ is not positive
 * @example chanceOff({ foundBetter: 0, standardUncertainty: 1, delta: 4 }, pair) // both alike
 */
export const chanceOff = (reading: Apart, pair: PairChance): ChanceOff => ({
  worse: chanceWorse(reading, pair),
  better: chanceWorse({ ...reading, foundBetter: 0 - reading.foundBetter }, pair),
});
