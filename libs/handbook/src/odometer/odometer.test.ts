import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { exactly } from "../interval/index.ts";
import { odometerDisclosure } from "../odometer-disclosure/index.ts";
import { wearMiles } from "../wear-miles/index.ts";
import { odometer, rollOvers } from "./index.ts";
import type { OdometerReading } from "./index.ts";

const at = (day: number, miles: number, more: Partial<OdometerReading> = {}): OdometerReading => ({
  day,
  miles: exactly(miles),
  place: `on ${day}`,
  ...more,
});

const scattered = (day: number, miles: number): OdometerReading => ({
  day,
  miles: estimate(miles, 1 / Math.SQRT2),
  place: "x",
});

describe("odometer", () => {
  it("puts readings in order of their days, and those of one day in rising order", () => {
    expect(odometer({ readings: [at(9, 300), at(1, 100), at(5, 200)], digits: 6 })).toMatchObject({
      reason: "rises",
      figures: { earlier: { value: 200 }, later: { value: 300 } },
    });
    expect(odometer({ readings: [at(5, 200), at(5, 100)], digits: 6 }).reason).toBe("rises");
    expect(odometer({ readings: [at(5, 100), at(5, 100)], digits: 6 }).reason).toBe("rises");
  });

  it("finds any fall and names it", () => {
    const fall = odometer({ readings: [at(1, 100), at(5, 90), at(9, 300)], digits: 6 });
    expect(fall).toMatchObject({
      reason: "falls",
      words: { from: "on 1, 1970-01-02", to: "on 5, 1970-01-06" },
      figures: { rise: { value: -10 } },
    });
    expect(fall.alternatives).toEqual([]);
    expect(odometer({ readings: [at(1, 100), at(5, 90)], digits: 5 })).toMatchObject({
      reason: "rolled-over-or-back",
      alternatives: ["90", "100090", "200090"],
    });
  });

  it("allows just what may have been driven", () => {
    const rise = (miles: number, digits: 5 | 6 = 6) =>
      odometer({ readings: [at(1, 100), at(2, 100 + miles, { allowedSince: 50 })], digits }).reason;
    expect([rise(50), rise(50.1), rise(50.1, 5)]).toEqual(["rises", "rises-too-much", "rises-too-much"]);
    expect(
      odometer({ readings: [at(1, 100), at(2, 151, { allowedSince: 50 })], digits: 6 }).figures.allowed,
    ).toEqual({ value: 50, unit: "mi" });
    expect(odometer({ readings: [at(1, 100), at(2, 151)], digits: 6 }).figures).not.toHaveProperty("allowed");
  });

  it("keeps roll-overs as alternatives wherever there are five digits", () => {
    expect(rollOvers(34_210)).toEqual([34_210, 134_210, 234_210]);
    expect(odometer({ readings: [at(1, 100), at(2, 120)], digits: 5 }).alternatives).toEqual([
      "120",
      "100120",
      "200120",
    ]);
    expect(odometer({ readings: [at(1, 100), at(2, 120)], digits: 6 }).alternatives).toEqual([]);
  });

  it("judges all steps together", () => {
    expect(odometer({ readings: [scattered(1, 100), scattered(2, 97.35)], digits: 6 }).reason).toBe("falls");
    expect(
      odometer({ readings: [scattered(1, 100), scattered(2, 97.35), scattered(3, 200)], digits: 6 }).reason,
    ).toBe("range-covers");
  });

  it("needs two readings", () => {
    expect(odometer({ readings: [], digits: 6 }).reason).toBe("too-few");
  });
});

describe("odometerDisclosure", () => {
  it("gives the years it went by", () => {
    expect(odometerDisclosure({ modelYear: 2011, transferYear: 2030 }).figures).toEqual({
      modelYear: { value: 2011, unit: "a" },
      transferYear: { value: 2030, unit: "a" },
      exemptFrom: { value: 2031, unit: "a" },
    });
    expect(odometerDisclosure({ transferYear: 2030 }).reason).toBe("too-few");
    expect(odometerDisclosure({ modelYear: 2011, transferYear: 2030, claimedExempt: false }).reason).toBe(
      "due",
    );
    expect(
      odometerDisclosure({ modelYear: 2011, transferYear: 2030, selfPropelled: true, weightRating: 9000 })
        .reason,
    ).toBe("due");
    expect(odometerDisclosure({ modelYear: 1990, transferYear: 2030, claimedExempt: true }).reason).toBe(
      "exempt-by-age",
    );
  });
});

const part = (low: number, high: number, retrimmed?: boolean) => ({
  part: `${low} to ${high}`,
  condition: { low, high },
  retrimmed,
});

const reason = (parts: ReturnType<typeof part>[], miles = 12_000) =>
  wearMiles({ parts, miles: exactly(miles) }).reason;

describe("wearMiles", () => {
  it.each([
    [0, 0.4, "more-wear-than-miles"],
    [0.2, 0.41, "range-covers"],
    [0.39, 0.8, "range-covers"],
    [0.4, 0.6, "fits-miles"],
    [0.8, 1, "fits-miles"],
  ])("a condition of %f to %f at 12,000 mi: %s", (low, high, expected) => {
    expect(reason([part(low, high)])).toBe(expected);
  });

  it("fits any wear from 30,000 mi on", () => {
    expect([reason([part(0, 0.2)], 29_999), reason([part(0, 0.2)], 30_000)]).toEqual([
      "more-wear-than-miles",
      "fits-miles",
    ]);
    expect(wearMiles({ parts: [part(0, 0.2)], miles: estimate(30_100, 500) }).reason).toBe("range-covers");
    expect(
      wearMiles({ parts: [part(0, 0.2)], miles: exactly(12_000) }, { "wear.low-miles": 10_000 }).reason,
    ).toBe("fits-miles");
  });

  it("leaves out what was retrimmed, and names what is heavily worn", () => {
    expect(reason([part(0, 0.2, true), part(0.8, 1)])).toBe("fits-miles");
    const mixed = wearMiles({ parts: [part(0, 0.2), part(0.8, 1)], miles: exactly(12_000) });
    expect(mixed).toMatchObject({ reason: "more-wear-than-miles", words: { parts: "0 to 0.2" } });
    expect(wearMiles({ parts: [part(0.6, 0.8), part(0.8, 1)], miles: exactly(12_000) }).words).toEqual({
      parts: "0.6 to 0.8, 0.8 to 1",
    });
    expect(wearMiles({ parts: [], miles: exactly(1) }).reason).toBe("too-few");
  });
});
