import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { greatCircleDistance } from "../great-circle/index.ts";
import { greatCircleTravel } from "./index.ts";

const place = fc.record({
  latitude: fc.double({ min: -90, max: 90, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
});
const AT_ORIGIN = { latitude: 0, longitude: 0 };

describe("travel", () => {
  it("is the great circle and a quarter, rounded up to the minute", () => {
    const degree = greatCircleTravel(AT_ORIGIN, { latitude: 0, longitude: 1 }, 20);
    expect(Math.round(degree.meters)).toBe(138_994);
    expect(degree.milliseconds).toBe(6_960_000);
    expect(greatCircleTravel(AT_ORIGIN, AT_ORIGIN, 20)).toEqual({ meters: 0, milliseconds: 0 });
  });

  it.each([0, -1, Number.NaN])("refuses a speed of %f", (speed) => {
    expect(() => greatCircleTravel(AT_ORIGIN, AT_ORIGIN, speed)).toThrow(RangeError);
  });

  it("is as far back as out, never negative, and never longer than by way of a third place but for rounding", () => {
    fc.assert(
      fc.property(place, place, place, (a, b, c) => {
        const direct = greatCircleDistance(a, c);
        expect(direct).toBeGreaterThanOrEqual(0);
        expect(Math.abs(direct - greatCircleDistance(c, a))).toBeLessThan(1e-6);
        expect(direct).toBeLessThanOrEqual(greatCircleDistance(a, b) + greatCircleDistance(b, c) + 1);
        expect(greatCircleTravel(a, c, 20).milliseconds % 60_000).toBe(0);
      }),
      { numRuns: 2_000 },
    );
  });

  it("answers between antipodes", () => {
    expect(greatCircleDistance({ latitude: 90, longitude: 0 }, { latitude: -90, longitude: 0 })).toBeCloseTo(
      Math.PI * 6_371_008.8,
      3,
    );
  });
});
