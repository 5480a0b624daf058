/** One plausible prior: its mean, the trials it weighs, and how plausible it is. The weights add up to 1. */
export type HyperNode = { readonly mean: number; readonly strength: number; readonly weight: number };

type Axis = { readonly from: number; readonly to: number; readonly steps: number };
type Point = { readonly logit: number; readonly logStrength: number; readonly logDensity: number };
type LogLikelihood = (prior: { readonly alpha: number; readonly beta: number }) => number;

/** Means from 0.05 % to 99.95 %, weights from a twentieth of a trial to 50,000 of them. */
const WIDEST = { logit: { from: -7.6, to: 7.6, steps: 38 }, logStrength: { from: -3, to: 10.8, steps: 23 } };
const FINE_STEPS = 32;

/** What lies this far under the likeliest has less than 1/20,000 of its weight. */
const DEPTH = 10;

const along = ({ from, to, steps }: Axis): number[] =>
  Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);

const expit = (logit: number): number => 1 / (1 + Math.exp(-logit));

/** A flat mean is μ(1 − μ) on the logit scale; a flat 1/(1 + M) is M/(1 + M)² on the logarithmic one. */
const logHyperprior = (mean: number, strength: number): number =>
  Math.log(mean * (1 - mean)) + Math.log(strength) - 2 * Math.log1p(strength);

const pointsOn = (logits: Axis, logStrengths: Axis, logLikelihood: LogLikelihood): Point[] =>
  along(logits).flatMap((logit) =>
    along(logStrengths).map((logStrength) => {
      const [mean, strength] = [expit(logit), Math.exp(logStrength)];
      const prior = { alpha: mean * strength, beta: (1 - mean) * strength };
      return { logit, logStrength, logDensity: logLikelihood(prior) + logHyperprior(mean, strength) };
    }),
  );

const plausible = (points: readonly Point[]): Point[] => {
  const most = Math.max(...points.map(({ logDensity }) => logDensity));
  return points
    .filter(({ logDensity }) => logDensity > most - DEPTH)
    .map((point) => ({ ...point, logDensity: point.logDensity - most }));
};

/** The stretch of an axis that holds all plausible points, one coarse step wider on each side. */
const around = (values: readonly number[], { from, to, steps }: Axis): Axis => {
  const step = (to - from) / steps;
  return { from: Math.min(...values) - step, to: Math.max(...values) + step, steps: FINE_STEPS };
};

/**
 * Posterior of mean and weight of a beta prior over a grid: once coarsely over everything, then finely where
 * it is not negligible.
 */
export const hyperGrid = (logLikelihood: LogLikelihood): HyperNode[] => {
  const coarse = plausible(pointsOn(WIDEST.logit, WIDEST.logStrength, logLikelihood));
  const fine = plausible(
    pointsOn(
      around(
        coarse.map(({ logit }) => logit),
        WIDEST.logit,
      ),
      around(
        coarse.map(({ logStrength }) => logStrength),
        WIDEST.logStrength,
      ),
      logLikelihood,
    ),
  );
  const total = fine.reduce((sum, { logDensity }) => sum + Math.exp(logDensity), 0);
  return fine.map(({ logit, logStrength, logDensity }) => ({
    mean: expit(logit),
    strength: Math.exp(logStrength),
    weight: Math.exp(logDensity) / total,
  }));
};
