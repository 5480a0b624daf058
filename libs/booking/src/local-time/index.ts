import { Temporal } from "temporal-polyfill";
import type { Interval } from "../interval/index.ts";

/**
 * The instant of a wall-clock time of a zone. A time that occurs twice is the first; one that the zone skips is read with the
 * offset before the gap (RFC 5545 §3.3.5), so every time has an instant.
 *
 * @param local date and time with no zone
 * @returns epoch milliseconds
 * @example instantOfLocal("2026-03-08T02:30:00", "America/New_York") // 1772955000000
 */
export const instantOfLocal = (local: string, zone: string): number =>
  Temporal.PlainDateTime.from(local).toZonedDateTime(zone, { disambiguation: "compatible" })
    .epochMilliseconds;

/**
 * A date of a zone from its first instant to that of the next date: 23 or 25 hours where the offset changes, and none at all
 * where the zone left the date out, as Samoa did with 30 December 2011 (IANA time zone database, `Pacific/Apia`).
 *
 * @returns epoch milliseconds; start and end are the same for a date that is left out
 * @example localDay("2011-12-30", "Pacific/Apia") // { start: 1325239200000, end: 1325239200000 }
 */
export function localDay(date: string, zone: string): Interval {
  const day = Temporal.PlainDate.from(date);
  const startOf = (each: Temporal.PlainDate) => each.toZonedDateTime(zone).startOfDay().epochMilliseconds;
  return { start: startOf(day), end: startOf(day.add({ days: 1 })) };
}

/**
 * Dates from the first to the last, both in it, and the stretch of each; a date that the zone left out is left out.
 *
 * @example localDays("2011-12-29", "2011-12-31", "Pacific/Apia").map(({ date }) => date) // ["2011-12-29", "2011-12-31"]
 */
export function localDays(from: string, until: string, zone: string): { date: string; day: Interval }[] {
  const days: { date: string; day: Interval }[] = [];
  const last = Temporal.PlainDate.from(until);
  for (
    let date = Temporal.PlainDate.from(from);
    Temporal.PlainDate.compare(date, last) <= 0;
    date = date.add({ days: 1 })
  ) {
    const day = localDay(date.toString(), zone);
    if (day.start < day.end) days.push({ date: date.toString(), day });
  }
  return days;
}
