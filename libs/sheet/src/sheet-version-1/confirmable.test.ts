import { welchSatterthwaite } from "@evenhand/measurement/welch-satterthwaite";
import { expandedUncertainty } from "@evenhand/measurement/expanded-uncertainty";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "./index.ts";

/**
 * U of the difference of two sides, each with its own ordinary instrument and the readings and spots the sheet asks for, as a share
 * of δ: u² = s₀²/n + r²/12 + a²/3 + p²/m a side, p left out where the scatter is already the spread over spots.
 */
function uncertaintyOverDelta(spec: ReadingSpec, value: number, spots = spec.ask.spots): number {
  const size = Math.abs(value);
  const n = spec.ask.readings * spots;
  const scatter = Math.hypot(spec.repeatability.value, spec.repeatability.share * size) / Math.sqrt(n);
  const accuracy = (spec.instrument.accuracy.absolute + spec.instrument.accuracy.share * size) / Math.sqrt(3);
  const placement = spec.repeatability.over === "spots" && spots > 1 ? 0 : spec.placement / Math.sqrt(spots);
  const side = [
    { standardUncertainty: scatter, degreesOfFreedom: spec.repeatability.degreesOfFreedom },
    { standardUncertainty: spec.instrument.resolution / Math.sqrt(12) },
    { standardUncertainty: accuracy },
    { standardUncertainty: placement },
  ];
  const both = [...side, ...side];
  const standardUncertainty = Math.sqrt(both.reduce((sum, part) => sum + part.standardUncertainty ** 2, 0));
  const u = expandedUncertainty({ standardUncertainty, degreesOfFreedom: welchSatterthwaite(both) });
  return u / Math.max(spec.delta.absolute, spec.delta.share * size);
}

const readings = sheet.items.flatMap(({ id, reading }) =>
  reading === undefined ? [] : [{ id, spec: reading }],
);

describe("confirmable: U of a difference is at most 0.6 δ", () => {
  it.each(readings)("$id, at its typical value", ({ spec }) => {
    const share = uncertaintyOverDelta(spec, spec.typical ?? Number.NaN);
    expect(share).toBeGreaterThan(0);
    expect(share <= 0.6).toBe(spec.notConfirmableBecause === undefined);
  });

  it("has no exception in version 1", () => {
    expect(readings.filter(({ spec }) => spec.notConfirmableBecause !== undefined)).toEqual([]);
  });

  it("confirms refinished paint with nine spots, where three are not always enough", () => {
    const paint = readings.find(({ id }) => id === "body.paint-thickness");
    const of = (value: number, spots: number) =>
      paint === undefined ? Number.NaN : uncertaintyOverDelta(paint.spec, value, spots);
    expect(of(130, 3)).toBeLessThanOrEqual(0.6);
    for (const value of [200, 300, 400, 700, 1000]) expect(of(value, 9)).toBeLessThanOrEqual(0.6);
  });

  it("judges extents by eye finely enough to confirm them", () => {
    const coarse = sheet.faultKinds.filter(({ delta, byEye }) =>
      [5, 20, 50, 100, 400].some((extent) => {
        const standardUncertainty = (Math.SQRT2 * (byEye.absolute + byEye.share * extent)) / Math.sqrt(3);
        const u = expandedUncertainty({ standardUncertainty, degreesOfFreedom: Number.POSITIVE_INFINITY });
        return u > 0.6 * Math.max(delta.absolute, delta.share * extent);
      }),
    );
    expect(coarse.map(({ id }) => id)).toEqual([]);
  });
});

/** Starting points: readings, spots, δ. */
describe("the differences that matter", () => {
  it.each([
    ["body.paint-thickness", "um", 75, 0.3, 1, 3],
    ["gaps.width-top", "mm", 2, 0, 1, 1],
    ["wheels.tread-depth", "1/32in", 2, 0, 1, 3],
    ["engine.compression", "psi", 20, 0, 2, 1],
    ["electrics.volts-rest", "V", 0.2, 0, 1, 1],
    ["brakes.lining-thickness", "in", 1 / 32, 0, 1, 1],
    ["steering.ride-height", "mm", 12, 0, 2, 1],
    ["steering.free-play", "in", 0.5, 0, 2, 1],
    ["road.revolutions", "rpm", 150, 0, 3, 1],
  ])("%s in %s: %d and %d, %d readings at %d spots", (id, unit, absolute, share, count, spots) => {
    const spec = readings.find((reading) => reading.id === id)?.spec;
    expect(spec).toMatchObject({ unit, delta: { absolute, share }, ask: { readings: count, spots } });
  });
});
