import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { median } from "../median/index.ts";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { hodgesLehmann } from "./index.ts";
import { signedRankQuantile } from "./signed-rank.ts";
import { walshAverage } from "./walsh-averages.ts";

const averagesOf = (values: readonly number[]): number[] =>
  values.flatMap((a, i) => values.slice(i).map((b) => (a + b) / 2)).sort((a, b) => a - b);

const estimated = (differences: readonly number[], confidence?: number) => {
  const result = hodgesLehmann(differences, confidence);
  if (result.kind !== "estimated") throw new Error(result.kind);
  return result;
};

const figures = fc.oneof(fc.integer({ min: -5, max: 5 }), fc.double({ min: -10, max: 10, noNaN: true }));

describe("walshAverage", () => {
  it("is the k-th smallest of all averages, whatever the values", () => {
    fc.assert(
      fc.property(fc.array(figures, { minLength: 1, maxLength: 14 }), (values) => {
        const sorted = Float64Array.from(values).sort();
        const averages = averagesOf([...sorted]);
        expect(averages.map((_, k) => walshAverage(sorted, k + 1) + 0)).toEqual(
          averages.map((one) => one + 0),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it("ends between neighboring numbers", () => {
    const next = 1 + Number.EPSILON;
    const sorted = Float64Array.from([1, next, next]);
    expect([1, 2, 3, 4, 5, 6].map((k) => walshAverage(sorted, k))).toEqual(averagesOf([...sorted]));
    const odd = Float64Array.from([next, next + Number.EPSILON]);
    expect([1, 2, 3].map((k) => walshAverage(odd, k))).toEqual(averagesOf([...odd]));
  });
});

describe("signedRankQuantile", () => {
  it("has the result its example states", () => {
    expect(signedRankQuantile(0.025, 10)).toBe(9);
  });

  it("is the smallest sum that so many of all patterns of signs stay at or under", () => {
    for (let items = 1; items <= 10; items += 1) {
      const sums = Array.from({ length: 2 ** items }, (_, pattern) =>
        Array.from({ length: items }, (_unused, i) => ((pattern >> i) & 1) * (i + 1)).reduce(
          (a, b) => a + b,
          0,
        ),
      ).sort((a, b) => a - b);
      for (const probability of [0.005, 0.025, 0.05, 0.25, 0.3, 0.5, 0.7, 1]) {
        const place = Math.ceil(probability * sums.length) - 1;
        expect(signedRankQuantile(probability, items)).toBe(sums[place]);
      }
    }
  });

  it("goes over into the normal without a step", () => {
    const steps = Array.from({ length: 8 }, (_, i) => 46 + i).map(
      (items) => signedRankQuantile(0.025, items + 1) - signedRankQuantile(0.025, items),
    );
    for (const step of steps) {
      expect(step).toBeGreaterThanOrEqual(16);
      expect(step).toBeLessThanOrEqual(21);
    }
    expect(signedRankQuantile(0.025, 50)).toBe(435);
    // Mean 663, deviation √(51·52·103/24): 663 − 1.96·106.69 − ½, rounded up.
    expect(signedRankQuantile(0.025, 51)).toBe(454);
  });
});

describe("hodgesLehmann", () => {
  it("has the result its example states", () => {
    expect(hodgesLehmann([1, 2, 3, 4, 5, 6, 7])).toEqual({
      kind: "estimated",
      shift: 4,
      low: 2,
      high: 6,
      items: 7,
    });
  });

  it("says too few where no interval reaches the confidence", () => {
    expect(hodgesLehmann([1, 2, 3, 4, 5])).toEqual({ kind: "tooFew", items: 5, least: 6 });
    expect(hodgesLehmann([1, 2, 3, 4, 5, 6])).toMatchObject({ kind: "estimated", low: 1, high: 6 });
    expect(hodgesLehmann([1, 2, 3, 4], 0.9)).toEqual({ kind: "tooFew", items: 4, least: 5 });
    expect(hodgesLehmann([])).toMatchObject({ kind: "tooFew", items: 0 });
  });

  it("refuses what is no number", () => {
    const refusal = new RangeError("Differences must be finite numbers.");
    expect(() => hodgesLehmann([1, Number.NaN])).toThrow(refusal);
    expect(() => hodgesLehmann([1, Infinity])).toThrow(refusal);
  });

  it("leaves its input alone", () => {
    const differences = Object.freeze([3, 1, 2, 9, 8, 7]);
    expect(estimated(differences).shift).toBe(5);
    expect(differences).toEqual([3, 1, 2, 9, 8, 7]);
  });

  it("is the median of all averages, inside its interval, and moves with the differences", () => {
    fc.assert(
      fc.property(fc.array(figures, { minLength: 6, maxLength: 25 }), (differences) => {
        const result = estimated(differences);
        expect(result.shift).toBeCloseTo(median(averagesOf(differences)), 12);
        expect(result.low).toBeLessThanOrEqual(result.shift);
        expect(result.high).toBeGreaterThanOrEqual(result.shift);
        const turned = estimated(differences.map((value) => -2 * value + 8));
        expect(turned.shift).toBeCloseTo(-2 * result.shift + 8, 9);
        expect(turned.low).toBeCloseTo(-2 * result.high + 8, 9);
        expect(turned.high).toBeCloseTo(-2 * result.low + 8, 9);
      }),
      { numRuns: 1000 },
    );
  });

  it("is wider with more confidence", () => {
    const differences = Array.from({ length: 20 }, (_, i) => Math.sin(i));
    const [wide, narrow] = [0.99, 0.8].map((confidence) => estimated(differences, confidence));
    expect((wide?.high ?? 0) - (wide?.low ?? 0)).toBeGreaterThan((narrow?.high ?? 0) - (narrow?.low ?? 0));
  });

  it.each([8, 30, 70])("holds the true shift of %d items about as often as it says", (items) => {
    const random = seededRandom(items);
    let held = 0;
    for (let i = 0; i < 1000; i += 1) {
      const { low, high } = estimated(Array.from({ length: items }, () => 3 + normalDeviate(random)));
      if (low <= 3 && high >= 3) held += 1;
    }
    expect(held).toBeGreaterThan(930);
    expect(held).toBeLessThan(980);
  });
});
