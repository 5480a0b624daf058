import { describe, expect, it } from "vitest";
import { layOutHours } from "@evenhand/booking/recurrence";

/**
 * Hours across both changes of offset of 2026 in zones of both hemispheres, against Intl.DateTimeFormat, which is
 * ICU's own reading of the IANA database; the code under test uses a Temporal library instead. The changes themselves
 * are found here by searching Intl for them, so nothing is written down that a new release of the database could
 * make wrong.
 */
const ZONES = [
  "America/New_York",
  "America/Los_Angeles",
  "America/St_Johns",
  "America/Havana",
  "America/Santiago",
  "Europe/London",
  "Europe/Berlin",
  "Europe/Lisbon",
  "Africa/Cairo",
  "Asia/Beirut",
  "Australia/Sydney",
  "Australia/Lord_Howe",
  "Pacific/Auckland",
  "Pacific/Chatham",
];
const HOUR = 3_600_000;
const MINUTE = 60_000;
const YEAR = { start: Date.UTC(2026, 0, 1), end: Date.UTC(2027, 0, 1) };

const formats = new Map(
  ZONES.map((zone) => [
    zone,
    new Intl.DateTimeFormat("en-CA", {
      timeZone: zone,
      hourCycle: "h23",
      dateStyle: "short",
      timeStyle: "medium",
    }),
  ]),
);

/** The wall clock at an instant as Intl has it, as if it were UTC. */
function wallByIntl(zone: string, instant: number): number {
  const part = Object.fromEntries(
    formats
      .get(zone)!
      .formatToParts(instant)
      .map(({ type, value }) => [type, Number(value)]),
  );
  return Date.UTC(part.year!, part.month! - 1, part.day, part.hour, part.minute, part.second);
}

/** Hours of 2026 in which the offset changes. */
function changes(zone: string): number[] {
  const offset = (at: number): number => wallByIntl(zone, at) - at;
  const found: number[] = [];
  for (let at = YEAR.start; at < YEAR.end; at += HOUR) if (offset(at) !== offset(at + HOUR)) found.push(at);
  return found;
}

/** Every five minutes of the horizon: is the wall clock between opening and closing? */
function openByIntl(
  zone: string,
  horizon: { start: number; end: number },
  opens: number,
  closes: number,
): number[] {
  const open: number[] = [];
  for (let at = horizon.start; at < horizon.end; at += 5 * MINUTE) {
    const minute = (wallByIntl(zone, at) / MINUTE) % 1440;
    if (opens < closes ? minute >= opens && minute < closes : minute >= opens || minute < closes)
      open.push(at);
  }
  return open;
}

const clock = (minute: number): string =>
  minute === 1440
    ? "24:00"
    : `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;

/** Nine to five, the small hours round the change itself, a night shift, and the whole day. */
const HOURS: [number, number][] = [
  [540, 1020],
  [0, 480],
  [1320, 360],
  [0, 1440],
];

describe.each(ZONES)("hours in %s", (zone) => {
  it("has two changes of offset in 2026", () => {
    expect(changes(zone).length).toBe(2);
  });

  it.each(HOURS)("from minute %i to minute %i stand on the wall clock through both", (opens, closes) => {
    const rule = {
      opens: `2026-01-01T${clock(opens)}:00`,
      closes: clock(closes),
      rrule: "FREQ=DAILY",
      rdates: [],
      exdates: [],
    };
    for (const change of changes(zone)) {
      const horizon = { start: change - 72 * HOUR, end: change + 72 * HOUR };
      const laidOut = layOutHours({ zone, open: [rule], away: [] }, horizon);
      const open: number[] = [];
      for (const { start, end } of laidOut) for (let at = start; at < end; at += 5 * MINUTE) open.push(at);
      expect(open).toEqual(openByIntl(zone, horizon, opens, closes));
    }
  });
});
