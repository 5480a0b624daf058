import type { WeeklyHours } from "@evenhand/shared/booking";
import { type Interval, subtract } from "../interval/index.ts";
import { layOutHours } from "../recurrence/index.ts";

const DAY = 86_400_000;
/** So far ahead hours are laid out; a site that is not open long enough within them has this for its deadline. */
const MOST_DAYS = 60;

/** Where a site says nothing of its hours: weekdays from nine to five, UTC. Our own. */
export const USUAL_HOURS: WeeklyHours = {
  zone: "UTC",
  open: [
    {
      opens: "2024-01-01T09:00:00",
      closes: "17:00",
      rrule: "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR",
      rdates: [],
      exdates: [],
    },
  ],
  away: [],
};

/**
 * When so much open time has gone by.
 *
 * @param work milliseconds of open time
 * @param open stretches from now on, a normal list
 * @returns epoch milliseconds; `null` where there is not so much of it
 * @example workEnds(4, [{ start: 0, end: 3 }, { start: 10, end: 20 }]) // 11
 */
export function workEnds(work: number, open: readonly Interval[]): number | null {
  let left = work;
  for (const { start, end } of open) {
    if (left <= end - start) return start + left;
    left -= end - start;
  }
  return null;
}

/**
 * When so much of a site's open time has gone by: hours in which nobody is there do not count against whoever owes an answer.
 *
 * @param now epoch milliseconds
 * @param work milliseconds of open time
 * @param closures stretches in which the site is closed besides, a normal list
 * @returns epoch milliseconds; at most sixty days ahead
 * @example
 * // Friday 16:00 UTC, four hours: one is left of Friday, three of Monday are needed.
 * workingDeadline(Date.UTC(2026, 4, 8, 16), 4 * 3_600_000, USUAL_HOURS) // Date.UTC(2026, 4, 11, 12)
 */
export function workingDeadline(
  now: number,
  work: number,
  hours: WeeklyHours,
  closures: readonly Interval[] = [],
): number {
  const horizon = { start: now, end: now + MOST_DAYS * DAY };
  return workEnds(work, subtract(layOutHours(hours, horizon), closures)) ?? horizon.end;
}
