import { describe, expect, it } from "vitest";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { meanStatistic, shiftStatistic, statisticOf } from "./index.ts";

describe("statisticOf", () => {
  it("gives estimate, standard error and interval", () => {
    const figures = {
      coefficient: 0.5,
      standardError: 0.1,
      low: 0.3,
      high: 0.7,
      observed: 0.8,
      expected: 0.6,
      items: 24,
    };
    expect(statisticOf({ kind: "estimated", ...figures })).toEqual({
      state: "known",
      n: 24,
      estimate: 0.5,
      standardError: 0.1,
      low: 0.3,
      high: 0.7,
    });
  });

  it("says too few, also where one more grade would be needed to tell anything", () => {
    expect(statisticOf({ kind: "tooFew", items: 4, least: 10 })).toEqual({
      state: "too-few",
      n: 4,
      needed: 10,
    });
    expect(statisticOf({ kind: "noVariation", items: 12 })).toEqual({ state: "too-few", n: 12, needed: 13 });
  });
});

describe("meanStatistic", () => {
  it("has Student's interval", () => {
    const values = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
    const error = Math.sqrt(82.5 / 9 / 10);
    const result = meanStatistic(values);
    expect(result).toMatchObject({
      state: "known",
      n: 10,
      estimate: 5.5,
      standardError: expect.closeTo(error, 12),
    });
    expect(result).toMatchObject({
      low: expect.closeTo(5.5 - coverageFactor(9) * error, 12),
      high: expect.closeTo(5.5 + coverageFactor(9) * error, 12),
    });
  });

  it("says nothing of fewer than ten", () => {
    expect(meanStatistic([1, 2, 3, 4, 5, 6, 7, 8, 9])).toEqual({ state: "too-few", n: 9, needed: 10 });
  });
});

describe("shiftStatistic", () => {
  it("has an interval and no standard error", () => {
    const shift = { kind: "estimated", shift: 0.4, low: 0.1, high: 0.7 } as const;
    expect(shiftStatistic({ ...shift, items: 10 })).toEqual({
      state: "known",
      n: 10,
      estimate: 0.4,
      standardError: null,
      low: 0.1,
      high: 0.7,
    });
    expect(shiftStatistic({ ...shift, items: 9 })).toEqual({ state: "too-few", n: 9, needed: 10 });
    expect(shiftStatistic({ kind: "tooFew", items: 3, least: 6 })).toEqual({
      state: "too-few",
      n: 3,
      needed: 10,
    });
  });
});
