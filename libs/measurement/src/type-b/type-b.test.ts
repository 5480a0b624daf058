import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededRandom } from "../random/index.ts";
import { sampleStandardDeviation } from "../type-a/index.ts";
import { arcsine, rectangular, resolution, trapezoid, triangular } from "./index.ts";

/** The spread of many draws. */
const draw = (next: () => number): number => sampleStandardDeviation(Array.from({ length: 40_000 }, next));

const half = fc.double({ min: 0, max: 1e6, noNaN: true });

describe("type B evaluation", () => {
  it("has the results its examples state", () => {
    expect(rectangular(0.06)).toBeCloseTo(0.03464101615137755, 15);
    expect(triangular(0.1)).toBeCloseTo(0.04082482904638631, 15);
    expect(trapezoid(0.1, 0.5)).toBeCloseTo(0.0456435464587638, 15);
    expect(arcsine(0.1)).toBeCloseTo(0.07071067811865475, 15);
    expect(resolution(1)).toBeCloseTo(0.2886751345948129, 15);
  });

  it("is the standard deviation of the distribution it names", () => {
    const random = seededRandom(11);
    expect(draw(() => 2 * random() - 1)).toBeCloseTo(rectangular(1), 2);
    expect(draw(() => random() + random() - 1)).toBeCloseTo(triangular(1), 2);
    // The sum of rectangles of half-widths ¾ and ¼ is a trapezoid whose top is half its base.
    expect(draw(() => 1.5 * (random() - 0.5) + 0.5 * (random() - 0.5))).toBeCloseTo(trapezoid(1, 0.5), 2);
    expect(draw(() => Math.sin(2 * Math.PI * random()))).toBeCloseTo(arcsine(1), 2);
    expect(draw(() => random() - 0.5)).toBeCloseTo(resolution(1), 2);
  });

  it("is a rectangle or a triangle at the ends of the trapezoid", () => {
    fc.assert(
      fc.property(half, fc.double({ min: 0, max: 1, noNaN: true }), (a, topShare) => {
        expect(trapezoid(a, 1)).toBeCloseTo(rectangular(a), 8);
        expect(trapezoid(a, 0)).toBeCloseTo(triangular(a), 8);
        expect(trapezoid(a, topShare)).toBeLessThanOrEqual(rectangular(a) * (1 + 1e-12));
        expect(trapezoid(a, topShare)).toBeGreaterThanOrEqual(triangular(a) * (1 - 1e-12));
        expect(resolution(2 * a)).toBeCloseTo(rectangular(a), 8);
      }),
      { numRuns: 1000 },
    );
  });

  it("takes nothing as nothing", () => {
    expect([rectangular, triangular, arcsine, resolution].map((evaluate) => evaluate(0))).toEqual([
      0, 0, 0, 0,
    ]);
  });

  it.each([
    [() => rectangular(-1), "The half-width must be a number from 0: -1"],
    [() => triangular(-1), "The half-width must be a number from 0: -1"],
    [() => trapezoid(-1, 0), "The half-width must be a number from 0: -1"],
    [() => arcsine(Number.NaN), "The half-width must be a number from 0: NaN"],
    [() => resolution(-2), "The step must be a number from 0: -2"],
    [() => trapezoid(1, 1.1), "The top's share must be 0 to 1: 1.1"],
    [() => trapezoid(1, -0.1), "The top's share must be 0 to 1: -0.1"],
  ])("refuses %s", (act, message) => {
    expect(act).toThrow(new RangeError(message));
  });
});
