import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { sampleStandardDeviation } from "../type-a/index.ts";
import { fCritical, fTest, fUpperTail } from "./index.ts";

const spread = (standardDeviation: number, degreesOfFreedom: number) => ({
  standardDeviation,
  degreesOfFreedom,
});

describe("fTest", () => {
  it("has the results its examples state", () => {
    expect(fCritical(1, 30)).toBeCloseTo(7.562476, 6);
    expect(fUpperTail(9, 2, 30)).toBeCloseTo(0.000867, 6);
    const { ratio, critical, larger } = fTest(spread(3, 2), spread(1, 30));
    expect(ratio).toBe(9);
    expect(critical).toBeCloseTo(5.39, 3);
    expect(larger).toBe(true);
  });

  it("draws the line at the critical value of its own significance", () => {
    const critical = Math.sqrt(fCritical(3, 30, 0.05));
    expect(fTest(spread(critical * 1.001, 3), spread(1, 30), 0.05).larger).toBe(true);
    expect(fTest(spread(critical * 0.999, 3), spread(1, 30), 0.05).larger).toBe(false);
    expect(fTest(spread(critical * 1.001, 3), spread(1, 30)).larger).toBe(false);
  });

  it("lets a spread at the critical value itself pass", () => {
    const exact = Array.from({ length: 40 }, (_, i) => fCritical(i + 1, 30)).map((critical, i) => ({
      critical,
      observed: spread(Math.sqrt(critical), i + 1),
    }));
    const tied = exact.filter(({ critical, observed }) => observed.standardDeviation ** 2 === critical);
    expect(tied.length).toBeGreaterThan(0);
    expect(tied.some(({ observed }) => fTest(observed, spread(1, 30)).larger)).toBe(false);
  });

  it("claims nothing of one reading or of readings that do not scatter", () => {
    const nothing = { ratio: 0, critical: Infinity, larger: false };
    expect(fTest(spread(5, 0), spread(1, 30))).toEqual(nothing);
    expect(fTest(spread(5, Number.NaN), spread(1, 30))).toEqual(nothing);
    expect(fTest(spread(0, 3), spread(1, 30))).toEqual(nothing);
    expect(fTest(spread(0, 3), spread(0, 30))).toEqual(nothing);
  });

  it("calls any scatter larger than none", () => {
    expect(fTest(spread(0.1, 2), spread(0, 30))).toMatchObject({ ratio: Infinity, larger: true });
  });

  it("takes infinite degrees of freedom as known", () => {
    expect(fCritical(2, Infinity)).toBeCloseTo(-Math.log(0.01), 6);
    expect(fUpperTail(3, 2, Infinity)).toBeCloseTo(Math.exp(-3), 7);
    expect(fTest(spread(2.2, 2), spread(1, Infinity)).larger).toBe(true);
    expect(fTest(spread(2.1, 2), spread(1, Infinity)).larger).toBe(false);
  });

  it("refuses negative spreads", () => {
    const refusal = new RangeError("Standard deviations must be numbers from 0.");
    expect(() => fTest(spread(-1, 2), spread(1, 30))).toThrow(refusal);
    expect(() => fTest(spread(1, 2), spread(-1, 30))).toThrow(refusal);
  });

  it("answers the same when asked again, after more questions than it remembers", () => {
    const first = fCritical(2, 31.5);
    for (let i = 1; i <= 5000; i += 1) fCritical(2, 30 + i / 7);
    expect(fCritical(2, 31.5)).toBe(first);
    expect(fUpperTail(fCritical(2, 9999.5), 2, 9999.5)).toBeCloseTo(0.01, 9);
  });

  it("has a critical value that chance exceeds as often as stated", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 5, max: 200 }),
        fc.constantFrom(0.01, 0.05, 0.1),
        (above, below, significance) => {
          expect(fUpperTail(fCritical(above, below, significance), above, below)).toBeCloseTo(
            significance,
            7,
          );
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("raises a false alarm in about one of a hundred", () => {
    const random = seededRandom(5);
    const normals = (count: number): number[] => Array.from({ length: count }, () => normalDeviate(random));
    let alarms = 0;
    for (let i = 0; i < 10_000; i += 1) {
      const observed = spread(sampleStandardDeviation(normals(3)), 2);
      if (fTest(observed, spread(1, Infinity)).larger) alarms += 1;
    }
    expect(alarms).toBeGreaterThan(60);
    expect(alarms).toBeLessThan(140);
  });
});
