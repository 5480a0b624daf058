import { describe, expect, it } from "vitest";
import { difference } from "@evenhand/measurement/difference";
import { classifyInterval } from "@evenhand/measurement/equivalence";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { tost } from "@evenhand/measurement/tost";
import { typeA } from "@evenhand/measurement/type-a";
import { pooledDifference, summarize, tTest, welchDifference } from "@evenhand/measurement/welch-t";
import published from "../../fixtures/published/ttest-tost.json" with { type: "json" };

/** 1 where a value is the published one. */
const ratio = (value: number, expected: number | undefined): number => value / (expected ?? Number.NaN);

/** R package equivalence by way of statsmodels, stats/tests/test_tost.py. */
describe("two one-sided tests on the clinic data", () => {
  const { x, y, eps, welch, pooled, paired } = published.tost_clinic;

  it("Welch", () => {
    const estimate = welchDifference(summarize(x), summarize(y));
    expect(ratio(estimate.value, welch.diff)).toBeCloseTo(1, 9);
    expect(ratio(estimate.standardUncertainty, welch.se)).toBeCloseTo(1, 9);
    expect(ratio(estimate.degreesOfFreedom, welch.df)).toBeCloseTo(1, 9);
    expect(ratio(tTest(estimate).t, welch.t)).toBeCloseTo(1, 9);
    const result = tost(estimate, -eps, eps);
    expect(ratio(result.pValue, welch.tost_p)).toBeCloseTo(1, 9);
    expect(ratio(result.low, welch.ci90[0])).toBeCloseTo(1, 9);
    expect(ratio(result.high, welch.ci90[1])).toBeCloseTo(1, 9);
    expect(result.equivalent).toBe(true);
  });

  it("Welch, the samples exchanged: the other bound decides", () => {
    const result = tost(welchDifference(summarize(y), summarize(x)), -eps, eps);
    expect(ratio(result.pValue, welch.tost_p)).toBeCloseTo(1, 9);
    expect(ratio(result.pLower, welch.tost_p)).toBeCloseTo(1, 9);
    expect(ratio(result.high, -(welch.ci90[0] ?? Number.NaN))).toBeCloseTo(1, 9);
  });

  it("pooled", () => {
    const estimate = pooledDifference(summarize(x), summarize(y));
    expect(estimate.degreesOfFreedom).toBe(pooled.df);
    const result = tost(estimate, -eps, eps);
    expect(ratio(result.pValue, pooled.tost_p)).toBeCloseTo(1, 9);
    expect(ratio(result.low, pooled.ci90[0])).toBeCloseTo(1, 9);
    expect(ratio(result.high, pooled.ci90[1])).toBeCloseTo(1, 9);
  });

  it("paired", () => {
    const estimate = typeA(x.map((value, i) => value - (y[i] ?? Number.NaN)));
    expect(estimate.degreesOfFreedom).toBe(paired.df);
    expect(ratio(estimate.standardUncertainty, paired.se)).toBeCloseTo(1, 9);
    const result = tost(estimate, -eps, eps);
    expect(ratio(result.pValue, paired.tost_p)).toBeCloseTo(1, 9);
    expect(ratio(result.low, paired.ci90[0])).toBeCloseTo(1, 9);
    expect(ratio(result.high, paired.ci90[1])).toBeCloseTo(1, 9);
  });

  it("agrees exactly when the interval lies within the bounds", () => {
    const estimate = welchDifference(summarize(x), summarize(y));
    const U = coverageFactor(estimate.degreesOfFreedom, 0.9) * estimate.standardUncertainty;
    expect(classifyInterval(estimate.value, U, eps)).toBe("agree");
    expect(classifyInterval(estimate.value, U, welch.ci90[1] ?? 0)).toBe("agree");
    expect(classifyInterval(estimate.value, U, 0.596)).toBe("consistent");
  });
});

/** TOSTER, tests/testthat/test-known_results.R. */
describe("two one-sided tests from summaries", () => {
  it("one sample", () => {
    const { m, mu, sd, n, low, high, t1, t2, p1, p2, ci90 } = published.tost_summary.one;
    const estimate = { value: m - mu, standardUncertainty: sd / Math.sqrt(n), degreesOfFreedom: n - 1 };
    const result = tost(estimate, low, high);
    expect(ratio(result.tLower, t1)).toBeCloseTo(1, 6);
    expect(ratio(result.tUpper, t2)).toBeCloseTo(1, 6);
    expect(ratio(result.pLower, p1)).toBeCloseTo(1, 6);
    expect(ratio(result.pUpper, p2)).toBeCloseTo(1, 6);
    expect(ratio(result.low, ci90[0])).toBeCloseTo(1, 6);
    expect(ratio(result.high, ci90[1])).toBeCloseTo(1, 6);
  });

  it("two samples, Welch", () => {
    const { m1, m2, sd1, sd2, n1, n2, low, high, t1, t2, p1, p2, df, ci90 } =
      published.tost_summary.two_welch;
    const estimate = welchDifference(
      { mean: m1, standardDeviation: sd1, size: n1 },
      { mean: m2, standardDeviation: sd2, size: n2 },
    );
    expect(ratio(estimate.degreesOfFreedom, df)).toBeCloseTo(1, 6);
    const result = tost(estimate, low, high);
    expect(ratio(result.tLower, t1)).toBeCloseTo(1, 6);
    expect(ratio(result.tUpper, t2)).toBeCloseTo(1, 6);
    expect(ratio(result.pLower, p1)).toBeCloseTo(1, 6);
    expect(ratio(result.pUpper, p2)).toBeCloseTo(1, 6);
    expect(ratio(result.low, ci90[0])).toBeCloseTo(1, 6);
    expect(ratio(result.high, ci90[1])).toBeCloseTo(1, 6);
  });
});

/** NIST/SEMATECH e-Handbook 1.3.5.3, data AUTO83B.DAT. */
describe("two-sample t on AUTO83B", () => {
  const { n, means, sds, pooled, welch } = published.welch_nist_auto83b;
  const [a, b] = [0, 1].map((i) => ({
    mean: means[i] ?? Number.NaN,
    standardDeviation: sds[i] ?? Number.NaN,
    size: n[i] ?? Number.NaN,
  }));
  const none = { mean: Number.NaN, standardDeviation: Number.NaN, size: Number.NaN };

  it("pooled", () => {
    const { t, degreesOfFreedom } = tTest(pooledDifference(a ?? none, b ?? none));
    expect(ratio(t, pooled.t)).toBeCloseTo(1, 9);
    expect(degreesOfFreedom).toBe(pooled.df);
    expect(ratio(coverageFactor(pooled.df), pooled.tcrit)).toBeCloseTo(1, 9);
  });

  it("Welch", () => {
    const { t, degreesOfFreedom, pValue } = tTest(welchDifference(a ?? none, b ?? none));
    expect(ratio(t, welch.t)).toBeCloseTo(1, 9);
    expect(ratio(degreesOfFreedom, welch.df)).toBeCloseTo(1, 9);
    expect(pValue).toBeLessThan(1e-20);
  });
});

describe("the difference of two estimates", () => {
  it("is Welch's for two means", () => {
    const { x, y, welch } = published.tost_clinic;
    const result = difference(typeA(x), typeA(y));
    expect(ratio(result.value, welch.diff)).toBeCloseTo(1, 9);
    expect(ratio(result.degreesOfFreedom, welch.df)).toBeCloseTo(1, 9);
  });
});
