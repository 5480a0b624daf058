import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AS_DECLARED, pairScatter } from "../over-dispersion/index.ts";
import type { Apart, PairScatter } from "../over-dispersion/index.ts";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { chanceOff as chanceOfPair, inThree, pairChance, shareOff } from "./index.ts";
import type { ShareOff } from "./index.ts";

const chanceOff = (reading: Apart, scatter: PairScatter, shares: ShareOff) =>
  chanceOfPair(reading, pairChance(scatter, shares));

const RUNS = { numRuns: 1000 };
const apart = (foundBetter: number, standardUncertainty = 1, delta = 4): Apart => ({
  foundBetter,
  standardUncertainty,
  delta,
});
const TENTH = [{ share: 0.1, weight: 1 }];
const NOISY = {
  noisier: [{ noise: 2, dark: 0, weight: 1 }],
  darker: [{ noise: 1, dark: 0.4, weight: 1 }],
};

describe("chanceOff", () => {
  it("is small where scatter explains a difference, and near 1 far out", () => {
    expect(chanceOff(apart(-1), AS_DECLARED, TENTH).worse).toBeLessThan(0.001);
    expect(chanceOff(apart(-8), AS_DECLARED, TENTH).worse).toBeGreaterThan(0.99);
    expect(chanceOff(apart(-1e9), AS_DECLARED, TENTH)).toEqual({ worse: 1, better: 0 });
    expect(chanceOff(apart(1e9), AS_DECLARED, TENTH)).toEqual({ worse: 0, better: 1 });
  });

  it("is the textbook's two groups, at a point worked out by hand", () => {
    // u = 1, δ = 1, so the slab is N(0, 2²); x = −2: f₀ = e^−2, f₁ = e^(−2/5)/√5, truth −8/5 ± √(4/5).
    const [spike, slab] = [0.9 * Math.exp(-2), (0.1 * Math.exp(-0.4)) / Math.sqrt(5)];
    const beyond = 0.7488363;
    const { worse } = chanceOff(apart(-2, 1, 1), AS_DECLARED, TENTH);
    expect(worse).toBeCloseTo((slab * beyond) / (spike + slab), 5);
  });

  it("weighs shares by their plausibility", () => {
    const chances = [0.05, 0.4].map(
      (share) => chanceOff(apart(-5), AS_DECLARED, [{ share, weight: 1 }]).worse,
    );
    const both = chanceOff(apart(-5), AS_DECLARED, [
      { share: 0.05, weight: 0.25 },
      { share: 0.4, weight: 0.75 },
    ]).worse;
    expect(both).toBeCloseTo(0.25 * (chances[0] ?? 0) + 0.75 * (chances[1] ?? 0), 12);
  });

  it("is less where the pair scatters more, for both explanations count half", () => {
    const declared = chanceOff(apart(-5), AS_DECLARED, TENTH).worse;
    const noisy = chanceOff(apart(-5), NOISY, TENTH).worse;
    expect(noisy).toBeLessThan(declared);
    expect(noisy).toBeGreaterThan(0.05);
  });

  it("mirrors, rises the worse a thing was found, and is a chance", () => {
    const difference = fc.double({ min: -40, max: 40, noNaN: true });
    const size = fc.double({ min: 0.05, max: 5, noNaN: true });
    fc.assert(
      fc.property(
        difference,
        fc.double({ min: 0, max: 10, noNaN: true }),
        size,
        size,
        (at, more, u, delta) => {
          const here = chanceOff(apart(at, u, delta), NOISY, TENTH);
          const mirrored = chanceOff(apart(-at, u, delta), NOISY, TENTH);
          const worseThan = Math.min(at, 0);
          const [near, farther] = [worseThan, worseThan - more].map(
            (x) => chanceOff(apart(x, u, delta), NOISY, TENTH).worse,
          );
          expect([mirrored.worse, mirrored.better]).toEqual([here.better, here.worse]);
          expect(here.worse).toBeGreaterThanOrEqual(0);
          expect(here.worse + here.better).toBeLessThanOrEqual(1 + 1e-9);
          expect(farther).toBeGreaterThanOrEqual((near ?? 2) - 1e-9);
        },
      ),
      RUNS,
    );
  });

  it("refuses a δ that is not positive", () => {
    const refusal = new RangeError("The difference that matters must be positive: 0");
    expect(() => chanceOff(apart(1, 1, 0), AS_DECLARED, TENTH)).toThrow(refusal);
    expect(() => shareOff([apart(1, 1, 0)], AS_DECLARED)).toThrow(refusal);
  });
});

describe("inThree", () => {
  it("keeps what is as declared, and the mean variance of what is wider", () => {
    const noisier = [
      { noise: 1, dark: 0, weight: 0.5 },
      { noise: 2, dark: 0, weight: 0.375 },
      { noise: 3, dark: 0, weight: 0.125 },
    ];
    const three = inThree({ ...AS_DECLARED, noisier });
    expect(three.darker).toEqual(AS_DECLARED.darker);
    expect(three.noisier).toEqual([noisier[0], { noise: Math.sqrt(21 / 4), dark: 0, weight: 0.5 }]);
  });
});

/** Pairs of eighty readings, a share of which is worse than stated, by some 2 δ. */
const simulate = (random: () => number, lies: number, noise: number) =>
  Array.from({ length: 80 }, (_, index) => {
    const u = [0.1, 0.2, 0.3][index % 3] ?? 1;
    const worseBy = random() < lies ? Math.abs(2 * normalDeviate(random)) : 0;
    return { reading: apart(noise * u * normalDeviate(random) - worseBy, u, 1), worseBy };
  });

describe("shareOff", () => {
  it("is what it was before anything was read, flat", () => {
    const none = shareOff([], AS_DECLARED);
    expect(none.map(({ share }) => share)).toEqual([0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5]);
    for (const { weight } of none) expect(weight).toBeCloseTo(1 / 7, 12);
  });

  it("finds how many are off", () => {
    const random = seededRandom(9);
    const meanAt = (lies: number): number => {
      const pair = Array.from({ length: 5 }, () => simulate(random, lies, 1)).flat();
      const readings = pair.map(({ reading }) => reading);
      return shareOff(readings, AS_DECLARED).reduce((sum, { share, weight }) => sum + share * weight, 0);
    };
    expect(meanAt(0)).toBeLessThan(0.015);
    expect(Math.abs(meanAt(0.1) - 0.1)).toBeLessThan(0.04);
    expect(Math.abs(meanAt(0.5) - 0.5)).toBeLessThan(0.05);
  });
});

const whole = (scatter: PairScatter): PairScatter => scatter;

describe("the chance is calibrated", () => {
  it.each([
    ["as declared", 1, whole],
    ["with half as much noise again", 1.5, whole],
    ["as declared, in three widths", 1, inThree],
    ["with half as much noise again, in three widths", 1.5, inThree],
  ])("of things given a chance, about that share is off by more than δ: %s", (_, noise, seen) => {
    const random = seededRandom(31);
    const bins = Array.from({ length: 5 }, () => ({ count: 0, chance: 0, off: 0 }));
    for (let round = 0; round < 120; round += 1) {
      const pair = simulate(random, 0.2, noise);
      const readings = pair.map(({ reading }) => reading);
      const scatter = seen(pairScatter(readings));
      const shares = shareOff(readings, scatter);
      for (const { reading, worseBy } of pair) {
        const { worse } = chanceOff(reading, scatter, shares);
        const bin = bins[Math.min(4, Math.floor(5 * worse))];
        if (bin === undefined) continue;
        bin.count += 1;
        bin.chance += worse;
        if (worseBy > 1) bin.off += 1;
      }
    }
    const [told, off] = [bins.map(({ chance }) => chance), bins.map((bin) => bin.off)].map((all) =>
      all.reduce((sum, one) => sum + one, 0),
    );
    expect(Math.abs((told ?? 0) / (off ?? 1) - 1)).toBeLessThan(0.1);
    for (const bin of bins) {
      expect(bin.count).toBeGreaterThan(50);
      expect(Math.abs(bin.chance - bin.off) / bin.count).toBeLessThan(0.15);
    }
  });
});
