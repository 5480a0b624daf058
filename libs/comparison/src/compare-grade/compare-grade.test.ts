import { describe, expect, it } from "vitest";
import type { Stretch } from "@evenhand/sheet/grade-scale";
import { compareGrade, gradeFigures } from "./index.ts";

const house = (step: number): Stretch => [step / 5, (step + 1) / 5];
const compare = (
  a: Stretch,
  b: Stretch,
  more: { same?: boolean; strict?: boolean; bothBad?: boolean } = {},
) => compareGrade({ a, b, same: false, strict: false, bothBad: false, ...more });

describe("compareGrade", () => {
  it("agrees on an equal grade", () => {
    expect(compare(house(3), house(3), { same: true })).toMatchObject({
      outcome: "agree",
      reason: "same-grade",
      direction: "neither",
    });
  });

  it("agrees from an overlap of half the union", () => {
    expect(compare([0.6, 0.8], [0.66, 0.86])).toMatchObject({
      outcome: "agree",
      reason: "grades-overlap",
      standing: "confirmed",
    });
    expect(compare([0.6, 0.8], [0.7, 0.9]).reason).toBe("grades-near");
  });

  it("never agrees by a word wider than a house step, however much it covers", () => {
    expect(compare([0.6, 0.8], [0.6, 1])).toMatchObject({
      outcome: "consistent",
      reason: "grade-within-wider",
      standing: "too-coarse",
    });
    expect(compare([0.3, 0.8], [0.2, 0.7]).outcome).toBe("consistent");
  });

  it("agrees within a stretch no wider than a house step, either way", () => {
    expect(compare([0.6, 0.65], house(3))).toMatchObject({ outcome: "agree", reason: "grades-overlap" });
    expect(compare(house(3), [0.75, 0.8]).outcome).toBe("agree");
  });

  it("is consistent, too coarse, within a wider stretch either way", () => {
    const expected = { outcome: "consistent", reason: "grade-within-wider", standing: "too-coarse" };
    expect(compare([0.4, 0.5], [0.2, 0.8])).toMatchObject(expected);
    expect(compare([0.2, 0.8], [0.4, 0.5])).toMatchObject(expected);
    expect(compare([0.2, 0.3], [0.2, 0.8])).toMatchObject(expected);
  });

  it("goes by house steps beyond: one near, two far apart", () => {
    expect(compare(house(4), house(3))).toMatchObject({
      outcome: "consistent",
      reason: "grades-near",
      direction: "stated-better",
    });
    expect(compare(house(4), house(2))).toMatchObject({ outcome: "differ", reason: "grades-far-apart" });
    expect(compare(house(2), house(4)).direction).toBe("found-better");
  });

  it("is doubtful from one and a half steps", () => {
    expect(compare([0.8, 1], [0.5, 0.7])).toMatchObject({
      outcome: "doubtful",
      reason: "grades-apart",
      standing: "in-doubt",
    });
    expect(compare([0.8, 1], [0.51, 0.71]).outcome).toBe("consistent");
    expect(compare([0.8, 1], [0.41, 0.61]).outcome).toBe("doubtful");
  });

  it("is tighter for strict items", () => {
    const strict = { strict: true };
    expect(compare([0.8, 1], [0.66, 0.8], strict)).toMatchObject({ outcome: "doubtful" });
    expect(compare([0.8, 1], [0.74, 0.78], strict)).toMatchObject({ outcome: "consistent" });
    expect(compare([0.8, 1], [0.5, 0.7], strict).outcome).toBe("differ");
    expect(compare(house(4), house(3), strict).outcome).toBe("doubtful");
  });

  it("keeps the first two rules for strict items", () => {
    expect(compare([0.6, 0.8], [0.65, 0.85], { strict: true }).outcome).toBe("agree");
    expect(compare([0, 1], [0.9, 1], { strict: true }).outcome).toBe("consistent");
  });

  it("has a direction only where something differs", () => {
    expect(compare([0.6, 0.8], [0.56, 0.76])).toMatchObject({ outcome: "agree", direction: "neither" });
    expect(compare([0.4, 0.6], [0.2, 0.8])).toMatchObject({ outcome: "consistent", direction: "neither" });
    expect(compare([0.2, 0.8], [0.2, 0.3])).toMatchObject({
      outcome: "consistent",
      direction: "stated-better",
    });
  });

  it("is too coarse only within a wider stretch", () => {
    expect(compare(house(4), house(3)).standing).toBe("not-contradicted");
  });

  it("carries both stretches in its figures", () => {
    expect(compare(house(4), house(2)).figures).toMatchObject({ of: "grade", a: [0.8, 1], b: [0.4, 0.6] });
  });

  it("makes an agreed fault of what both call bad", () => {
    const agreed = { standing: "agreed-fault", marks: ["both-bad"] };
    expect(compare(house(0), house(0), { bothBad: true })).toMatchObject({ ...agreed, outcome: "agree" });
    expect(compare(house(0), house(1), { bothBad: true })).toMatchObject({
      ...agreed,
      outcome: "consistent",
    });
    expect(compare(house(0), house(2), { bothBad: true }).standing).toBe("differs");
    expect(compare(house(0), house(2), { bothBad: true }).marks).toBeUndefined();
    for (const grade of [0, 1, 2]) expect(compare(house(0), house(grade)).marks).toBeUndefined();
  });
});

describe("gradeFigures", () => {
  it("gives the distance of the middles in house steps, and overlap over union", () => {
    const figures = gradeFigures([0.4, 0.8], [0.2, 0.6]);
    expect(figures.steps).toBeCloseTo(1, 12);
    expect(figures.overlap).toBeCloseTo(1 / 3, 12);
  });

  it("takes two points as one", () => {
    expect(gradeFigures([0.5, 0.5], [0.5, 0.5])).toMatchObject({ steps: 0, overlap: 1 });
  });
});
