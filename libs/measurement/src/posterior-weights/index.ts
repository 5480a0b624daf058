/** Weights that add up to 1, and the logarithm of what they were divided by. */
export type PosteriorWeights = { readonly weights: number[]; readonly logTotal: number };

/**
 * Logarithms of what is plausible (prior times likelihood) as weights that add up to 1. The largest is taken off first, so that
 * no exponential overflows and the largest never vanishes.
 *
 * @param logarithms at least one, none of them all −∞
 * @example posteriorWeights([-1000, -1000 + Math.log(3)]).weights // [0.25, 0.75]
 */
export const posteriorWeights = (logarithms: readonly number[]): PosteriorWeights => {
  const most = Math.max(...logarithms);
  const scaled = logarithms.map((logarithm) => Math.exp(logarithm - most));
  const total = scaled.reduce((sum, weight) => sum + weight, 0);
  return { weights: scaled.map((weight) => weight / total), logTotal: most + Math.log(total) };
};
