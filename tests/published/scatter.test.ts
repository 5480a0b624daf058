import integrate from "integrate-adaptive-simpson";
import * as r from "lib-r-math.js";
import { describe, expect, it } from "vitest";
import { chanceOff, pairChance, shareOff } from "@evenhand/measurement/chance-off";
import { isOnlyAsDeclared, mixtureExpandedUncertainty } from "@evenhand/measurement/mixture-interval";
import { moderatedVariance } from "@evenhand/measurement/moderated-variance";
import { pairScatter } from "@evenhand/measurement/over-dispersion";
import type { Apart, Ladder } from "@evenhand/measurement/over-dispersion";
import { poissonBinomialTail } from "@evenhand/measurement/poisson-binomial";
import { pooledRepeats } from "@evenhand/measurement/pooled-repeats";
import { normalDeviate, seededRandom } from "@evenhand/measurement/random";

/*
 * References: densities of lib-r-math.js (a translation of R's nmath) and the adaptive Simpson's rule of
 * integrate-adaptive-simpson. Nothing of ours is between them and the figures checked.
 */
const TOLERANCE = 1e-11;
const integral = (of: (x: number) => number, from: number, to: number): number =>
  integrate(of, from, to, TOLERANCE, 40);

const random = seededRandom(7);
const pairs = [1, 1.6, 2.4].map((noise) =>
  Array.from({ length: 40 }, (_, index): Apart => {
    const standardUncertainty = [0.1, 0.2, 0.3][index % 3] ?? 1;
    return {
      foundBetter: noise * standardUncertainty * normalDeviate(random),
      standardUncertainty,
      delta: 1,
    };
  }),
);

const spreadOf = ({ standardUncertainty, delta }: Apart, noise: number, dark: number): number =>
  Math.hypot(noise * standardUncertainty, dark * delta);

/** The density of a reading's error over one ladder. */
const densityOver = (ladder: Ladder, reading: Apart, x: number): number =>
  ladder.reduce(
    (sum, { noise, dark, weight }) => sum + weight * r.dnorm(x, 0, spreadOf(reading, noise, dark)),
    0,
  );

describe("the mixture of a pair's scatter against numerical integration", () => {
  const shown = pairs.flatMap((pair) =>
    pair.slice(0, 3).map((reading) => ({ reading, scatter: pairScatter(pair) })),
  );
  const factor = r.qnorm(0.975, 0, 1);

  it.each(shown)("±U holds 95 % of the wider explanation, case %#", ({ reading, scatter }) => {
    const declared = {
      standardUncertainty: reading.standardUncertainty,
      expandedUncertainty: factor * reading.standardUncertainty,
      delta: reading.delta,
    };
    const U = mixtureExpandedUncertainty(declared, scatter);
    const held = [scatter.noisier, scatter.darker].map(
      (ladder) => 2 * integral((x) => densityOver(ladder, reading, x), 0, U),
    );
    expect(Math.min(...held)).toBeCloseTo(0.95, 9);
    // The verdict turns where the interval does.
    const at = (difference: number): boolean =>
      isOnlyAsDeclared({ ...declared, delta: 10, difference }, scatter);
    const wide = mixtureExpandedUncertainty({ ...declared, delta: 10 }, scatter);
    expect([at(10 - wide - 1e-6), at(10 - wide + 1e-6)]).toEqual([false, true]);
    expect([at(10 + wide + 1e-6), at(10 + wide - 1e-6)]).toEqual([false, true]);
  });

  it.each(pairs.map((pair, index) => ({ pair, index })))(
    "posterior of pair $index with R's densities",
    ({ pair }) => {
      for (const ladder of Object.values(pairScatter(pair))) {
        const support = ladder.map(({ noise, dark }, step) => {
          const prior = step === 0 ? 0.75 : (0.25 * 0.5 ** step) / (1 - 0.5 ** 5);
          const says = pair.map((reading) => {
            const gross = 5 * Math.hypot(reading.standardUncertainty, reading.delta);
            const f = (x: number): number =>
              0.95 * r.dnorm(x, 0, spreadOf(reading, noise, dark)) + 0.05 * r.dnorm(x, 0, gross);
            return reading.foundBetter > 0
              ? 2 * Math.log(f(reading.foundBetter)) - Math.log(f(0))
              : Math.log(f(0));
          });
          return prior * Math.exp(0.4 * says.reduce((sum, one) => sum + one, 0));
        });
        const total = support.reduce((sum, one) => sum + one, 0);
        for (const [step, { weight }] of ladder.entries())
          expect(weight).toBeCloseTo((support[step] ?? 0) / total, 9);
      }
    },
  );

  it.each(shown)("the chance of being off by more than δ, case %#", ({ reading, scatter }) => {
    const shares = [{ share: 0.2, weight: 1 }];
    for (const foundBetter of [-2, -0.9, 0.3]) {
      const [noisier, darker] = [scatter.noisier, scatter.darker].map(
        (ladder) => (truth: number) =>
          r.dnorm(truth, 0, 2 * reading.delta) * densityOver(ladder, reading, foundBetter - truth),
      );
      const joint = (truth: number): number => ((noisier?.(truth) ?? 0) + (darker?.(truth) ?? 0)) / 2;
      const spike =
        (densityOver(scatter.noisier, reading, foundBetter) +
          densityOver(scatter.darker, reading, foundBetter)) /
        2;
      const [below, between, above] = [
        integral(joint, -14, -1),
        integral(joint, -1, 1),
        integral(joint, 1, 14),
      ];
      const all = 0.8 * spike + 0.2 * ((below ?? 0) + (between ?? 0) + (above ?? 0));
      const { worse, better } = chanceOff({ ...reading, foundBetter }, pairChance(scatter, shares));
      expect(worse).toBeCloseTo((0.2 * (below ?? 0)) / all, 7);
      expect(better).toBeCloseTo((0.2 * (above ?? 0)) / all, 7);
    }
  });

  it("the share of what is off, with R's densities", () => {
    const [pair] = pairs;
    const scatter = pairScatter(pair ?? []);
    const found = shareOff(pair ?? [], scatter);
    const support = found.map(({ share }) =>
      (pair ?? []).reduce((product, reading) => {
        const of = (slab: number): number =>
          [scatter.noisier, scatter.darker]
            .flat()
            .reduce(
              (sum, { noise, dark, weight }) =>
                sum +
                (weight / 2) *
                  r.dnorm(reading.foundBetter, 0, Math.hypot(spreadOf(reading, noise, dark), slab)),
              0,
            );
        return product * ((1 - share) * of(0) + share * of(2 * reading.delta));
      }, 1),
    );
    const total = support.reduce((sum, one) => sum + one, 0);
    for (const [index, { weight }] of found.entries())
      expect(weight).toBeCloseTo((support[index] ?? 0) / total, 9);
  });
});

/** From e^−18 to e^6 in short stretches, lest the rule take a narrow hill for nothing. */
const whole = (of: (logarithm: number) => number): number =>
  Array.from({ length: 24 }, (_, piece) => integral(of, piece - 18, piece - 17)).reduce(
    (sum, one) => sum + one,
    0,
  );

/**
 * Smyth (2004), section 3: σ⁻² has the prior χ²(d₀)/(d₀·s₀²), s² given σ² is σ²·χ²(ν)/ν, and s̃² is one over the posterior mean of σ⁻².
 * Formula in print: (d₀·s₀² + ν·s²)/(d₀ + ν), read as `.squeezeVar` in R's package limma (squeezeVar.R). Here the mean is integrated out.
 */
describe("moderated variance against its definition", () => {
  it.each([
    [3, 2, 1, 6],
    [1.2, 1, 1, 6],
    [2, 4, 0.7, 6],
    [5, 2, 1.5, 12],
  ])("s = %d with ν = %d, s₀ = %d with d₀ = %d", (s, nu, declared, d0) => {
    /** Of the logarithm of σ⁻², up to a constant. */
    const posterior = (logarithm: number): number => {
      const precision = Math.exp(logarithm);
      const prior = r.dchisq(precision * d0 * declared ** 2, d0) * precision;
      return prior * precision * r.dchisq(nu * s ** 2 * precision, nu);
    };
    const most = posterior(-2 * Math.log(declared));
    const mean =
      whole((logarithm) => (Math.exp(logarithm) * posterior(logarithm)) / most) /
      whole((logarithm) => posterior(logarithm) / most);
    const { standardDeviation } = moderatedVariance(
      { standardDeviation: s, degreesOfFreedom: nu },
      { standardDeviation: declared, degreesOfFreedom: 30 },
      d0,
    );
    expect(standardDeviation ** 2).toBeCloseTo(1 / mean, 8);
  });
});

describe("pooled repeats against R's χ²", () => {
  it.each([0.4, 0.8, 1, 1.3, 1.9])("at %d times the declared variance", (ratio) => {
    const repeats = {
      seen: { standardDeviation: Math.sqrt(ratio), degreesOfFreedom: 2 },
      repeatability: 1,
      resolution: 0,
    };
    const pooled = pooledRepeats(Array.from({ length: 15 }, () => repeats));
    if (pooled.kind === "tooFew") throw new Error("too few");
    expect(pooled.chanceOfMore).toBeCloseTo(r.pchisq(30 * ratio, 30, 0, false), 6);
    expect(pooled.chanceOfLess).toBeCloseTo(r.pchisq(30 * ratio, 30), 6);
  });
});

describe("the Poisson–binomial tail against R's binomial, where all chances are equal", () => {
  it.each([
    [20, 0.1, 5],
    [60, 0.3, 25],
    [99, 0.02, 12],
  ])("of %d trials at %d, %d or more", (trials, chance, successes) => {
    const tail = poissonBinomialTail(
      Array.from({ length: trials }, () => chance),
      successes,
    );
    expect(tail / r.pbinom(successes - 1, trials, chance, false)).toBeCloseTo(1, 8);
  });
});
