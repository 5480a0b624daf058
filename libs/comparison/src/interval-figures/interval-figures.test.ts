import { describe, expect, it } from "vitest";
import { studentCdf } from "@evenhand/measurement/student-distribution";
import { intervalFigures, worseBy, worseWay } from "./index.ts";
import type { MeasuredPair } from "./index.ts";

const side = (mean: number) => ({
  mean,
  count: 1,
  standardUncertainty: 1,
  degreesOfFreedom: null,
  scatterReplaced: false,
  byEye: false,
});
const figures = (a: number, b: number, more: Partial<MeasuredPair> = {}) =>
  intervalFigures({
    unit: "psi",
    a: side(a),
    b: side(b),
    difference: a - b,
    standardUncertainty: 2,
    degreesOfFreedom: 30,
    delta: 10,
    worse: { is: "lower" },
    ...more,
  });

describe("intervalFigures", () => {
  it("gives U, zeta and E_n of the difference", () => {
    const result = figures(104, 100);
    expect(result.coverageFactor).toBeCloseTo(2.0422724563, 9);
    expect(result.expandedUncertainty).toBeCloseTo(4.0845449126, 9);
    expect(result.of).toBe("reading");
    expect(result.zetaScore).toBe(2);
    expect(result.eNumber).toBeCloseTo(4 / 4.0845449126, 9);
  });

  it("gives the two-sided p-value of no difference", () => {
    expect(figures(104, 100).pValue).toBeCloseTo(2 * studentCdf(-2, 30), 11);
    expect(figures(100, 104).pValue).toBeCloseTo(2 * studentCdf(-2, 30), 11);
  });

  it("writes infinite degrees of freedom as null", () => {
    expect(figures(1, 0, { degreesOfFreedom: Number.POSITIVE_INFINITY }).degreesOfFreedom).toBeNull();
    expect(figures(1, 0).degreesOfFreedom).toBe(30);
  });

  it("takes a difference under 1e-9 of δ as rounding", () => {
    expect(figures(100, 100, { difference: 9e-9 }).difference).toBe(0);
    expect(figures(100, 100, { difference: 2e-8 }).difference).toBe(2e-8);
  });

  it("needs no uncertainty", () => {
    expect(figures(1, 0, { standardUncertainty: 0 })).toMatchObject({
      zetaScore: null,
      eNumber: null,
      pValue: 0,
      probabilityWorse: 1,
    });
    expect(figures(0, 1, { standardUncertainty: 0 })).toMatchObject({ probabilityWorse: 0 });
    expect(figures(1, 1, { standardUncertainty: 0 })).toMatchObject({
      zetaScore: 0,
      pValue: 1,
      probabilityWorse: 0,
    });
  });
});

describe("the probability of worse", () => {
  it("lies on the side that is worse", () => {
    expect(figures(104, 100).probabilityWorse).toBeCloseTo(studentCdf(2, 30), 11);
    expect(figures(100, 104).probabilityWorse).toBeCloseTo(studentCdf(-2, 30), 11);
    expect(figures(104, 100, { worse: { is: "higher" } }).probabilityWorse).toBeCloseTo(
      studentCdf(-2, 30),
      11,
    );
  });

  it("is even where nothing differs", () => {
    expect(figures(100, 100).probabilityWorse).toBeCloseTo(0.5, 11);
  });

  it("is of lying farther from a target", () => {
    const worse = { is: "away", target: 100 } as const;
    expect(figures(101, 105, { worse }).probabilityWorse).toBeCloseTo(studentCdf(2, 30), 11);
    expect(figures(97, 106, { worse }).probabilityWorse).toBeCloseTo(studentCdf(1.5, 30), 11);
    expect(figures(101, 105, { worse, standardUncertainty: 0 }).probabilityWorse).toBe(1);
  });

  it("is of a difference that matters, either way, where no side is worse", () => {
    const expected = studentCdf(-3, 30) + studentCdf(-7, 30);
    expect(figures(104, 100, { worse: { is: "unknown" } }).probabilityWorse).toBeCloseTo(expected, 11);
    expect(figures(100, 111, { worse: { is: "unknown" }, standardUncertainty: 0 }).probabilityWorse).toBe(1);
    expect(figures(100, 110, { worse: { is: "unknown" }, standardUncertainty: 0 }).probabilityWorse).toBe(0);
  });
});

describe("which way is worse", () => {
  const means = { a: { mean: 8 }, b: { mean: 5 }, difference: 3 };

  it("is lower where higher is better, and higher where lower is", () => {
    expect(worseBy(means, worseWay({ betterIs: "higher" }))).toBe(3);
    expect(worseBy(means, worseWay({ betterIs: "lower" }))).toBe(-3);
  });

  it("is away from a target, and not known without one", () => {
    expect(worseBy(means, worseWay({ betterIs: "target", target: 7 }))).toBe(1);
    expect(worseBy(means, worseWay({ betterIs: "target" }))).toBeUndefined();
  });
});
