import { describe, expect, it } from "vitest";
import type { AnswerOf } from "@evenhand/shared/answer";
import { colorDifference } from "@evenhand/handbook/color-difference";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { compareColor } from "./index.ts";

const spec = { delta: 2, repeatability: 0.3, source: { kind: "common-practice", text: "none" } } as const;
const color = (lightness: number[], more: Partial<AnswerOf<"color">> = {}): AnswerOf<"color"> => ({
  kind: "color",
  geometry: "45/0",
  metallic: false,
  values: lightness.map((L) => ({ L, a: 10, b: -20 })),
  ...more,
});

const U = (apart: number): number => {
  const { figures } = compareColor(color([40 - apart, 40 + apart]), color([40, 40]), spec);
  return figures?.of === "color" ? figures.expandedUncertainty : Number.NaN;
};

const shifted = (more: object) => color([], { values: [{ L: 40, a: 10, b: -20, ...more }] });

describe("compareColor", () => {
  it("agrees within δ and the scatter of color readings", () => {
    expect(compareColor(color([40]), color([40.5]), spec)).toMatchObject({
      outcome: "agree",
      reason: "color-within-delta",
      standing: "confirmed",
    });
  });

  it("agrees on equal answers before anything else is asked", () => {
    const same = { outcome: "agree", reason: "same-color", standing: "confirmed" };
    const metallic = color([40, 60], { metallic: true });
    expect(compareColor(metallic, structuredClone(metallic), spec)).toMatchObject(same);
    expect(compareColor(color([40, 41]), color([40]), spec).reason).not.toBe("same-color");
    expect(compareColor(color([40]), color([41]), spec).reason).not.toBe("same-color");
    expect(compareColor(color([40]), color([40, 41]), spec).reason).not.toBe("same-color");
    expect(compareColor(color([40]), shifted({ a: 11 }), spec).reason).not.toBe("same-color");
    expect(compareColor(color([40]), shifted({ b: -21 }), spec).reason).not.toBe("same-color");
  });

  it("differs beyond δ and the scatter of color readings", () => {
    const result = compareColor(color([40]), color([60]), spec);
    expect(result).toMatchObject({ outcome: "differ", reason: "color-beyond-delta", direction: "neither" });
    expect(result.figures).toMatchObject({ of: "color", delta: 2 });
  });

  it("takes the sheet's scatter over the root of the readings", () => {
    const result = compareColor(color([40, 40, 40, 40]), color([40]), spec);
    expect(result.figures).toMatchObject({
      expandedUncertainty: expect.closeTo(1.959964 * Math.hypot(0.15, 0.3), 5),
    });
  });

  it("takes the sheet's scatter moderated by the one seen, with n − 1, where that is larger", () => {
    const center = { L: 50, a: 10, b: -20 };
    const apart = [40, 50, 60].map((L) => colorDifference({ ...center, L }, center) ** 2);
    const seen = apart.reduce((sum, square) => sum + square, 0) / 2;
    const moderated = (6 * 0.09 + 2 * seen) / 8;
    const shares = [moderated / 3, 0.09].map((variance) => variance / (moderated / 3 + 0.09));
    const degrees = 8 / (1 - 0.09 / moderated) / (shares[0] ?? 0) ** 2;
    expect(compareColor(color([40, 50, 60]), color([50]), spec).figures).toMatchObject({
      expandedUncertainty: expect.closeTo(coverageFactor(degrees) * Math.sqrt(moderated / 3 + 0.09), 6),
    });
    expect(compareColor(color([40, 60]), color([50, 50]), spec)).toMatchObject({
      outcome: "consistent",
      reason: "color-not-settled",
      standing: "too-coarse",
    });
  });

  it("keeps the sheet's scatter where the readings lie no farther apart", () => {
    const expected = { expandedUncertainty: expect.closeTo(1.959964 * Math.hypot(0.3 / Math.SQRT2, 0.3), 5) };
    expect(compareColor(color([40, 40]), color([40]), spec).figures).toMatchObject(expected);
    expect(compareColor(color([40, 40.4]), color([40]), spec).figures).toMatchObject(expected);
  });

  it("has no edge: more scatter is more uncertainty, and never by a step", () => {
    const all = Array.from({ length: 1000 }, (_, hundredths) => U(0.005 + hundredths / 200));
    const steps = all.slice(1).map((one, index) => one - (all[index] ?? 0));
    expect(Math.min(...steps)).toBeGreaterThan(-1e-9);
    expect(Math.max(...steps)).toBeLessThan(0.05);
  });

  it("cannot set a metallic from one angle against anything", () => {
    const metallic = {
      outcome: "incomparable",
      reason: "metallic-from-one-angle",
      standing: "not-comparable",
    };
    expect(compareColor(color([40], { metallic: true }), color([40]), spec)).toMatchObject(metallic);
    expect(compareColor(color([40]), color([40], { metallic: true }), spec)).toMatchObject(metallic);
    const [many, other] = [40, 40.5].map((L) => color([L], { metallic: true, geometry: "multi-angle" }));
    if (many === undefined || other === undefined) throw new Error("no colors");
    expect(compareColor(many, color([40], { metallic: true }), spec)).toMatchObject({
      ...metallic,
      direction: "neither",
    });
    expect(compareColor(color([40], { metallic: true }), many, spec)).toMatchObject(metallic);
    expect(compareColor(many, other, spec).outcome).toBe("agree");
  });

  it("cannot set one geometry against another", () => {
    expect(compareColor(color([40]), color([40], { geometry: "d/8" }), spec)).toMatchObject({
      outcome: "incomparable",
      reason: "other-geometry",
    });
  });
});
