import { describe, expect, it } from "vitest";
import * as r from "lib-r-math.js";
import { betaCdf, betaQuantile } from "@evenhand/measurement/beta-distribution";
import { fCritical, fUpperTail } from "@evenhand/measurement/f-test";
import { hodgesLehmann } from "@evenhand/measurement/hodges-lehmann";
import { normalCdf, normalQuantile } from "@evenhand/measurement/normal-distribution";
import { signTest } from "@evenhand/measurement/sign-test";
import { studentCdf, studentQuantile } from "@evenhand/measurement/student-distribution";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { studentTail } from "@evenhand/measurement/student-tail";
import precise from "../../fixtures/published/distributions.json" with { type: "json" };

/*
 * Reference: lib-r-math.js 2, a translation of R's own nmath. Its incomplete beta function is good to 1e-7 of
 * itself only (at ν = 1 it gives 0.750 000 012 for Student's ¾, which is exact), so where it comes in, the
 * comparison is to 3e-7 (1e-5 for F), and closed forms below settle the rest.
 */
const REFERENCE = 3e-7;

const grid = <A, B>(as: readonly A[], bs: readonly B[]): [A, B][] =>
  as.flatMap((a) => bs.map((b): [A, B] => [a, b]));

const worst = (errors: readonly number[]): number => Math.max(...errors);
const relative = (value: number, reference: number): number =>
  value === reference ? 0 : Math.abs(value / reference - 1);

const DEGREES = [1, 1.5, 2, 3, 4.7, 7, 10, 16.8, 30, 61.3, 120, 1000];
const PROBABILITIES = [0.001, 0.005, 0.025, 0.05, 0.1, 0.3, 0.7, 0.9, 0.95, 0.975, 0.995, 0.999];
const SHAPES = [0.5, 1, 2.5, 4, 18.5, 96, 196.5];

const signs = (positive: number, negative: number): number[] => [
  ...Array.from({ length: positive }, () => 1),
  ...Array.from({ length: negative }, () => -1),
];

describe("distributions against a translation of R", () => {
  it("normal", () => {
    const zs = [-8, -5, -3, -1.96, -1, -0.1, 0, 0.5, 1.645, 2.5, 4];
    expect(worst(zs.map((z) => relative(normalCdf(z), r.pnorm(z, 0, 1))))).toBeLessThan(1e-12);
    expect(worst(PROBABILITIES.map((p) => relative(normalQuantile(p), r.qnorm(p, 0, 1))))).toBeLessThan(
      1e-13,
    );
  });

  it("Student", () => {
    const cdf = grid([-6, -2, -0.7, 0.3, 1, 2.5, 9], DEGREES).map(([t, v]) =>
      Math.abs(studentCdf(t, v) - r.pt(t, v)),
    );
    const quantile = grid(PROBABILITIES, DEGREES).map(([p, v]) =>
      relative(studentQuantile(p, v), r.qt(p, v)),
    );
    expect(worst(cdf)).toBeLessThan(REFERENCE);
    expect(worst(quantile)).toBeLessThan(REFERENCE);
  });

  it("two-sided Student factor, to 1e-12 of the quantile", () => {
    const factors = grid([0.9, 0.95, 0.9545, 0.99], [...DEGREES, 1.01, 2.3, 1e5, Infinity]).map(
      ([coverage, v]) => relative(coverageFactor(v, coverage), studentQuantile((1 + coverage) / 2, v)),
    );
    expect(worst(factors)).toBeLessThan(1e-12);
  });

  it("beta", () => {
    const shapes = grid(SHAPES, SHAPES);
    const quantile = grid(PROBABILITIES, shapes).map(([p, [a, b]]) =>
      relative(betaQuantile(p, a, b), r.qbeta(p, a, b)),
    );
    const cdf = grid([0.01, 0.2, 0.5, 0.9], shapes).map(([x, [a, b]]) =>
      Math.abs(betaCdf(x, a, b) - r.pbeta(x, a, b)),
    );
    expect(worst(quantile)).toBeLessThan(REFERENCE);
    expect(worst(cdf)).toBeLessThan(REFERENCE);
  });

  it("F", () => {
    const degrees = grid([1, 2, 3, 5, 8], [1, 5, 30, 60, 1000]);
    const critical = degrees.map(([a, b]) => relative(fCritical(a, b, 0.01), r.qf(0.99, a, b)));
    const tail = grid([0.5, 2, 6], degrees).map(([f, [a, b]]) =>
      Math.abs(fUpperTail(f, a, b) - (1 - r.pf(f, a, b))),
    );
    expect(worst(critical)).toBeLessThan(3e-5);
    expect(worst(tail)).toBeLessThan(1e-5);
  });

  it("exact sign test", () => {
    for (const [positive, negative] of [
      [8, 1],
      [3, 9],
      [20, 11],
      [0, 12],
    ] as const) {
      const reference = 2 * r.pbinom(Math.min(positive, negative), positive + negative, 0.5);
      expect(signTest(signs(positive, negative)).pValue).toBeCloseTo(reference, 7);
    }
  });
});

const degrees = (given: number | null): number => given ?? Infinity;
const tailOf = ({ f, above, below }: { f: number; above: number; below: number | null }) =>
  fUpperTail(f, above, degrees(below));

/** Source: fixtures/published/distributions.json, reckoned at eighty digits. What the docstrings promise, and a little more. */
describe("distributions against arbitrary precision", () => {
  it("Student's tail to 1e-12, and to 2e-7 of itself up to t = 8", () => {
    const tails = precise.studentTail.map(({ t, v, tail }) => ({ own: studentTail(t, v), tail }));
    expect(worst(tails.map(({ own, tail }) => Math.abs(own - tail)))).toBeLessThan(1e-12);
    expect(worst(tails.map(({ own, tail }) => relative(own, tail)))).toBeLessThan(2e-7);
  });

  it("Student's tail and probability to 1e-14 of themselves under 30 degrees of freedom", () => {
    const few = precise.studentTail.filter(({ v }) => v < 30);
    expect(few.length).toBeGreaterThan(60);
    expect(worst(few.map(({ t, v, tail }) => relative(studentTail(t, v), tail)))).toBeLessThan(1e-14);
    expect(worst(few.map(({ t, v, tail }) => relative(studentCdf(-t, v), tail)))).toBeLessThan(1e-14);
  });

  it("two-sided Student factor to 1e-13 of itself", () => {
    const errors = precise.coverageFactor.map(({ coverage, v, k }) =>
      relative(coverageFactor(degrees(v), coverage), k),
    );
    expect(worst(errors)).toBeLessThan(1e-13);
  });

  it("F's upper tail to 1e-13 of itself, and to 1e-8 where the spread below is known", () => {
    const [known, estimated] = [true, false].map((infinite) =>
      precise.fTail.filter(({ below }) => (below === null) === infinite),
    );
    expect(worst((estimated ?? []).map((row) => relative(tailOf(row), row.tail)))).toBeLessThan(1e-13);
    expect(worst((known ?? []).map((row) => Math.abs(tailOf(row) - row.tail)))).toBeLessThan(1e-8);
  });

  it("F's critical value to 1e-13 of itself, and to 1e-7 where the spread below is known", () => {
    for (const { above, below, significance, critical } of precise.fCritical) {
      const error = relative(fCritical(above, degrees(below), significance), critical);
      expect(error, `${above} ${below} ${significance}`).toBeLessThan(below === null ? 1e-7 : 1e-13);
    }
  });

  it("normal probability to 2e-13 of itself down to z = -30", () => {
    expect(worst(precise.normal.map(({ z, below }) => relative(normalCdf(z), below)))).toBeLessThan(2e-13);
  });

  it("beta probability to 1e-14", () => {
    const errors = precise.beta.map(({ x, a, b, below }) => Math.abs(betaCdf(x, a, b) - below));
    expect(worst(errors)).toBeLessThan(1e-14);
  });
});

describe("distributions against closed forms", () => {
  it("Student with one and two degrees of freedom", () => {
    for (const t of [-31, -4, -0.5, 0.2, 1, 3, 12]) {
      expect(studentCdf(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 14);
      expect(studentCdf(t, 2)).toBeCloseTo(0.5 + t / (2 * Math.sqrt(2 + t * t)), 14);
    }
    for (const p of [0.6, 0.9, 0.975, 0.995]) {
      expect(relative(studentQuantile(p, 1), Math.tan(Math.PI * (p - 0.5)))).toBeLessThan(1e-12);
      expect(relative(studentQuantile(p, 2), (2 * p - 1) / Math.sqrt(2 * p * (1 - p)))).toBeLessThan(1e-12);
    }
  });

  it("F with two degrees of freedom above", () => {
    for (const below of [1, 4, 30, 200]) {
      // P(F > f) = (1 + 2f/d)^(−d/2), and so f = (d/2)·(p^(−2/d) − 1).
      const critical = (below / 2) * (0.01 ** (-2 / below) - 1);
      expect(relative(fCritical(2, below, 0.01), critical)).toBeLessThan(1e-10);
      expect(relative(fUpperTail(3, 2, below), (1 + 6 / below) ** (-below / 2))).toBeLessThan(1e-12);
    }
    expect(relative(fCritical(2, Infinity, 0.01), -Math.log(0.01))).toBeLessThan(1e-7);
  });

  it("beta with one shape 1", () => {
    expect(betaQuantile(0.025, 1, 10)).toBeCloseTo(1 - 0.975 ** (1 / 10), 14);
    expect(betaCdf(0.3, 4, 1)).toBeCloseTo(0.3 ** 4, 15);
  });

  /** NIST/SEMATECH e-Handbook 1.3.6.7.3, upper critical values of F at 1 %, from memory. */
  it("F as tabled", () => {
    expect(fCritical(1, 30)).toBeCloseTo(7.562, 3);
    expect(fCritical(2, 30)).toBeCloseTo(5.39, 3);
    expect(fCritical(5, 10)).toBeCloseTo(5.636, 3);
  });
});

const scattered = (items: number): number[] =>
  Array.from({ length: items }, (_, i) => Math.sin(5 * i) * (i + 1));

const averagesOf = (differences: readonly number[]): number[] =>
  differences.flatMap((a, i) => differences.slice(i).map((b) => (a + b) / 2)).sort((a, b) => a - b);

/**
 * Critical values of Wilcoxon's signed-rank sum, two-sided 5 % (Wilcoxon and Wilcox 1964), from memory; over 50 items counted in whole
 * numbers out of the 2^n ways of signs.
 */
describe("signed-rank sums", () => {
  it.each([
    [6, 0],
    [7, 2],
    [8, 3],
    [9, 5],
    [10, 8],
    [12, 13],
    [15, 25],
    [20, 52],
    [25, 89],
    [30, 137],
    [40, 264],
    [50, 434],
    [60, 648],
    [80, 1211],
    [100, 1955],
    [101, 1997],
    [120, 2881],
    [150, 4618],
    [200, 8444],
  ])("%d items: the interval leaves out %d averages at each end", (items, critical) => {
    const averages = averagesOf(scattered(items));
    expect(hodgesLehmann(scattered(items))).toMatchObject({
      low: averages[critical],
      high: averages[averages.length - 1 - critical],
    });
  });

  /** The same tables' column of 1 %. */
  it.each([
    [8, 0],
    [9, 1],
    [10, 3],
    [12, 7],
    [15, 15],
    [20, 37],
    [25, 68],
    [30, 109],
    [50, 373],
  ])("%d items at 99 %%: the interval leaves out %d averages at each end", (items, critical) => {
    const averages = averagesOf(scattered(items));
    expect(hodgesLehmann(scattered(items), 0.99)).toMatchObject({
      low: averages[critical],
      high: averages[averages.length - 1 - critical],
    });
  });
});
