import type { GradeScale } from "@evenhand/shared/report";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gradeStretch, houseGradeOf, houseGrades, houseStep, mappedTo } from "./index.ts";

const grade = (id: string) => ({ id, name: id });
const equal: GradeScale = { id: "four", name: "four", grades: ["d", "c", "b", "a"].map((id) => grade(id)) };
const own: GradeScale = {
  id: "own",
  name: "own",
  grades: [grade("poor"), grade("fair"), grade("good")],
};
const percent = (step?: number): GradeScale => ({
  id: "percent",
  name: "%",
  grades: [grade("0"), grade("100")],
  ...(step === undefined ? {} : { step }),
});

describe("gradeStretch", () => {
  it("gives each house grade a fifth, from worst to best", () => {
    expect(houseGrades).toEqual(["spent", "heavy-wear", "even-wear", "light-wear", "as-new"]);
    expect(houseStep).toBe(0.2);
    expect(houseGrades.map((value) => gradeStretch({ scale: "house", value }, []))).toEqual([
      [0, 0.2],
      [0.2, 0.4],
      [0.4, 0.6],
      [0.6, 0.8],
      [0.8, 1],
    ]);
  });

  it("shares 0 to 1 equally over any scale of words", () => {
    expect(gradeStretch({ scale: "four", value: "c" }, [equal])).toEqual([0.25, 0.5]);
    expect(gradeStretch({ scale: "four", value: "a" }, [equal])).toEqual([0.75, 1]);
  });

  it("takes the right scale of several", () => {
    expect(gradeStretch({ scale: "own", value: "fair" }, [equal, own])).toEqual([1 / 3, 2 / 3]);
  });

  it.each([
    [80, 5, [0.775, 0.825]],
    [100, 10, [0.95, 1]],
    [99, 10, [0.95, 1]],
    [0, 20, [0, 0.05]],
    [50, 100, [0.475, 0.525]],
    [10, 1, [0.075, 0.125]],
  ])("makes %d per cent in steps of %d %j", (value, step, [low, high]) => {
    const stretch = gradeStretch({ scale: "percent", value }, [percent(step)]);
    expect(stretch?.[0]).toBeCloseTo(low ?? Number.NaN, 12);
    expect(stretch?.[1]).toBeCloseTo(high ?? Number.NaN, 12);
  });

  it("makes every percentage as wide as any other, whatever its step, and keeps it inside 0 to 1", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.integer({ min: 1, max: 100 }),
        (value, step) => {
          const [low, high] = gradeStretch({ scale: "percent", value }, [percent(step)]) ?? [
            Number.NaN,
            Number.NaN,
          ];
          expect(high - low).toBeCloseTo(0.05, 10);
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeLessThanOrEqual(1 + 1e-12);
          expect(value / 100).toBeGreaterThanOrEqual(low - 1e-12);
          expect(value / 100).toBeLessThanOrEqual(high + 1e-12);
        },
      ),
      { numRuns: 1000 },
    );
  }, 60_000);

  it.each([
    ["a house grade there is not", { scale: "house", value: "mint" }],
    ["a number on the house scale", { scale: "house", value: 3 }],
    ["a scale there is not", { scale: "stars", value: "5" }],
    ["a grade its scale has not", { scale: "own", value: "great" }],
    ["a number on a scale of words", { scale: "own", value: 1 }],
    ["a word as a percentage", { scale: "percent", value: "80" }],
    ["more than all", { scale: "percent", value: 101 }],
    ["less than nothing", { scale: "percent", value: -1 }],
  ])("knows no stretch of %s", (_, answer) => {
    expect(gradeStretch(answer, [own, percent(5)])).toBeUndefined();
  });

  it("knows no percentage without a step, or with one that is none", () => {
    expect(gradeStretch({ scale: "percent", value: 80 }, [percent()])).toBeUndefined();
    expect(gradeStretch({ scale: "percent", value: 80 }, [])).toBeUndefined();
    expect(gradeStretch({ scale: "percent", value: 80 }, [percent(0)])).toBeUndefined();
    expect(gradeStretch({ scale: "percent", value: 80 }, [percent(101)])).toBeUndefined();
  });
});

describe("houseGradeOf", () => {
  it("finds each house grade in its own stretch", () => {
    for (const value of houseGrades) {
      expect(houseGradeOf(gradeStretch({ scale: "house", value }, []) ?? [0, 0])).toBe(value);
    }
  });

  it.each([
    [[0.5, 0.75], "light-wear"],
    [[0.3, 0.5], "even-wear"],
    [[0.1, 0.29], "spent"],
    [[0, 0], "spent"],
    [[1, 1], "as-new"],
  ] as const)("puts the middle of %j in %s; a boundary goes to the better", (stretch, expected) => {
    expect(houseGradeOf(stretch)).toBe(expected);
  });
});

describe("mappedTo", () => {
  it.each([
    [{ scale: "own", value: "poor" }, ["spent", "heavy-wear"]],
    [{ scale: "own", value: "fair" }, ["even-wear"]],
    [{ scale: "four", value: "a" }, ["as-new"]],
    [{ scale: "percent", value: 70 }, ["light-wear"]],
    [{ scale: "percent", value: 80 }, ["as-new"]],
    [{ scale: "house", value: "spent" }, []],
    [{ scale: "own", value: "great" }, []],
  ])("says which house grades %j is read as", (answer, expected) => {
    expect(mappedTo(answer, [equal, own, percent(5)])).toEqual(expected);
  });

  it("names at least one for every grade that is known", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 100 }), fc.nat(99), (count, at) => {
        const grades = Array.from({ length: count }, (_, index) => grade(`g${index}`));
        const value = `g${at % count}`;
        expect(
          mappedTo({ scale: "any", value }, [{ id: "any", name: "any", grades }]).length,
        ).toBeGreaterThan(0);
      }),
      { numRuns: 1000 },
    );
  });
});
