import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { betaQuantile } from "../beta-distribution/index.ts";
import { seededRandom } from "../random/index.ts";
import { betaBinomialLogLikelihood, fitBetaBinomial, pooledShare } from "./index.ts";
import type { Group } from "./index.ts";
import { hyperGrid } from "./hyper-grid.ts";

const group = fc
  .integer({ min: 0, max: 60 })
  .chain((trials) =>
    fc.record({ trials: fc.constant(trials), successes: fc.integer({ min: 0, max: trials }) }),
  );

/** A few groups whose share scatters about a mean, each counted over some cars. */
const simulate = (random: () => number, groups: number, trials: number) => {
  const shares = Array.from({ length: groups }, () => betaQuantile(random(), 16, 4));
  const counts = shares.map((share): Group => {
    const successes = Array.from({ length: trials }, () => random() < share).filter(Boolean).length;
    return { successes, trials };
  });
  return { shares, counts };
};

describe("betaBinomialLogLikelihood", () => {
  it("has the result its example states", () => {
    const logLikelihood = betaBinomialLogLikelihood([{ successes: 1, trials: 2 }], { alpha: 1, beta: 1 });
    expect(logLikelihood).toBeCloseTo(Math.log(1 / 6), 12);
  });

  it("is the logarithm of rising products, group by group", () => {
    // (2·3·4)(5)/(7·8·9·10) for three of four at α = 2, β = 5.
    const one = { successes: 3, trials: 4 };
    const expected = Math.log((2 * 3 * 4 * 5) / (7 * 8 * 9 * 10));
    expect(betaBinomialLogLikelihood([one], { alpha: 2, beta: 5 })).toBeCloseTo(expected, 12);
    expect(betaBinomialLogLikelihood([one, one], { alpha: 2, beta: 5 })).toBeCloseTo(2 * expected, 12);
    expect(betaBinomialLogLikelihood([], { alpha: 2, beta: 5 })).toBe(0);
  });
});

const meanOf = (prior = { alpha: 0, beta: 1 }): number => prior.alpha / (prior.alpha + prior.beta);
const strengthOf = (prior = { alpha: 0, beta: 0 }): number => prior.alpha + prior.beta;

describe("fitBetaBinomial", () => {
  it("finds the mean of the groups, and a weight that tells how much they scatter", () => {
    const even = Array.from({ length: 20 }, () => ({ successes: 24, trials: 30 }));
    const uneven = Array.from({ length: 20 }, (_, i) => ({ successes: i % 2 === 0 ? 30 : 18, trials: 30 }));
    const [same, scattered] = [even, uneven].map((groups) => fitBetaBinomial(groups).prior);
    expect(meanOf(same)).toBeCloseTo(0.8, 1);
    expect(meanOf(scattered)).toBeCloseTo(0.8, 1);
    expect(strengthOf(same)).toBeGreaterThan(100);
    expect(strengthOf(scattered)).toBeLessThan(6);
  });

  it("has the posterior mean of the mean, reckoned independently on a plain grid", () => {
    const groups = [
      { successes: 18, trials: 20 },
      { successes: 27, trials: 30 },
      { successes: 10, trials: 25 },
    ];
    let [total, mean, logStrength] = [0, 0, 0];
    for (let i = 1; i < 400; i += 1) {
      const m = i / 400;
      // A flat share of shrinkage s = 1/(1 + M).
      for (let j = 1; j < 400; j += 1) {
        const strength = 400 / j - 1;
        const prior = { alpha: m * strength, beta: (1 - m) * strength };
        const weight = Math.exp(betaBinomialLogLikelihood(groups, prior) + 40);
        total += weight;
        mean += weight * m;
        logStrength += weight * Math.log(strength);
      }
    }
    const { prior } = fitBetaBinomial(groups);
    expect(prior.alpha / (prior.alpha + prior.beta)).toBeCloseTo(mean / total, 2);
    expect(Math.log(prior.alpha + prior.beta)).toBeCloseTo(logStrength / total, 1);
  });

  it("has the result its example states", () => {
    const { prior } = fitBetaBinomial([
      { successes: 18, trials: 20 },
      { successes: 27, trials: 30 },
    ]);
    expect(prior.alpha).toBeCloseTo(3.774, 2);
    expect(prior.beta).toBeCloseTo(1.194, 2);
  });

  it("has plausibilities that add up to 1", () => {
    const { nodes } = fitBetaBinomial([{ successes: 3, trials: 9 }]);
    expect(nodes.reduce((sum, node) => sum + node.weight, 0)).toBeCloseTo(1, 12);
    expect(nodes.every(({ mean, strength }) => mean > 0 && mean < 1 && strength > 0)).toBe(true);
  });

  it("refuses no groups and counts that cannot be", () => {
    expect(() => fitBetaBinomial([])).toThrow(new RangeError("A fit needs at least one group."));
    const refusal = new RangeError("Successes must be 0 to the trials of their group.");
    expect(() => fitBetaBinomial([{ successes: 3, trials: 2 }])).toThrow(refusal);
    expect(() => fitBetaBinomial([{ successes: -1, trials: 2 }])).toThrow(refusal);
    expect(() =>
      fitBetaBinomial([
        { successes: 1, trials: 2 },
        { successes: 3, trials: 2 },
      ]),
    ).toThrow(refusal);
  });
});

describe("hyperGrid", () => {
  it("keeps what has at least e^−10 of the likeliest, also where everything is very unlikely", () => {
    const many = Array.from({ length: 10 }, (_, i) => ({ successes: 350 + 10 * i, trials: 500 }));
    const nodes = hyperGrid((prior) => betaBinomialLogLikelihood(many, prior));
    const weights = nodes.map(({ weight }) => weight);
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(Math.min(...weights)).toBeGreaterThan(Math.max(...weights) * Math.exp(-10) * 0.999);
    expect(nodes.length).toBeGreaterThan(100);
  });

  it("is the hyperprior itself where nothing was seen: flat in the mean and in 1/(1 + M)", () => {
    const nodes = hyperGrid(() => 0);
    const average = (of: (node: { mean: number; strength: number }) => number): number =>
      nodes.reduce((sum, node) => sum + node.weight * of(node), 0);
    // A flat quantity has mean ½ and mean square ⅓; the ends of the grid cut a little off.
    expect(average(({ mean }) => mean)).toBeCloseTo(1 / 2, 9);
    expect(average(({ mean }) => mean ** 2)).toBeCloseTo(1 / 3, 2);
    expect(Math.abs(average(({ strength }) => 1 / (1 + strength)) - 1 / 2)).toBeLessThan(0.02);
    expect(Math.abs(average(({ strength }) => 1 / (1 + strength) ** 2) - 1 / 3)).toBeLessThan(0.025);
  });
});

describe("pooledShare", () => {
  const fits = fc
    .sample(fc.array(group, { minLength: 1, maxLength: 6 }), { numRuns: 60, seed: 19 })
    .map(fitBetaBinomial);

  it("lies between the group's own share and the prior's mean, and holds its mean", () => {
    fc.assert(
      fc.property(fc.constantFrom(...fits), group, (fit, own) => {
        const priorMean = fit.prior.alpha / (fit.prior.alpha + fit.prior.beta);
        const share = own.trials === 0 ? priorMean : own.successes / own.trials;
        const { mean, low, high } = pooledShare(own, fit);
        expect(mean).toBeGreaterThanOrEqual(Math.min(share, priorMean) - 1e-12);
        expect(mean).toBeLessThanOrEqual(Math.max(share, priorMean) + 1e-12);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThan(high);
      }),
      { numRuns: 1000 },
    );
  });

  it("is the beta posterior where the prior is known", () => {
    const fit = { prior: { alpha: 8, beta: 2 }, nodes: [{ mean: 0.8, strength: 10, weight: 1 }] };
    const { mean, low, high } = pooledShare({ successes: 9, trials: 10 }, fit);
    expect(mean).toBeCloseTo(17 / 20, 12);
    expect(low).toBeCloseTo(betaQuantile(0.05, 17, 3), 9);
    expect(high).toBeCloseTo(betaQuantile(0.95, 17, 3), 9);
    expect(pooledShare({ successes: 9, trials: 10 }, fit, 0.5).low).toBeCloseTo(betaQuantile(0.25, 17, 3), 9);
  });

  it("is wider where the prior is less known", () => {
    const prior = { alpha: 8, beta: 2 };
    const [sure, unsure] = [[0.8], [0.6, 0.99]].map((means) =>
      pooledShare(
        { successes: 9, trials: 10 },
        { prior, nodes: means.map((mean) => ({ mean, strength: 10, weight: 1 / means.length })) },
      ),
    );
    expect(unsure?.low).toBeLessThan(sure?.low ?? 0);
    expect(unsure?.mean).toBe(sure?.mean);
  });

  it("refuses a count that cannot be", () => {
    const fit = { prior: { alpha: 1, beta: 1 }, nodes: [{ mean: 0.5, strength: 2, weight: 1 }] };
    expect(() => pooledShare({ successes: 3, trials: 2 }, fit)).toThrow(RangeError);
  });

  it("holds the true shares of eight groups of twenty-five about as often as it says", () => {
    const random = seededRandom(41);
    let [held, asked] = [0, 0];
    for (let i = 0; i < 40; i += 1) {
      const { shares, counts } = simulate(random, 8, 25);
      const fit = fitBetaBinomial(counts);
      for (const [j, share] of shares.entries()) {
        const { low, high } = pooledShare(counts[j] ?? { successes: 0, trials: 0 }, fit);
        asked += 1;
        if (low <= share && share <= high) held += 1;
      }
    }
    expect(held / asked).toBeGreaterThan(0.86);
    expect(held / asked).toBeLessThan(0.96);
  });
});
