import type { Interval } from "@evenhand/booking/interval";
import { layOutRule } from "@evenhand/booking/recurrence";

const DAY = 86_400_000;
const once = { rrule: null, rdates: [], exdates: [] };

/** Wide enough for any zone's offset. */
const around = (local: string): Interval => {
  const at = Date.parse(`${local.slice(0, 10)}T00:00:00Z`);
  return { start: at - 2 * DAY, end: at + 4 * DAY };
};

/**
 * A date of a zone from midnight to midnight: 23 or 25 hours where the offset changes.
 *
 * @example localDay("2026-03-08", "America/New_York") // 05:00Z to 04:00Z of the next day
 */
export function localDay(date: string, zone: string): Interval {
  const [day] = layOutRule({ opens: `${date}T00:00:00`, closes: "24:00", ...once }, zone, around(date));
  if (day === undefined) throw new RangeError(`${zone} has no ${date}`);
  return day;
}

/** The instant of a wall-clock time of a zone. */
export function instantOfLocal(local: string, zone: string): number {
  const [stretch] = layOutRule({ opens: local, closes: "24:00", ...once }, zone, around(local));
  if (stretch === undefined) throw new RangeError(`${zone} has no ${local}`);
  return stretch.start;
}

/** The date of a zone at an instant. */
export const dateIn = (instant: number, zone: string): string =>
  new Intl.DateTimeFormat("en-CA", {
    timeZone: zone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
  }).format(instant);

/** Dates from the first to the last, both in it. */
export function datesBetween(from: string, until: string): string[] {
  const dates: string[] = [];
  for (let at = Date.parse(from); at <= Date.parse(until); at += DAY)
    dates.push(new Date(at).toISOString().slice(0, 10));
  return dates;
}
