import { estimate } from "@evenhand/measurement/estimate";
import { describe, expect, it } from "vitest";
import { exactly } from "../interval/index.ts";
import { ratioCombined } from "../ratio-combined/index.ts";
import { teeth } from "../teeth/index.ts";
import { turnsEstimate, turnsRatio } from "../turns-ratio/index.ts";
import { roadEstimate, roadRatio } from "./index.ts";
import type { Coupling } from "./index.ts";

// 2,640 rpm on 84 in at 60 mph: 2640 × 84 / (1056 × 60) = 3.5.
const reading = { engineSpeed: exactly(2640), roadSpeed: exactly(60), circumference: exactly(84), gear: 1 };
const at = (coupling: Coupling, gear = 1) => roadRatio({ ...reading, coupling, gear }).ranges?.ratio;

const ids = (coupling: Coupling) => roadRatio({ ...reading, coupling }).limits?.map(({ id }) => id);

const speed = (mph: number, gear?: number) =>
  roadRatio({ ...reading, roadSpeed: exactly(mph), gear, coupling: "clutch" }).reason;

describe("roadRatio", () => {
  it.each([
    ["clutch", 3.5, 3.5],
    ["locked", 3.5, 3.5],
    ["unlocked", 3.5 * 0.92, 3.5 * 0.99],
    ["unknown", 3.5 * 0.92, 3.5],
  ] as const)("with the coupling %s: from %f to %f", (coupling, low, high) => {
    expect(at(coupling)?.low).toBeCloseTo(low, 12);
    expect(at(coupling)?.high).toBeCloseTo(high, 12);
  });

  it("divides by the gear", () => {
    expect(at("clutch", 1.4)?.low).toBeCloseTo(2.5, 12);
  });

  it("widens both ends by 99 % of the uncertainty", () => {
    const { ranges } = roadRatio({ ...reading, engineSpeed: estimate(2640, 26.4), coupling: "unlocked" });
    expect(ranges?.ratio?.low).toBeCloseTo((3.5 - 2.5758293 * 0.035) * 0.92, 6);
    expect(ranges?.ratio?.high).toBeCloseTo((3.5 + 2.5758293 * 0.035) * 0.99, 6);
  });

  it("lists slip among the limits only where there is some", () => {
    expect(ids("clutch")).toEqual(["ratio.spacing-share"]);
    expect(ids("locked")).toEqual(["ratio.spacing-share"]);
    expect(ids("unlocked")).toEqual(["ratio.slip-low", "ratio.slip-high", "ratio.spacing-share"]);
    expect(ids("unknown")).toEqual(["ratio.slip-low", "ratio.slip-high", "ratio.spacing-share"]);
  });

  it("needs 20 mph, and then a gear", () => {
    expect([speed(19.99), speed(20), speed(20, 1)]).toEqual(["too-slow", "gear-unknown", "no-claim"]);
  });
});

describe("roadEstimate", () => {
  it("takes slip halfway, its range as equally likely", () => {
    const { value, standardUncertainty } = roadEstimate({ ...reading, coupling: "unlocked" });
    expect(value).toBeCloseTo(3.5 * 0.955, 12);
    expect(standardUncertainty).toBeCloseTo((3.5 * 0.035) / Math.sqrt(3), 12);
    expect(roadEstimate({ ...reading, coupling: "clutch" })).toMatchObject({
      value: 3.5,
      standardUncertainty: 0,
    });
    expect(
      roadEstimate({ ...reading, engineSpeed: estimate(2640, 26.4), coupling: "clutch" }).standardUncertainty,
    ).toBeCloseTo(0.035, 12);
  });
});

describe("turnsEstimate", () => {
  it("doubles where one wheel is held", () => {
    const held = turnsEstimate({ shaftTurns: estimate(17.9, 0.1), wheelTurns: 10, wheels: "one-held" });
    expect(held.value).toBeCloseTo(3.58, 12);
    expect(held.standardUncertainty).toBeCloseTo(0.02, 12);
    expect(turnsEstimate({ shaftTurns: exactly(35.8), wheelTurns: 10, wheels: "both" }).value).toBeCloseTo(
      3.58,
      12,
    );
  });

  it("lists the maker's ratios it allows", () => {
    const { alternatives } = turnsRatio({
      shaftTurns: estimate(3.6, 0.05),
      wheelTurns: 1,
      wheels: "both",
      makers: [3.23, 3.58, 3.73],
    });
    expect(alternatives).toEqual(["3.58"]);
  });
});

describe("teeth", () => {
  it.each([
    [3.73, "claimed-ratio"],
    [3.72, "claimed-ratio"],
    [3.717, "other-ratio"],
    [3.74, "other-ratio"],
  ])("41 over 11 against %f: %s", (claimed, reason) => {
    expect(teeth({ ring: 41, pinion: 11, claimed }).reason).toBe(reason);
  });

  it("takes a rounding of exactly the limit", () => {
    expect(teeth({ ring: 7, pinion: 2, claimed: 3.5625 }, { "ratio.rounding": 0.0625 }).reason).toBe(
      "claimed-ratio",
    );
  });

  it("asks for the maker's list first", () => {
    expect(teeth({ ring: 41, pinion: 11, makers: [3.55] }).reason).toBe("not-the-makers");
    expect(teeth({ ring: 41, pinion: 11, claimed: 3.73, makers: [3.55, 3.73] }).reason).toBe("claimed-ratio");
  });
});

const way = (name: "tag" | "turns" | "road", value: number) => ({
  way: name,
  ratio: estimate(value, 0.02),
});

describe("ratioCombined", () => {
  it("weighs by 1/u²", () => {
    const { figures } = ratioCombined({
      ways: [
        { way: "turns", ratio: estimate(3.5, 0.1) },
        { way: "road", ratio: estimate(3.6, 0.05) },
      ],
    });
    expect(figures.ratio?.value).toBeCloseTo((3.5 * 100 + 3.6 * 400) / 500, 12);
    expect(figures.ratio?.standardUncertainty).toBeCloseTo(1 / Math.sqrt(500), 12);
  });

  it("takes a way without uncertainty before all others", () => {
    const { figures } = ratioCombined({
      ways: [
        { way: "turns", ratio: estimate(3.5, 0.1) },
        { way: "teeth", ratio: exactly(3.6) },
      ],
    });
    expect(figures.ratio).toEqual({ value: 3.6, unit: "1" });
  });

  it("finds any two ways that contradict each other", () => {
    const among = (...ways: ReturnType<typeof way>[]) => ratioCombined({ ways, claimed: 3.5 }).reason;
    expect(among(way("tag", 3.5), way("turns", 3.51), way("road", 3.52))).toBe("claimed-ratio");
    expect(among(way("tag", 3.5), way("turns", 3.51), way("road", 3.8))).toBe("ways-disagree");
    expect(among(way("road", 3.8), way("turns", 3.51), way("tag", 3.5))).toBe("ways-disagree");
    // Two ways: 2.807 would be asked of one pair among two, 2.576 of a pair alone.
    expect(among(way("tag", 3.5), way("turns", 3.5 + 2.57 * 0.02 * Math.SQRT2))).not.toBe("ways-disagree");
    expect(among(way("tag", 3.5), way("turns", 3.5 + 2.59 * 0.02 * Math.SQRT2))).toBe("ways-disagree");
  });
});
