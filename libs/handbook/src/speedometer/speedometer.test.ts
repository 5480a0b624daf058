import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { exactly } from "../interval/index.ts";
import { rollingCircumference } from "../rolling-circumference/index.ts";
import { tireDiameter } from "../tire-diameter/index.ts";
import { speedometer } from "./index.ts";

const at = (indicated: number, satellite: number) =>
  speedometer({ indicated: exactly(indicated), satellite: exactly(satellite) });

describe("speedometer", () => {
  it.each([
    [110, 100, "within"],
    [110.1, 100, "reads-high"],
    [90, 100, "within"],
    [89.9, 100, "reads-low"],
    [20, 20, "within"],
    [20, 19.9, "too-slow"],
    [0, 60, "too-slow"],
  ])("%f shown at a true %f: %s", (indicated, satellite, reason) => {
    expect(at(indicated, satellite).reason).toBe(reason);
  });

  it("gives the error and the tire that would explain it", () => {
    const { figures } = speedometer({
      indicated: estimate(66, 0.66),
      satellite: estimate(60, 0.6),
      fittedDiameter: estimate(25, 0.25),
    });
    expect(figures.error?.value).toBeCloseTo(10, 9);
    expect(figures.error?.standardUncertainty).toBeCloseTo(110 * Math.hypot(0.01, 0.01), 9);
    expect(figures.explainingDiameter?.value).toBeCloseTo(27.5, 9);
    expect(figures.explainingDiameter?.standardUncertainty).toBeCloseTo(
      27.5 * Math.hypot(0.01, 0.01, 0.01),
      9,
    );
    expect(at(66, 60).figures).not.toHaveProperty("explainingDiameter");
  });
});

describe("rollingCircumference", () => {
  it("is 0.97 π times the diameter, within 1.5 %", () => {
    const rolled = rollingCircumference(estimate(28, 0.28));
    expect(rolled.value).toBeCloseTo(0.97 * Math.PI * 28, 12);
    expect(rolled.standardUncertainty / rolled.value).toBeCloseTo(Math.hypot(0.01, 0.015 / Math.sqrt(3)), 12);
    expect(
      rollingCircumference(exactly(28), { "tire.rolling-share": 0.95, "tire.rolling-tolerance": 0.03 }),
    ).toMatchObject({
      value: 0.95 * Math.PI * 28,
    });
  });
});

const other = (size: string) => tireDiameter({ size: "P205/75R15", other: size });

const ids = (input: Parameters<typeof tireDiameter>[0]) => tireDiameter(input).limits?.map(({ id }) => id);

describe("tireDiameter", () => {
  const rolled = 0.97 * Math.PI * (15 + (2 * 205 * 75) / 100 / 25.4);
  const reason = (share: number) =>
    tireDiameter({ size: "P205/75R15", rollout: exactly(rolled * share) }, { "tire.rolling-tolerance": 0 })
      .reason;

  it("lets a rollout lie 3 % off", () => {
    expect([0.969, 0.9701, 1.0299, 1.031].map(reason)).toEqual([
      "rollout-differs",
      "rollout-fits",
      "rollout-fits",
      "rollout-differs",
    ]);
  });

  it("gives both diameters and never breaks over a second size", () => {
    expect(other("P205/70R15")).toMatchObject({ reason: "other-diameter", verdict: "cannot-tell" });
    expect(other("P215/70R15").figures).toMatchObject({
      diameter: { unit: "in" },
      otherDiameter: { unit: "in" },
    });
    expect(other("round").reason).toBe("size-unreadable");
    expect(other("round").words).toEqual({ size: "P205/75R15", other: "round" });
    expect(tireDiameter({ size: "round", rollout: exactly(80) }).words).toEqual({ size: "round" });
  });

  it("says which limits it used", () => {
    expect(ids({ size: "P205/75R15" })).toEqual(["tire.rollout-share"]);
    expect(ids({ size: "P205/75R15", rollout: exactly(82) })).toEqual([
      "tire.rollout-share",
      "tire.rolling-share",
      "tire.rolling-tolerance",
    ]);
  });
});
