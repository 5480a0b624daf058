import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daylight, solarDay } from "./index.ts";
import { solarPosition } from "./solar-position.ts";

const DAY = 86_400_000;
const number = (date: string): number => Date.parse(`${date}T00:00:00Z`) / DAY;
const clock = (at: number | null): string | null =>
  at === null ? null : new Date(at + 30_000).toISOString().slice(0, 16);
const TROMSØ = { latitude: 69.6489, longitude: 18.95508 };

describe("daylight", () => {
  it("gives the results of its examples", () => {
    const kyiv = solarDay({ latitude: 50.45466, longitude: 30.5238 }, number("2026-06-01"));
    expect(kyiv.kind === "day" && [kyiv.sunrise, kyiv.noon, kyiv.sunset].map(clock)).toEqual([
      "2026-06-01T01:52",
      "2026-06-01T09:56",
      "2026-06-01T18:00",
    ]);
    expect(solarPosition(Date.UTC(2026, 5, 21, 12)).declination).toBeCloseTo(0.4091, 3);
    const december = { start: Date.UTC(2026, 11, 1), end: Date.UTC(2026, 11, 31) };
    expect(daylight({ latitude: 78.2, longitude: 15.6 }, december)).toEqual([]);
  });

  it("falls on the calendar day of the place at both ends of the map", () => {
    const auckland = solarDay({ latitude: -36.85, longitude: 174.76 }, number("2026-06-01"));
    expect(clock(auckland.noon)?.slice(0, 13)).toBe("2026-06-01T00");
    const honolulu = solarDay({ latitude: 21.31, longitude: -157.86 }, number("2026-06-01"));
    expect(clock(honolulu.noon)?.slice(0, 13)).toBe("2026-06-01T22");
  });

  it("is one stretch through a polar day, with the days on which the sun only rises or only sets", () => {
    const summer = { start: Date.UTC(2026, 3, 20), end: Date.UTC(2026, 7, 20) };
    const kinds = Array.from({ length: 122 }, (_, i) => solarDay(TROMSØ, summer.start / DAY + i));
    const longest = daylight(TROMSØ, summer).toSorted((a, b) => b.end - b.start - (a.end - a.start))[0]!;
    const polar = kinds.filter(({ kind }) => kind === "polar-day").length;
    expect(polar).toBeGreaterThan(60);
    expect((longest.end - longest.start) / DAY).toBeGreaterThan(polar);
    expect((longest.end - longest.start) / DAY).toBeLessThan(polar + 2);
  });

  it("answers at the poles", () => {
    for (const latitude of [90, -90]) {
      const days = [
        solarDay({ latitude, longitude: 0 }, number("2026-06-21")),
        solarDay({ latitude, longitude: 0 }, number("2026-12-21")),
      ];
      expect(days.map(({ kind }) => kind)).toEqual(
        latitude > 0 ? ["polar-day", "polar-night"] : ["polar-night", "polar-day"],
      );
    }
  });

  it("is cut to the horizon, normal, and has noon in it wherever the sun rises", () => {
    const place = fc.record({
      latitude: fc.double({ min: -90, max: 90, noNaN: true }),
      longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    });
    fc.assert(
      fc.property(
        place,
        fc.integer({ min: number("1950-01-01"), max: number("2100-01-01") }),
        (where, day) => {
          const horizon = { start: day * DAY - 2 * DAY, end: day * DAY + 3 * DAY };
          const light = daylight(where, horizon);
          light.forEach(({ start, end }, i) => {
            expect(start < end && start >= horizon.start && end <= horizon.end).toBe(true);
            expect(i === 0 || start > light[i - 1]!.end).toBe(true);
          });
          const { kind, noon } = solarDay(where, day);
          expect(light.some(({ start, end }) => start <= noon && noon < end)).toBe(kind !== "polar-night");
        },
      ),
      { numRuns: 1_000 },
    );
  });
});
