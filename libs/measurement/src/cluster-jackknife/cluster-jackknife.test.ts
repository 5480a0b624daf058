import { describe, expect, it } from "vitest";
import { clusterRatio } from "../cluster-ratio/index.ts";
import { mean, sampleStandardDeviation } from "../type-a/index.ts";
import { clusterJackknife } from "./index.ts";

/** A figure of some clusters, each left out once. */
const leaveOneOut = <Cluster>(
  clusters: readonly Cluster[],
  figure: (clusters: readonly Cluster[]) => number,
  confidence?: number,
) =>
  clusterJackknife(
    figure(clusters),
    clusters.map((_, left) => figure(clusters.filter((_other, index) => index !== left))),
    confidence,
  );

const values = [2.1, 4.4, 6, 3.3, 9.5];

describe("clusterJackknife", () => {
  it("is the standard error of a mean, where the figure is one", () => {
    const { estimate, standardError, clusters } = leaveOneOut(values, mean);
    expect(estimate).toBeCloseTo(mean(values), 12);
    expect(standardError).toBeCloseTo(sampleStandardDeviation(values) / Math.sqrt(5), 12);
    expect(clusters).toBe(5);
  });

  it("is the ratio estimator's where all clusters are of one size", () => {
    const clusters = values.map((total) => ({ total, count: 4 }));
    const ratio = (all: typeof clusters): number =>
      all.reduce((sum, { total }) => sum + total, 0) / all.reduce((sum, { count }) => sum + count, 0);
    const { low, high } = leaveOneOut(clusters, (all) => ratio([...all]));
    expect(low).toBeCloseTo(clusterRatio(clusters).low, 12);
    expect(high).toBeCloseTo(clusterRatio(clusters).high, 12);
  });

  it("has no width where no cluster moves the figure, and is wider the surer it has to be", () => {
    expect(leaveOneOut([3, 3, 3], mean)).toMatchObject({ standardError: 0, low: 3, high: 3 });
    expect(leaveOneOut(values, mean, 0.99).high).toBeGreaterThan(leaveOneOut(values, mean).high);
  });

  it("refuses a single cluster, and a figure that is none", () => {
    expect(() => clusterJackknife(1, [1])).toThrow("at least two");
    expect(() => clusterJackknife(1, [1, Number.NaN])).toThrow("no number");
  });
});
