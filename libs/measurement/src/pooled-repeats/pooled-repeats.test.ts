import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { sampleStandardDeviation } from "../type-a/index.ts";
import { pooledRepeats } from "./index.ts";
import type { Repeats } from "./index.ts";

const repeats = (standardDeviation: number, degreesOfFreedom = 2, resolution = 0): Repeats => ({
  seen: { standardDeviation, degreesOfFreedom },
  repeatability: 1,
  resolution,
});
const many = (one: Repeats, count = 20): Repeats[] => Array.from({ length: count }, () => one);

/** A report of twenty readings, each read three times and rounded. */
const report = (random: () => number, scatter: number, resolution: number): Repeats[] =>
  Array.from({ length: 20 }, () => {
    const values = Array.from({ length: 3 }, () => {
      const value = 7.3 + scatter * normalDeviate(random);
      return resolution === 0 ? value : resolution * Math.round(value / resolution);
    });
    return repeats(sampleStandardDeviation(values), 2, resolution);
  });

/** The same in a unit 25.4 times as small. */
const inOther = ({ seen, repeatability, resolution }: Repeats): Repeats => ({
  seen: { ...seen, standardDeviation: seen.standardDeviation * 25.4 },
  repeatability: repeatability * 25.4,
  resolution: resolution * 25.4,
});

describe("pooledRepeats", () => {
  it("names what scatters more, what is too alike, and neither", () => {
    expect(pooledRepeats(many(repeats(1)))).toMatchObject({
      kind: "asDeclared",
      ratio: 1,
      degreesOfFreedom: 40,
    });
    expect(pooledRepeats(many(repeats(1.5))).kind).toBe("scattersMore");
    expect(pooledRepeats(many(repeats(0.5))).kind).toBe("tooAlike");
    expect(pooledRepeats(many(repeats(0)))).toMatchObject({
      kind: "tooAlike",
      ratio: 0,
      chanceOfLess: 0,
      chanceOfMore: 1,
    });
  });

  it("is χ² over its degrees of freedom, tabled at one in a hundred and one in twenty", () => {
    // χ² upper points from memory (NIST/SEMATECH e-Handbook 1.3.6.7.4): 5 % of 10: 18.307; 99 % of 20: 8.260.
    const above = pooledRepeats(many(repeats(Math.sqrt(1.8307), 1), 10));
    expect(above).toMatchObject({ degreesOfFreedom: 10 });
    expect("chanceOfMore" in above ? above.chanceOfMore : 0).toBeCloseTo(0.05, 4);
    const below = pooledRepeats(many(repeats(Math.sqrt(0.413), 2), 10));
    expect("chanceOfLess" in below ? below.chanceOfLess : 0).toBeCloseTo(0.01, 4);
  });

  it("says nothing under ten degrees of freedom", () => {
    expect(pooledRepeats(many(repeats(9, 1), 9))).toEqual({ kind: "tooFew", degreesOfFreedom: 9 });
    expect(pooledRepeats([])).toEqual({ kind: "tooFew", degreesOfFreedom: 0 });
    expect(pooledRepeats(many(repeats(9, 1), 10)).kind).toBe("scattersMore");
  });

  it("leaves out single readings, what has no repeatability, and what rounding makes alike", () => {
    const out = [repeats(9, 0), { ...repeats(9), repeatability: 0 }, repeats(0, 2, 1.01)];
    expect(pooledRepeats([...many(repeats(1)), ...out])).toEqual(pooledRepeats(many(repeats(1))));
    expect(pooledRepeats(many(repeats(1, 2, 1)))).toMatchObject({ degreesOfFreedom: 40 });
  });

  it("goes by the significance asked for, on both sides", () => {
    const [more, less] = [many(repeats(1.25)), many(repeats(0.75))];
    expect([more, less].map((all) => pooledRepeats(all).kind)).toEqual(["asDeclared", "asDeclared"]);
    expect([more, less].map((all) => pooledRepeats(all, 0.05).kind)).toEqual(["scattersMore", "tooAlike"]);
  });

  it.each([0, 0.5, 1])(
    "raises a false alarm in about one of a hundred, rounded to %d of s₀",
    (resolution) => {
      const random = seededRandom(4);
      const kinds = Array.from({ length: 2000 }, () => pooledRepeats(report(random, 1, resolution)).kind);
      expect(kinds.filter((kind) => kind !== "asDeclared").length).toBeLessThan(36);
      expect(kinds.filter((kind) => kind !== "asDeclared").length).toBeGreaterThan(6);
    },
  );

  it("finds noise of one and a half times in most reports", () => {
    const random = seededRandom(6);
    const kinds = Array.from({ length: 200 }, () => pooledRepeats(report(random, 1.5, 0.5)).kind);
    expect(kinds.filter((kind) => kind === "scattersMore").length).toBeGreaterThan(150);
  });

  it("has chances that add up to 1, and a ratio that knows no unit", () => {
    const one = fc.record({
      seen: fc.record({
        standardDeviation: fc.double({ min: 0, max: 3, noNaN: true }),
        degreesOfFreedom: fc.integer({ min: 1, max: 5 }),
      }),
      repeatability: fc.double({ min: 0.5, max: 2, noNaN: true }),
      resolution: fc.double({ min: 0, max: 0.5, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(one, { minLength: 10, maxLength: 30 }), (all) => {
        const [here, there] = [pooledRepeats(all), pooledRepeats(all.map(inOther))];
        if (here.kind === "tooFew" || there.kind === "tooFew") throw new Error("too few");
        expect(here.chanceOfMore + here.chanceOfLess).toBeCloseTo(1, 6);
        expect(there.ratio).toBeCloseTo(here.ratio, 9);
      }),
      { numRuns: 1000 },
    );
  });

  it("refuses what is negative", () => {
    const refusal = new RangeError(
      "Standard deviations, repeatability and resolution must be numbers from 0.",
    );
    for (const wrong of [repeats(-1), { ...repeats(1), repeatability: -1 }, repeats(1, 2, -1)]) {
      expect(() => pooledRepeats([wrong])).toThrow(refusal);
    }
  });
});
