import { posteriorWeights } from "../posterior-weights/index.ts";

/** A reading as two people took it: how much better it was found than stated, and what was declared of that difference. */
export type Apart = {
  /** Found less stated, counted toward the better: negative where it was found worse. */
  readonly foundBetter: number;
  /** u of the difference, as declared, positive. */
  readonly standardUncertainty: number;
  /** δ, the difference that matters; all three in one unit. */
  readonly delta: number;
  /** How much of a witness it is, to 1: less where other readings' errors go with its own (one gauge on eight cylinders: an eighth each). */
  readonly share?: number;
};

/** How far two people may scatter: u² = (noise·u)² + (dark·δ)², and how plausible that is. */
export type Rung = {
  /** R: the noise over the declared one, from 1. */
  readonly noise: number;
  /** τ: dark uncertainty (another spot, a generous hand), as a share of δ. */
  readonly dark: number;
  readonly weight: number;
};

/** One explanation, from "as declared" on, ever wider; the weights add up to 1. */
export type Ladder = readonly Rung[];

/** The two ways in which a pair may scatter more than was declared, each by itself. */
export type PairScatter = { readonly noisier: Ladder; readonly darker: Ladder };

/** Of fewer whole witnesses nothing is said. */
export const LEAST_READINGS = 10;

const ONLY_DECLARED: Ladder = Object.freeze([Object.freeze({ noise: 1, dark: 0, weight: 1 })]);

/** Nothing speaks against what was declared: today's rule and no other. */
export const AS_DECLARED: PairScatter = Object.freeze({ noisier: ONLY_DECLARED, darker: ONLY_DECLARED });

const NOISES = [1.25, 1.5, 2, 2.5, 3];
const DARKS = [0.1, 0.2, 0.35, 0.5, 0.7];

/** Three in four that all is as declared; every wider rung half as likely as the one before it. */
const DECLARED_PRIOR = 0.75;

/** Quasi-likelihood (Wedderburn 1974): see `pairScatter`. */
const EVIDENCE = 0.4;

/** One reading in twenty may be a slip, five times as far off as u and δ together. */
const GROSS_SHARE = 0.05;
const GROSS_SIZE = 5;
/** So many times as far no rung but the slip is left; beyond it exponentials would vanish for all alike. */
const FARTHEST = 15;

const noises = Float64Array.of(1, ...NOISES, ...DARKS.map(() => 1));
const darks = Float64Array.of(0, ...NOISES.map(() => 0), ...DARKS);
const RUNGS = noises.length;

/** Ratios to the first rung are multiplied so many times before their logarithm is taken, and cannot overflow. */
const AT_ONCE = 8;

/** Multiplies what one reading says for each rung, over what it says for the first. */
const weigh = (running: Float64Array, { foundBetter, standardUncertainty, delta }: Apart): void => {
  const gross = GROSS_SIZE * Math.sqrt(standardUncertainty ** 2 + delta ** 2);
  const floor = GROSS_SHARE / gross;
  const x = Math.min(foundBetter, FARTHEST * gross);
  const floorThere = x > 0 ? floor * Math.exp(-0.5 * (x / gross) ** 2) : 0;
  let first = 0;
  for (let rung = 0; rung < RUNGS; rung += 1) {
    const variance = ((noises[rung] ?? 1) * standardUncertainty) ** 2 + ((darks[rung] ?? 0) * delta) ** 2;
    const core = (1 - GROSS_SHARE) / Math.sqrt(variance);
    const atNought = core + floor;
    const there = x > 0 ? core * Math.exp((-0.5 * x * x) / variance) + floorThere : atNought;
    const says = (there / atNought) * there;
    if (rung === 0) first = says;
    running[rung] = (running[rung] ?? 1) * (says / first);
  }
};

const moveToLogarithms = (logarithms: Float64Array, running: Float64Array, share: number): void => {
  for (let rung = 0; rung < RUNGS; rung += 1) {
    logarithms[rung] = (logarithms[rung] ?? 0) + share * Math.log(running[rung] ?? 1);
    running[rung] = 1;
  }
};

/** Logarithm of what all readings say for each rung, over what they say for "as declared". */
const evidenceOf = (readings: readonly Apart[]): Float64Array => {
  const logarithms = new Float64Array(RUNGS);
  const running = new Float64Array(RUNGS).fill(1);
  let [share, multiplied] = [1, 0];
  for (const reading of readings) {
    const { share: own = 1 } = reading;
    if (own !== share || multiplied === AT_ONCE) {
      moveToLogarithms(logarithms, running, share);
      [share, multiplied] = [own, 0];
    }
    weigh(running, reading);
    multiplied += 1;
  }
  moveToLogarithms(logarithms, running, share);
  return logarithms;
};

/** The posterior over "as declared" and `steps` wider rungs, which stand from `from` on. */
const ladderOf = (evidence: Float64Array, from: number, steps: number): Ladder => {
  const halves = 1 - 0.5 ** steps;
  const rungs = [0, ...Array.from({ length: steps }, (_, step) => from + step)];
  const logarithms = rungs.map((rung, step) => {
    const prior = step === 0 ? DECLARED_PRIOR : ((1 - DECLARED_PRIOR) * 0.5 ** step) / halves;
    return Math.log(prior) + EVIDENCE * (evidence[rung] ?? 0);
  });
  const { weights } = posteriorWeights(logarithms);
  return rungs.map((rung, step) => ({
    noise: noises[rung] ?? 1,
    dark: darks[rung] ?? 0,
    weight: weights[step] ?? 0,
  }));
};

const check = ({ foundBetter, standardUncertainty, delta, share = 1 }: Apart): void => {
  if (!Number.isFinite(foundBetter)) {
    throw new RangeError(`The difference must be a number: ${foundBetter}`);
  }
  if (!(standardUncertainty > 0 && Number.isFinite(standardUncertainty))) {
    throw new RangeError(`The standard uncertainty must be a positive number: ${standardUncertainty}`);
  }
  if (!(delta >= 0 && Number.isFinite(delta))) {
    throw new RangeError(`The difference that matters must be a number from 0: ${delta}`);
  }
  if (!(share > 0 && share <= 1)) throw new RangeError(`A witness's share must be over 0, to 1: ${share}`);
};

/** What shares of a third and the like may miss a whole number by. */
const ROUNDING = 1e-9;

/** How many whole witnesses readings are. */
const witnessesOf = (readings: readonly Apart[]): number =>
  readings.reduce((sum, { share = 1 }) => sum + share, 0);

/** Whether readings are enough to say how far two people scatter: ten whole witnesses. */
export const areEnough = (readings: readonly Apart[]): boolean =>
  witnessesOf(readings) >= LEAST_READINGS - ROUNDING;

/**
 * How far two people really scatter, read off what was found *better* than stated.
 *
 * Idea: errors go both ways, a lie makes the statement better. So the errors on one side show the scatter, and a lie shows on the
 * other. Two explanations are weighed, each by itself: that both measured with R times the noise they declared, or that something
 * undeclared (another spot, a generous hand) adds τ·δ to every reading. A verdict has to survive both.
 *
 * Formula: σ² = (R·u)² + (τ·δ)²; an error x has the density f(x) = 0.95·N(x; σ) + 0.05·N(x; 5·√(u² + δ²)) (contaminated normal: Tukey
 * 1960, Box and Tiao 1968), so that one slip widens nothing. Honest people's two sides mirror each other, so the better side can stand
 * for both: each reading found better says 2·ln f(x) − ln f(0), each found worse, however much, ln f(0). The sum ℓ has its highest
 * mean at the true σ; times 0.4 = 2/5, the information over the variance of its slope for a normal error, it is as sharp as it ought to
 * be (quasi-likelihood: Wedderburn 1974). What was found worse always speaks for "as declared": a lie big enough to be found worse never
 * widens anything. The price: where a dealer lies in many readings, the scatter of the others is read too small.
 *
 * Grid: R = 1, 1.25, 1.5, 2, 2.5, 3 and τ = 0, 0.1, 0.2, 0.35, 0.5, 0.7; three quarters of the prior on "as declared" (Efron 2004 for
 * the idea of a null read off the data; dark uncertainty: Thompson and Ellison 2011). The grid's two edges and not its
 * inside, since a lie on one reading could then move the blame from τ to R, and widen another reading.
 *
 * @param readings in any order; fewer than ten whole witnesses say nothing
 * @returns the two ladders, from "as declared" on
 * @throws {RangeError} when an uncertainty is not positive, δ is negative, a difference is no number or a share not over 0 to 1
 * @example pairScatter([]).noisier // [{ noise: 1, dark: 0, weight: 1 }]
 * @example
 * pairScatter(Array(30).fill({ foundBetter: -1, standardUncertainty: 1, delta: 4 })).noisier[0].weight // 0.987…
 * @example
 * pairScatter(Array(30).fill({ foundBetter: 2, standardUncertainty: 1, delta: 4 })).noisier[4] // { noise: 2.5, dark: 0, weight: 0.505… }
 */
export const pairScatter = (readings: readonly Apart[]): PairScatter => {
  for (const reading of readings) check(reading);
  if (!areEnough(readings)) return AS_DECLARED;
  const evidence = evidenceOf(readings);
  return {
    noisier: ladderOf(evidence, 1, NOISES.length),
    darker: ladderOf(evidence, 1 + NOISES.length, DARKS.length),
  };
};
