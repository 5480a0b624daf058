import { describe, expect, it } from "vitest";
import { clusterRatio, clusterShare } from "@evenhand/measurement/cluster-ratio";
import published from "../../fixtures/published/clusters.json" with { type: "json" };

const { schools, litters } = published;

/** R's package survey on fifteen school districts; see the fixture. */
describe("ratio over clusters of schools", () => {
  const sampled = Math.sqrt(1 - schools.districts.length / schools.districtsInAll);

  it("has the mean of the schools, with the district as the cluster", () => {
    const clusters = schools.districts.map(({ api00, schools: count }) => ({ total: api00, count }));
    const { estimate, standardError, clusters: districts, count } = clusterRatio(clusters);
    expect([districts, count]).toEqual([15, 183]);
    expect(estimate).toBeCloseTo(schools.meanApi00.estimate, 2);
    expect(standardError * sampled).toBeCloseTo(schools.meanApi00.standardError, 3);
  });

  it("has the share of pupils tested", () => {
    const clusters = schools.districts.map(({ apiStu, enroll }) => ({ total: apiStu, count: enroll }));
    const { estimate, standardError } = clusterShare(clusters);
    expect(estimate).toBeCloseTo(schools.apiStuOverEnroll.estimate, 7);
    expect(standardError * sampled).toBeCloseTo(schools.apiStuOverEnroll.standardError, 9);
  });
});

/** Weil's litters, the example of Rao and Scott; see the fixture. */
describe("design effect of litters", () => {
  it.each(["control", "treated"] as const)("%s", (group) => {
    const clusters = litters[group];
    const { designEffect, effectiveCount, count, estimate } = clusterShare(clusters);
    expect(designEffect).toBeCloseTo(litters.designEffect[group], 4);
    expect(effectiveCount).toBeCloseTo(count / litters.designEffect[group], 2);
    expect(estimate).toBe(clusters.reduce((sum, { total }) => sum + total, 0) / count);
  });
});
