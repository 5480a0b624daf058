import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { AS_DECLARED, LEAST_READINGS, pairScatter } from "./index.ts";
import type { Apart, Ladder } from "./index.ts";

const RUNS = { numRuns: 1000 };

const reading = fc.record({
  foundBetter: fc.double({ min: -20, max: 20, noNaN: true }),
  standardUncertainty: fc.double({ min: 0.02, max: 2, noNaN: true }),
  delta: fc.double({ min: 0, max: 4, noNaN: true }),
});
const readings = fc.array(reading, { minLength: LEAST_READINGS, maxLength: 60 });
/** Wide enough that the plain formula's exponentials do not vanish. */
const nearReadings = readings.map((pair) =>
  pair.map((one) => ({ ...one, standardUncertainty: one.standardUncertainty + 0.3 })),
);

const farthestApart = (here: Ladder, there: readonly number[]): number =>
  Math.max(...here.map(({ weight }, step) => Math.abs(weight - (there[step] ?? Number.NaN))));

/** Two people with R and τ as given, a hand that finds better by a share of δ, and a share of lies of one to four δ. */
const simulate = (
  random: () => number,
  { count = 80, noise = 1, dark = 0, generous = 0, lies = 0 },
): Apart[] =>
  Array.from({ length: count }, (_, index) => {
    const standardUncertainty = [0.08, 0.15, 0.2, 0.25, 0.3][index % 5] ?? 1;
    const lie = random() < lies ? 1 + 3 * random() : 0;
    const error = noise * standardUncertainty * normalDeviate(random) + dark * normalDeviate(random);
    return { foundBetter: error + generous - lie, standardUncertainty, delta: 1 };
  });

const declaredWeight = (ladder: Ladder): number => ladder[0]?.weight ?? Number.NaN;
const meanOf = (ladder: Ladder, of: "noise" | "dark"): number =>
  ladder.reduce((sum, rung) => sum + rung.weight * rung[of], 0);

/** The mean of what `of` reads from forty simulated pairs. */
const average = (of: (pair: readonly Apart[]) => number, people: Parameters<typeof simulate>[1]): number => {
  const random = seededRandom(17);
  const all = Array.from({ length: 40 }, () => of(simulate(random, people)));
  return all.reduce((sum, value) => sum + value, 0) / all.length;
};

const normal = (x: number, s: number): number => Math.exp(-0.5 * (x / s) ** 2) / s;

/** The formula of the docstring, written down without any of its short cuts. */
const plainWeights = (
  pair: readonly Apart[],
  rungs: readonly { noise: number; dark: number }[],
): number[] => {
  const logarithms = rungs.map(({ noise, dark }, step) => {
    const says = pair.map(({ foundBetter, standardUncertainty: u, delta }) => {
      const f = (x: number): number =>
        0.95 * normal(x, Math.hypot(noise * u, dark * delta)) + 0.05 * normal(x, 5 * Math.hypot(u, delta));
      return foundBetter > 0 ? 2 * Math.log(f(foundBetter)) - Math.log(f(0)) : Math.log(f(0));
    });
    const prior = step === 0 ? 0.75 : (0.25 * 0.5 ** step) / (1 - 0.5 ** 5);
    return Math.log(prior) + 0.4 * says.reduce((sum, one) => sum + one, 0);
  });
  const weights = logarithms.map((one) => Math.exp(one - Math.max(...logarithms)));
  const total = weights.reduce((sum, one) => sum + one, 0);
  return weights.map((one) => one / total);
};

describe("pairScatter", () => {
  it("has ladders from as declared on, with weights that add up to 1", () => {
    const { noisier, darker } = pairScatter(simulate(seededRandom(1), {}));
    expect(noisier.map(({ noise, dark }) => [noise, dark])).toEqual(
      [1, 1.25, 1.5, 2, 2.5, 3].map((noise) => [noise, 0]),
    );
    expect(darker.map(({ noise, dark }) => [noise, dark])).toEqual(
      [0, 0.1, 0.2, 0.35, 0.5, 0.7].map((dark) => [1, dark]),
    );
    for (const ladder of [noisier, darker]) {
      expect(ladder.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    }
  });

  it("says nothing of fewer than ten readings", () => {
    const wild = Array.from({ length: 10 }, () => ({ foundBetter: 3, standardUncertainty: 1, delta: 4 }));
    expect(pairScatter(wild.slice(1))).toBe(AS_DECLARED);
    expect(declaredWeight(pairScatter(wild).noisier)).toBeLessThan(0.01);
  });

  it("takes readings whose errors go together for one witness", () => {
    const eight = Array.from({ length: 8 }, () => ({
      foundBetter: 2,
      standardUncertainty: 1,
      delta: 4,
      share: 1 / 8,
    }));
    const one = { foundBetter: 2, standardUncertainty: 1, delta: 4 };
    const [others] = [simulate(seededRandom(3), { count: 12 })];
    const [together, single] = [pairScatter([...others, ...eight]), pairScatter([...others, one])];
    expect(
      farthestApart(
        together.noisier,
        single.noisier.map(({ weight }) => weight),
      ),
    ).toBeLessThan(1e-12);
    const thirds = Array.from({ length: 30 }, () => ({ ...one, share: 1 / 3 }));
    expect(pairScatter(thirds.slice(1))).toBe(AS_DECLARED);
    expect(pairScatter(thirds)).not.toBe(AS_DECLARED);
  });

  it("is the formula of its docstring, at any number of readings", () => {
    fc.assert(
      fc.property(nearReadings, (pair) => {
        const errors = Object.values(pairScatter(pair)).map((ladder) =>
          farthestApart(ladder, plainWeights(pair, ladder)),
        );
        expect(Math.max(...errors)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  it("trusts honest people, finds noise and dark uncertainty", () => {
    expect(average((pair) => declaredWeight(pairScatter(pair).noisier), {})).toBeGreaterThan(0.85);
    expect(average((pair) => declaredWeight(pairScatter(pair).darker), {})).toBeGreaterThan(0.85);
    expect(average((pair) => declaredWeight(pairScatter(pair).noisier), { noise: 2 })).toBeLessThan(0.01);
    expect(
      Math.abs(average((pair) => meanOf(pairScatter(pair).noisier, "noise"), { noise: 2 }) - 2),
    ).toBeLessThan(0.2);
    expect(average((pair) => declaredWeight(pairScatter(pair).darker), { dark: 0.35 })).toBeLessThan(0.01);
    expect(
      Math.abs(average((pair) => meanOf(pairScatter(pair).darker, "dark"), { dark: 0.35 }) - 0.35),
    ).toBeLessThan(0.05);
    expect(average((pair) => declaredWeight(pairScatter(pair).darker), { generous: 0.25 })).toBeLessThan(
      0.05,
    );
  });

  it("reads no lie as scatter", () => {
    const honest = average((pair) => declaredWeight(pairScatter(pair).noisier), {});
    expect(average((pair) => declaredWeight(pairScatter(pair).noisier), { lies: 0.4 })).toBeGreaterThan(
      honest,
    );
  });

  it("does not let one slip widen anything much", () => {
    const pair = simulate(seededRandom(5), {});
    const before = declaredWeight(pairScatter(pair).noisier);
    for (const foundBetter of [10, 50, 1e6, 1e200]) {
      const slip = { foundBetter, standardUncertainty: 0.2, delta: 1 };
      const after = declaredWeight(pairScatter([...pair, slip]).noisier);
      expect(after).toBeLessThanOrEqual(before);
      expect(after).toBeGreaterThan(before - 0.1);
    }
  });

  it("does not see the order, nor the unit", () => {
    fc.assert(
      fc.property(readings, fc.double({ min: 0.001, max: 1000, noNaN: true }), (pair, unit) => {
        const other = pair.toReversed().map(({ foundBetter, standardUncertainty, delta }) => ({
          foundBetter: foundBetter * unit,
          standardUncertainty: standardUncertainty * unit,
          delta: delta * unit,
        }));
        const [here, there] = [pairScatter(pair), pairScatter(other)];
        expect(
          farthestApart(
            here.darker,
            there.darker.map(({ weight }) => weight),
          ),
        ).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  it("stays a distribution where figures are very large and very small", () => {
    const size = fc.constantFrom(1e-9, 1e-6, 1, 1e6, 1e9);
    const wild = fc.record({
      foundBetter: fc.tuple(size, fc.constantFrom(-1, 1)).map(([x, sign]) => x * sign),
      standardUncertainty: size,
      delta: fc.oneof(size, fc.constant(0)),
    });
    fc.assert(
      fc.property(fc.array(wild, { minLength: 10, maxLength: 40 }), (pair) => {
        for (const ladder of Object.values(pairScatter(pair))) {
          expect(ladder.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
        }
      }),
      RUNS,
    );
  });

  it.each([
    [{ foundBetter: Number.NaN, standardUncertainty: 1, delta: 1 }, "The difference must be a number: NaN"],
    [
      { foundBetter: Infinity, standardUncertainty: 1, delta: 1 },
      "The difference must be a number: Infinity",
    ],
    [
      { foundBetter: 1, standardUncertainty: 0, delta: 1 },
      "The standard uncertainty must be a positive number: 0",
    ],
    [
      { foundBetter: 1, standardUncertainty: Infinity, delta: 1 },
      "The standard uncertainty must be a positive number: Infinity",
    ],
    [
      { foundBetter: 1, standardUncertainty: 1, delta: -1 },
      "The difference that matters must be a number from 0: -1",
    ],
    [
      { foundBetter: 1, standardUncertainty: 1, delta: Infinity },
      "The difference that matters must be a number from 0: Infinity",
    ],
    [
      { foundBetter: 1, standardUncertainty: 1, delta: 1, share: 0 },
      "A witness's share must be over 0, to 1: 0",
    ],
    [
      { foundBetter: 1, standardUncertainty: 1, delta: 1, share: 2 },
      "A witness's share must be over 0, to 1: 2",
    ],
  ])("refuses %o", (wrong, message) => {
    expect(() => pairScatter([wrong])).toThrow(new RangeError(message));
  });
});

/** No rung and all wider ones together became likelier. */
const isNoWider = (after: Ladder, before: Ladder): boolean => {
  let [tailAfter, tailBefore] = [0, 0];
  for (const [step, rung] of before.entries()) {
    tailAfter += after[step]?.weight ?? Number.NaN;
    tailBefore += rung.weight;
    if (!(tailAfter >= tailBefore - 1e-9)) return false;
  }
  return true;
};

describe("a liar", () => {
  const lies = fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 60, maxLength: 60 });

  it("gains nothing by how much worse a thing is found", () => {
    fc.assert(
      fc.property(readings, lies, (pair, sizes) => {
        const worse = pair.map((one, index) =>
          one.foundBetter <= 0 ? { ...one, foundBetter: one.foundBetter - (sizes[index] ?? 0) } : one,
        );
        expect(pairScatter(worse)).toEqual(pairScatter(pair));
      }),
      RUNS,
    );
  });

  it("widens nothing by any lies that are big enough to be found worse", () => {
    fc.assert(
      fc.property(
        readings,
        fc.array(fc.boolean(), { minLength: 60, maxLength: 60 }),
        lies,
        (pair, lied, sizes) => {
          const told = pair.map((one, index) =>
            lied[index] === true ? { ...one, foundBetter: -(sizes[index] ?? 0) } : one,
          );
          const [before, after] = [pairScatter(pair), pairScatter(told)];
          expect(isNoWider(after.noisier, before.noisier)).toBe(true);
          expect(isNoWider(after.darker, before.darker)).toBe(true);
        },
      ),
      RUNS,
    );
  });
});
