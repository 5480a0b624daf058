import { describe, expect, it } from "vitest";
import { figuresOf, frame } from "../../testing/small-items.ts";
import { compareExtents } from "./index.ts";

const dent = (millimeters?: number) => ({
  kind: "dent",
  extent: millimeters === undefined ? undefined : { value: millimeters, unit: "mm" as const },
});
const compare = (a?: number, b?: number, sharedEye = false) =>
  compareExtents(dent(a), dent(b), frame, sharedEye);

describe("compareExtents", () => {
  it("judges both by eye, with the kind's accuracy and δ", () => {
    const figures = figuresOf(compare(50, 60));
    const [uA, uB] = [(5 + 0.12 * 50) / Math.sqrt(3), (5 + 0.12 * 60) / Math.sqrt(3)];
    expect(figures).toMatchObject({
      of: "reading",
      unit: "mm",
      difference: -10,
      delta: 27.5,
      degreesOfFreedom: null,
    });
    expect(figures.a).toEqual({
      mean: 50,
      count: 1,
      standardUncertainty: uA,
      degreesOfFreedom: null,
      scatterReplaced: false,
      byEye: true,
    });
    expect(figures.standardUncertainty).toBeCloseTo(Math.hypot(uA, uB), 12);
    expect(figuresOf(compare(50, 60, true)).standardUncertainty).toBe(0);
  });

  it("is worse the larger it is", () => {
    expect(figuresOf(compare(20, 300)).probabilityWorse).toBeGreaterThan(0.99);
    expect(figuresOf(compare(300, 20)).probabilityWorse).toBeLessThan(0.01);
  });

  it.each([
    [40, 42, "agree", "same-fault", "neither", "agreed-fault"],
    [40, 62, "agree", "extent-beyond-chance", "neither", "agreed-fault"],
    [62, 40, "agree", "disclosed-at-least", "neither", "agreed-fault"],
    [20, 300, "differ", "extent-beyond-delta", "stated-better", "differs"],
    [300, 20, "agree", "disclosed-at-least", "neither", "agreed-fault"],
  ])("%d against %d: %s", (a, b, outcome, reason, direction, standing) => {
    expect(compare(a, b)).toMatchObject({ outcome, reason, direction, standing });
  });

  it("shows nothing without both extents, not even where neither gives one", () => {
    expect(compare()).toEqual({
      outcome: "consistent",
      reason: "extents-not-given",
      direction: "neither",
      standing: "agreed-fault",
      marks: ["both-bad"],
    });
    expect(compare(40)).toEqual({
      outcome: "consistent",
      reason: "extent-not-given",
      direction: "neither",
      standing: "agreed-fault",
      marks: ["both-bad"],
    });
    expect(compare(undefined, 40)).toMatchObject({ outcome: "consistent", reason: "extent-not-given" });
  });

  it("knows no extents of kinds the item does not have", () => {
    const bulge = { kind: "bulge", extent: { value: 9, unit: "mm" as const } };
    expect(compareExtents(bulge, bulge, frame, false)).toMatchObject({
      outcome: "agree",
      reason: "same-fault",
    });
  });
});
