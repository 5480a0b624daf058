import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { betaQuantile } from "../beta-distribution/index.ts";
import { seededRandom } from "../random/index.ts";
import { coverageFactor } from "../student-factor/index.ts";
import { clusterRatio, clusterShare } from "./index.ts";
import type { Cluster } from "./index.ts";

const RUNS = { numRuns: 1000 };
const cluster = fc
  .integer({ min: 1, max: 40 })
  .chain((count) => fc.record({ total: fc.integer({ min: 0, max: count }), count: fc.constant(count) }));
const clusters = fc.array(cluster, { minLength: 2, maxLength: 30 });

describe("clusterRatio", () => {
  it("is a plain mean with Student's interval where every cluster holds one thing", () => {
    const values = [3, 5, 4, 8];
    const { estimate, standardError, low, high } = clusterRatio(values.map((total) => ({ total, count: 1 })));
    expect(estimate).toBe(5);
    expect(standardError).toBeCloseTo(Math.sqrt(14 / 3 / 4), 12);
    expect(high - estimate).toBeCloseTo(coverageFactor(3) * standardError, 12);
    expect(estimate - low).toBeCloseTo(high - estimate, 12);
  });

  it("does not grow surer when everything in its clusters is said twice", () => {
    fc.assert(
      fc.property(clusters, (some) => {
        const [once, twice] = [
          some,
          some.map(({ total, count }) => ({ total: 2 * total, count: 2 * count })),
        ].map((each) => clusterRatio(each));
        expect(twice?.standardError).toBeCloseTo(once?.standardError ?? Number.NaN, 12);
        expect(twice?.estimate).toBeCloseTo(once?.estimate ?? Number.NaN, 12);
      }),
      RUNS,
    );
  });

  it("leaves out clusters in which nothing was counted", () => {
    const some = [
      { total: 1, count: 4 },
      { total: 2, count: 3 },
    ];
    expect(clusterRatio([...some, { total: 0, count: 0 }])).toEqual(clusterRatio(some));
    expect(clusterRatio(some)).toMatchObject({ clusters: 2, count: 7 });
  });

  it("asks for a wider interval where more is to be held", () => {
    const some = [1, 2, 4].map((total) => ({ total, count: 5 }));
    expect(clusterRatio(some, 0.9).high).toBeLessThan(clusterRatio(some).high);
  });

  it("refuses fewer than two clusters, and what is no count", () => {
    const refusal = new RangeError("A ratio over clusters needs at least two of them.");
    expect(() => clusterRatio([{ total: 1, count: 2 }])).toThrow(refusal);
    expect(() =>
      clusterRatio([
        { total: 1, count: 2 },
        { total: 0, count: 0 },
      ]),
    ).toThrow(refusal);
    const wrong = new RangeError("Totals must be numbers, counts numbers from 0.");
    for (const one of [
      { total: Number.NaN, count: 1 },
      { total: 1, count: -1 },
      { total: 1, count: Infinity },
    ]) {
      expect(() => clusterRatio([one, one])).toThrow(wrong);
    }
  });
});

describe("clusterShare", () => {
  it("has the estimate and the error of the ratio, and stays within 0 and 1", () => {
    fc.assert(
      fc.property(clusters, (some) => {
        const [ratio, share] = [clusterRatio(some), clusterShare(some)];
        expect([share.estimate, share.standardError]).toEqual([ratio.estimate, ratio.standardError]);
        expect(share.low).toBeGreaterThanOrEqual(0);
        expect(share.high).toBeLessThanOrEqual(1);
        expect(share.low).toBeLessThan(share.high);
        expect(share.effectiveCount).toBeLessThanOrEqual(share.count);
      }),
      RUNS,
    );
  });

  it("counts a car whose statements all move together as one trial", () => {
    const alike = [0, 0, 0, 9, 9, 9].map((total) => ({ total, count: 9 }));
    const { designEffect, effectiveCount } = clusterShare(alike);
    expect(designEffect).toBeCloseTo((9 * 6) / 5, 12);
    expect(effectiveCount).toBeCloseTo(5, 12);
  });

  it("is Jeffreys' interval on so many trials as it is worth, with Student's factor for the normal one", () => {
    const some = [1, 4, 2, 6, 3].map((total) => ({ total, count: 8 }));
    const { estimate, effectiveCount, low, high } = clusterShare(some, 0.9);
    const worth = effectiveCount * (1.6448536269514722 / coverageFactor(4, 0.9)) ** 2;
    expect(low).toBeCloseTo(betaQuantile(0.05, estimate * worth + 0.5, (1 - estimate) * worth + 0.5), 12);
    expect(high).toBeCloseTo(betaQuantile(0.95, estimate * worth + 0.5, (1 - estimate) * worth + 0.5), 12);
  });

  it("takes no more trials than there are where clusters are more alike than chance", () => {
    const { designEffect, effectiveCount } = clusterShare([5, 5, 5].map((total) => ({ total, count: 10 })));
    expect(designEffect).toBe(0);
    expect(effectiveCount).toBe(30);
  });

  it("takes a cluster for one trial where nothing or everything fell, and still has an interval", () => {
    const [none, all] = [0, 12].map((total) =>
      clusterShare(Array.from({ length: 20 }, () => ({ total, count: 12 }))),
    );
    expect(none).toMatchObject({ estimate: 0, low: 0, designEffect: 12, effectiveCount: 20 });
    expect(all).toMatchObject({ estimate: 1, high: 1, designEffect: 12, effectiveCount: 20 });
    expect(none?.high).toBeGreaterThan(0.09);
    expect(none?.high).toBeLessThan(0.15);
    expect(1 - (all?.low ?? 0)).toBeCloseTo(none?.high ?? 0, 12);
  });

  it("refuses a share over all or under nothing", () => {
    const refusal = new RangeError("A share's totals must be from 0 to their counts.");
    const fine = { total: 1, count: 2 };
    expect(() => clusterShare([fine, { total: 3, count: 2 }])).toThrow(refusal);
    expect(() => clusterShare([fine, { total: -1, count: 2 }])).toThrow(refusal);
  });
});

/** Cars of ten to fifty-nine tested statements, whose own shares of falls scatter about a dealer's. */
const dealer = (random: () => number, cars: number, share: number, weight: number): Cluster[] =>
  Array.from({ length: cars }, () => {
    const own = betaQuantile(random(), share * weight, (1 - share) * weight);
    const count = 10 + Math.floor(random() * 50);
    return { total: Array.from({ length: count }, () => random() < own).filter(Boolean).length, count };
  });

describe("the interval of a share", () => {
  it.each([
    [30, 0.05, 50],
    [30, 0.2, 10],
    [20, 0.1, 30],
  ])("of %d cars at a share of %d holds it about as often as it says", (cars, share, weight) => {
    const random = seededRandom(3);
    let held = 0;
    for (let round = 0; round < 400; round += 1) {
      const { low, high } = clusterShare(dealer(random, cars, share, weight), 0.9);
      if (low <= share && share <= high) held += 1;
    }
    expect(held / 400).toBeGreaterThan(0.86);
    expect(held / 400).toBeLessThan(0.94);
  });

  it("would hold it far less often were statements taken for independent", () => {
    const random = seededRandom(3);
    let held = 0;
    for (let round = 0; round < 400; round += 1) {
      const single = dealer(random, 30, 0.2, 10).flatMap(({ total, count }) =>
        Array.from({ length: count }, (_, index) => ({ total: index < total ? 1 : 0, count: 1 })),
      );
      const { low, high } = clusterShare(single, 0.9);
      if (low <= 0.2 && 0.2 <= high) held += 1;
    }
    expect(held / 400).toBeLessThan(0.7);
  });
});
