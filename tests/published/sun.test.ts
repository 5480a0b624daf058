import { describe, expect, it } from "vitest";
import { getTimes } from "suncalc";
import { daylight, solarDay } from "@evenhand/booking/daylight";
import sun from "../../fixtures/published/sun.json" with { type: "json" };

// Source and mark of every value: fixtures/published/sun.json (US Naval Observatory, UTC, to the minute).
const DAY = 86_400_000;
const MINUTE = 60_000;
const dayNumber = (date: string): number => Date.parse(`${date}T00:00:00Z`) / DAY;

/** What the sun does on a UTC date: solar days overlap UTC dates, so the neighbors are asked too. */
function onDate(row: { latitude: number; longitude: number; date: string }) {
  const number = dayNumber(row.date);
  const days = [-1, 0, 1].map((shift) => solarDay(row, number + shift));
  const within = (at: number | null): at is number =>
    at !== null && Math.floor((at + MINUTE / 2) / DAY) === number;
  return {
    kinds: days.map((day) => day.kind),
    rises: days.map((day) => (day.kind === "day" ? day.sunrise : null)).filter(within),
    sets: days.map((day) => (day.kind === "day" ? day.sunset : null)).filter(within),
    noons: days.map((day) => day.noon).filter(within),
  };
}

const minutesApart = (found: number[], date: string, published: string | null): number =>
  Math.min(...found.map((at) => Math.abs(at - Date.parse(`${date}T${published}:00Z`)))) / MINUTE;

const withSunrise = sun.rows.filter((row) => row.allDay === null);
const without = sun.rows.filter((row) => row.allDay !== null);

describe("sunrise and sunset against the published tables", () => {
  it("has rows on both sides of 65° and polar ones", () => {
    expect(withSunrise.filter((row) => Math.abs(row.latitude) < 65).length).toBeGreaterThan(50);
    expect(without.length).toBeGreaterThan(10);
  });

  /** The tables round to the minute, so half of one is theirs; the rest is a second. */
  const NEAREST = 0.52;

  it.each(withSunrise)("$place on $date to the minute the tables round to", (row) => {
    const found = onDate(row);
    expect(minutesApart(found.rises, row.date, row.rise)).toBeLessThanOrEqual(NEAREST);
    expect(minutesApart(found.sets, row.date, row.set)).toBeLessThanOrEqual(NEAREST);
    expect(minutesApart(found.noons, row.date, row.transit)).toBeLessThanOrEqual(NEAREST);
  });

  it.each(without)("$place on $date: the sun is $allDay the horizon all day", (row) => {
    const kind = row.allDay === "above" ? "polar-day" : "polar-night";
    expect(onDate(row).kinds).toEqual([kind, kind, kind]);
    const date = { start: dayNumber(row.date) * DAY, end: (dayNumber(row.date) + 1) * DAY };
    expect(daylight(row, date)).toEqual(row.allDay === "above" ? [date] : []);
  });
});

describe("sunrise and sunset against an independent library", () => {
  const places = sun.rows.filter(
    (row, index) => sun.rows.findIndex((other) => other.place === row.place) === index,
  );

  it.each(places.filter((row) => Math.abs(row.latitude) < 65))(
    "$place every week of two years within 2 minutes",
    (row) => {
      for (let number = dayNumber("2026-01-01"); number < dayNumber("2028-01-01"); number += 7) {
        const own = solarDay(row, number);
        const other = getTimes(new Date(own.noon), row.latitude, row.longitude);
        expect(own.kind).toBe("day");
        if (own.kind !== "day") continue;
        expect(Math.abs(own.sunrise! - other.sunrise!.getTime())).toBeLessThanOrEqual(2 * MINUTE);
        expect(Math.abs(own.sunset! - other.sunset!.getTime())).toBeLessThanOrEqual(2 * MINUTE);
      }
    },
  );
});
