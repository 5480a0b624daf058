import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { classifyInterval } from "../equivalence/index.ts";
import { AS_DECLARED, pairScatter } from "../over-dispersion/index.ts";
import type { Apart, PairScatter } from "../over-dispersion/index.ts";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { coverageFactor } from "../student-factor/index.ts";
import { isOnlyAsDeclared, mixtureExpandedUncertainty } from "./index.ts";

const RUNS = { numRuns: 1000 };
const size = fc.double({ min: 0.01, max: 5, noNaN: true });
const interval = fc
  .tuple(
    fc.double({ min: -8, max: 8, noNaN: true }),
    size,
    fc.double({ min: 1, max: 100, noNaN: true }),
    size,
  )
  .map(([difference, standardUncertainty, degrees, delta]) => ({
    difference,
    standardUncertainty,
    expandedUncertainty: coverageFactor(degrees) * standardUncertainty,
    delta,
  }));

const weights = fc.array(fc.double({ min: 0.001, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 });
const ladder = (of: "noise" | "dark", steps: readonly number[]) =>
  weights.map((all) => {
    const total = all.reduce((sum, one) => sum + one, 0);
    return steps.map((step, index) => ({ noise: 1, dark: 0, [of]: step, weight: (all[index] ?? 0) / total }));
  });
const scatter: fc.Arbitrary<PairScatter> = fc.record({
  noisier: ladder("noise", [1, 1.25, 1.5, 2, 2.5, 3]),
  darker: ladder("dark", [0, 0.1, 0.2, 0.35, 0.5, 0.7]),
});
const half = (noise: number, dark: number) => [
  { noise: 1, dark: 0, weight: 0.5 },
  { noise, dark, weight: 0.5 },
];
const plain = { difference: 0, standardUncertainty: 1, expandedUncertainty: 1.959963984540054, delta: 4 };

describe("as declared", () => {
  it("is today's interval to the last digit, and marks nothing", () => {
    fc.assert(
      fc.property(interval, (one) => {
        expect(mixtureExpandedUncertainty(one, AS_DECLARED)).toBe(one.expandedUncertainty);
        expect(isOnlyAsDeclared(one, AS_DECLARED)).toBe(false);
      }),
      RUNS,
    );
  });

  it("is so where all weight lies on the first rung", () => {
    const noisier = [
      { noise: 1, dark: 0, weight: 1 },
      { noise: 3, dark: 0, weight: 0 },
    ];
    fc.assert(
      fc.property(interval, (one) => {
        expect(mixtureExpandedUncertainty(one, { noisier, darker: noisier })).toBe(one.expandedUncertainty);
      }),
      RUNS,
    );
  });
});

describe("mixtureExpandedUncertainty", () => {
  it("is the declared one times R where only R is plausible, and the quadrature where only τ is", () => {
    const noisier = [{ noise: 2, dark: 0, weight: 1 }];
    const darker = [{ noise: 1, dark: 0.75, weight: 1 }];
    const declared = AS_DECLARED.noisier;
    expect(mixtureExpandedUncertainty(plain, { noisier, darker: declared })).toBeCloseTo(
      2 * 1.959963984540054,
      12,
    );
    expect(mixtureExpandedUncertainty(plain, { noisier: declared, darker })).toBeCloseTo(
      Math.sqrt(10) * 1.959963984540054,
      12,
    );
    // Without declared uncertainty there is no factor to keep: the normal one.
    const exact = { standardUncertainty: 0, expandedUncertainty: 0, delta: 4 };
    expect(mixtureExpandedUncertainty(exact, { noisier, darker })).toBeCloseTo(3 * 1.959963984540054, 12);
    expect(mixtureExpandedUncertainty(exact, { noisier, darker: declared })).toBe(0);
  });

  it("is the wider of the two explanations", () => {
    const [noisier, darker] = [half(2, 0), half(1, 0.5)];
    const both = mixtureExpandedUncertainty(plain, { noisier, darker });
    expect(both).toBe(mixtureExpandedUncertainty(plain, { noisier: AS_DECLARED.noisier, darker }));
    expect(both).toBeGreaterThan(mixtureExpandedUncertainty(plain, { noisier, darker: AS_DECLARED.darker }));
  });

  it("holds 95 % of drawn errors", () => {
    const random = seededRandom(11);
    const reach = mixtureExpandedUncertainty(plain, { noisier: half(2.5, 0), darker: AS_DECLARED.darker });
    let held = 0;
    for (let draw = 0; draw < 40_000; draw += 1) {
      if (Math.abs(normalDeviate(random) * (draw % 2 === 0 ? 1 : 2.5)) <= reach) held += 1;
    }
    expect(held / 40_000).toBeCloseTo(0.95, 2);
  });

  it("lies between the narrowest and the widest rung", () => {
    fc.assert(
      fc.property(interval, scatter, (one, pair) => {
        const U = mixtureExpandedUncertainty(one, pair);
        expect(U).toBeGreaterThanOrEqual(one.expandedUncertainty * (1 - 1e-12));
        const dark = Math.hypot(one.standardUncertainty, 0.7 * one.delta) / one.standardUncertainty;
        expect(U).toBeLessThanOrEqual(one.expandedUncertainty * Math.max(3, dark) * (1 + 1e-12));
      }),
      RUNS,
    );
  });
});

describe("isOnlyAsDeclared", () => {
  it("is what the same rule says of the mixture's interval", () => {
    fc.assert(
      fc.property(interval, scatter, (one, pair) => {
        const U = mixtureExpandedUncertainty(one, pair);
        const [declared, wider] = [one.expandedUncertainty, U].map((reach) =>
          classifyInterval(one.difference, reach, one.delta),
        );
        const settled = declared === "agree" || declared === "differ";
        expect(isOnlyAsDeclared(one, pair)).toBe(settled && wider !== declared);
      }),
      RUNS,
    );
  });

  it("never marks what neither agrees nor differs", () => {
    const wide = { noisier: half(3, 0), darker: half(1, 0.7) };
    expect(isOnlyAsDeclared({ ...plain, difference: 3 }, wide)).toBe(false);
    expect(isOnlyAsDeclared({ ...plain, delta: 1 }, wide)).toBe(false);
    expect(isOnlyAsDeclared({ ...plain, difference: 2 }, wide)).toBe(true);
    expect(isOnlyAsDeclared({ ...plain, difference: -6.5 }, wide)).toBe(true);
    expect(isOnlyAsDeclared({ ...plain, difference: -26 }, wide)).toBe(false);
  });

  it("asks both explanations", () => {
    const one = { ...plain, difference: 1 };
    expect(isOnlyAsDeclared(one, { noisier: half(3, 0), darker: AS_DECLARED.darker })).toBe(true);
    expect(isOnlyAsDeclared(one, { noisier: AS_DECLARED.noisier, darker: half(1, 0.7) })).toBe(true);
  });

  it("refuses what the interval rule refuses", () => {
    const wrong = { ...plain, difference: Number.NaN };
    expect(() => isOnlyAsDeclared(wrong, AS_DECLARED)).toThrow(RangeError);
  });
});

type World = { readonly noise?: number; readonly dark?: number; readonly generous?: number };

/** Shares of readings called agree without a mark, at equal truth and where the car is worse by δ, over sixty pairs of eighty readings. */
const agreed = ({ noise = 1, dark = 0, generous = 0 }: World) => {
  const random = seededRandom(23);
  const error = (u: number): number =>
    noise * u * normalDeviate(random) + dark * normalDeviate(random) + generous;
  const counts = { readings: 0, plainEqual: 0, plainDelta: 0, equal: 0, delta: 0 };
  for (let pair = 0; pair < 60; pair += 1) {
    const uncertainties = Array.from(
      { length: 80 },
      (_, index) => [0.08, 0.15, 0.2, 0.25, 0.3][index % 5] ?? 1,
    );
    const seen = uncertainties.map((u): Apart => ({
      foundBetter: error(u) - (random() < 0.03 ? 2 : 0),
      standardUncertainty: u,
      delta: 1,
    }));
    const people = pairScatter(seen);
    for (const u of uncertainties) {
      counts.readings += 1;
      for (const [truth, plainly, unmarked] of [
        [0, "plainEqual", "equal"],
        [1, "plainDelta", "delta"],
      ] as const) {
        const difference = error(u) - truth;
        const one = {
          difference,
          standardUncertainty: u,
          expandedUncertainty: 1.959963984540054 * u,
          delta: 1,
        };
        if (classifyInterval(difference, one.expandedUncertainty, 1) !== "agree") continue;
        counts[plainly] += 1;
        if (!isOnlyAsDeclared(one, people)) counts[unmarked] += 1;
      }
    }
  }
  return counts;
};

describe("an agree without a mark, where the car is worse by δ", () => {
  it("costs honest people who measured as declared at most two points of agree", () => {
    const { readings, plainEqual, equal } = agreed({});
    expect(plainEqual / readings).toBeGreaterThan(0.94);
    expect((plainEqual - equal) / readings).toBeLessThan(0.02);
  });

  it.each([
    ["noise 1.5 times the declared one", { noise: 1.5 }],
    ["spots that differ by half of δ", { dark: 0.5 }],
    ["a hand that finds better by a quarter of δ", { generous: 0.25 }],
  ] as const)("is at most one in twenty, and was more: %s", (_, world) => {
    const { readings, plainDelta, delta } = agreed(world);
    expect(plainDelta / readings).toBeGreaterThan(0.08);
    expect(delta / readings).toBeLessThan(0.05);
  });
});
