import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { betaCdf } from "../beta-distribution/index.ts";
import { clopperPearsonInterval, jeffreysInterval, wilsonInterval } from "./index.ts";

const METHODS = [wilsonInterval, jeffreysInterval, clopperPearsonInterval];
const methods = fc.constantFrom(...METHODS);
const counts = fc
  .integer({ min: 1, max: 200 })
  .chain((trials) => fc.tuple(fc.integer({ min: 0, max: trials }), fc.constant(trials)));

describe("intervals for a share", () => {
  it("has the results its examples state", () => {
    const wilson = wilsonInterval(4, 20);
    expect(wilson.low).toBeCloseTo(0.0806576625797981, 14);
    expect(wilson.high).toBeCloseTo(0.4160174322518935, 14);
    expect(jeffreysInterval(4, 20).low).toBeCloseTo(0.0715, 4);
    expect(jeffreysInterval(4, 20).high).toBeCloseTo(0.4082, 4);
    expect(clopperPearsonInterval(4, 20).low).toBeCloseTo(0.0573, 4);
    expect(clopperPearsonInterval(4, 20).high).toBeCloseTo(0.4366, 4);
  });

  it("ends at 0 and 1 where all failed or all succeeded, and only there", () => {
    for (const interval of METHODS) {
      expect(interval(0, 12).low).toBe(0);
      expect(interval(0, 12).high).toBeLessThan(0.4);
      expect(interval(12, 12).high).toBe(1);
      expect(interval(12, 12).low).toBeGreaterThan(0.6);
      expect(interval(1, 12).low).toBeGreaterThan(0);
      expect(interval(11, 12).high).toBeLessThan(1);
    }
  });

  it("ends there without rounding, however many trials", () => {
    const trials = Array.from({ length: 300 }, (_, i) => i + 1);
    expect(trials.filter((n) => wilsonInterval(0, n).low !== 0)).toEqual([]);
    expect(trials.filter((n) => wilsonInterval(n, n).high !== 1)).toEqual([]);
  });

  it("refuses no trials, and more or fewer successes than there can be", () => {
    for (const interval of METHODS) {
      expect(() => interval(0, 0)).toThrow(new RangeError("A share needs at least one trial: 0"));
      expect(() => interval(0, Number.NaN)).toThrow(RangeError);
      expect(() => interval(5, 4)).toThrow(new RangeError("Successes must be 0 to 4: 5"));
      expect(() => interval(-1, 4)).toThrow(new RangeError("Successes must be 0 to 4: -1"));
    }
  });

  it("has the tails it states", () => {
    const { low, high } = jeffreysInterval(7, 30, 0.9);
    expect(betaCdf(low, 7.5, 23.5)).toBeCloseTo(0.05, 9);
    expect(betaCdf(high, 7.5, 23.5)).toBeCloseTo(0.95, 9);
    const exact = clopperPearsonInterval(7, 30, 0.9);
    expect(betaCdf(exact.low, 7, 24)).toBeCloseTo(0.05, 9);
    expect(betaCdf(exact.high, 8, 23)).toBeCloseTo(0.95, 9);
    const wilson = wilsonInterval(7, 30, 0.9);
    for (const end of [wilson.low, wilson.high]) {
      expect(Math.abs(7 / 30 - end) / Math.sqrt((end * (1 - end)) / 30)).toBeCloseTo(1.644853627, 8);
    }
  });

  it("holds the share seen, mirrors failure and success, and widens with confidence", () => {
    fc.assert(
      fc.property(methods, counts, (interval, [successes, trials]) => {
        const { low, high } = interval(successes, trials);
        expect(low).toBeLessThanOrEqual(successes / trials);
        expect(high).toBeGreaterThanOrEqual(successes / trials);
        const mirrored = interval(trials - successes, trials);
        expect(mirrored.low).toBeCloseTo(1 - high, 9);
        expect(mirrored.high).toBeCloseTo(1 - low, 9);
        const wider = interval(successes, trials, 0.99);
        expect(wider.low).toBeLessThanOrEqual(low);
        expect(wider.high).toBeGreaterThanOrEqual(high);
      }),
      { numRuns: 1000 },
    );
  });
});
