import gammaln from "@stdlib/math-base-special-gammaln";
import { betaQuantile } from "../beta-distribution/index.ts";
import type { Interval } from "../proportion-interval/index.ts";
import { hyperGrid } from "./hyper-grid.ts";
import type { HyperNode } from "./hyper-grid.ts";

/** One group's count: of so many cars, so many held up. */
export type Group = { readonly successes: number; readonly trials: number };

/** A beta distribution of shares; alpha + beta is how many trials it weighs. */
export type BetaPrior = { readonly alpha: number; readonly beta: number };

/** How shares vary over groups: the middle of what is plausible, and everything that is, with its weight. */
export type BetaBinomialFit = { readonly prior: BetaPrior; readonly nodes: readonly HyperNode[] };

export type PooledShare = Interval & { readonly mean: number };

const logBeta = (alpha: number, beta: number): number =>
  gammaln(alpha) + gammaln(beta) - gammaln(alpha + beta);

/**
 * Logarithm of the probability of all groups' counts if each group's share is drawn from the prior, up to the
 * binomial coefficients, which do not depend on it: Σ ln B(α + x, β + n − x) − ln B(α, β).
 *
 * @example betaBinomialLogLikelihood([{ successes: 1, trials: 2 }], { alpha: 1, beta: 1 }) // -1.7917…
 */
export const betaBinomialLogLikelihood = (groups: readonly Group[], { alpha, beta }: BetaPrior): number => {
  const none = logBeta(alpha, beta);
  let sum = 0;
  for (const { successes, trials } of groups) {
    sum += logBeta(alpha + successes, beta + trials - successes) - none;
  }
  return sum;
};

const check = (groups: readonly Group[]): void => {
  if (groups.length === 0) throw new RangeError("A fit needs at least one group.");
  if (groups.some(({ successes, trials }) => !(successes >= 0 && successes <= trials))) {
    throw new RangeError("Successes must be 0 to the trials of their group.");
  }
};

/**
 * How the share varies from group to group: an empirical-Bayes fit of the beta-binomial. The hyperprior is
 * weak: every mean is as likely, and so is every share of shrinkage 1/(1 + α + β) (uniform shrinkage prior,
 * Daniels 1999). `prior` has the posterior mean of the mean and the geometric posterior mean of the weight.
 *
 * How many groups and trials are enough to pool at all is the caller's to decide.
 *
 * @throws {RangeError} without groups, or for a count out of range
 * @example
 * fitBetaBinomial([{ successes: 18, trials: 20 }, { successes: 27, trials: 30 }]).prior
 * // { alpha: 3.77…, beta: 1.19… }
 */
export const fitBetaBinomial = (groups: readonly Group[]): BetaBinomialFit => {
  check(groups);
  const nodes = hyperGrid((prior) => betaBinomialLogLikelihood(groups, prior));
  const mean = nodes.reduce((sum, node) => sum + node.weight * node.mean, 0);
  const strength = Math.exp(nodes.reduce((sum, node) => sum + node.weight * Math.log(node.strength), 0));
  return { prior: { alpha: mean * strength, beta: (1 - mean) * strength }, nodes };
};

/**
 * A group's share, pooled with the others': its mean (α + x)/(α + β + n) always lies between the group's own
 * share and the prior's mean. The interval is of a beta distribution with that mean and with the variance over
 * everything plausible of the prior, so that a prior known from few groups widens it.
 *
 * @param confidence 0.9 when left out
 * @throws {RangeError} when the group's count is out of range
 * @example
 * const nodes = [{ mean: 0.8, strength: 10, weight: 1 }];
 * pooledShare({ successes: 9, trials: 10 }, { prior: { alpha: 8, beta: 2 }, nodes })
 * // { mean: 0.85, low: 0.704…, high: 0.955… }
 */
export const pooledShare = (group: Group, fit: BetaBinomialFit, confidence = 0.9): PooledShare => {
  check([group]);
  const { successes, trials } = group;
  const { alpha, beta } = fit.prior;
  const mean = (alpha + successes) / (alpha + beta + trials);
  let variance = 0;
  for (const node of fit.nodes) {
    const weight = node.strength + trials;
    const own = (node.mean * node.strength + successes) / weight;
    variance += node.weight * ((own * (1 - own)) / (weight + 1) + (own - mean) ** 2);
  }
  const strength = (mean * (1 - mean)) / variance - 1;
  const tail = (1 - confidence) / 2;
  const [a, b] = [mean * strength, (1 - mean) * strength];
  return { mean, low: betaQuantile(tail, a, b), high: betaQuantile(1 - tail, a, b) };
};
