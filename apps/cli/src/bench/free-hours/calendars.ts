import { DEFAULT_RULES, type InspectorCalendar, type VisitRequest } from "@evenhand/booking/calendar";
import { daylight } from "@evenhand/booking/daylight";
import type { Interval } from "@evenhand/booking/interval";
import { layOutHours } from "@evenhand/booking/recurrence";
import { greatCircleTravel } from "@evenhand/booking/travel";
import { toVisitItem } from "@evenhand/booking/visit-items";
import { planVisit } from "@evenhand/booking/visit-plan";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const zone = "America/Chicago";

/** Monday, 3 May 2027, midnight UTC; thirty days from then. */
export const now = Date.UTC(2027, 4, 3);
export const horizon: Interval = { start: now, end: now + 30 * DAY };
const long = { start: now - 2 * DAY, end: now + 32 * DAY };

const weekdays = (opens: string, closes: string) => ({
  zone,
  open: [
    {
      opens: `2026-01-05T${opens}:00`,
      closes,
      rrule: "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR",
      rdates: [],
      exdates: [],
    },
  ],
  away: [],
});

const workingHours = weekdays("06:00", "20:00");
const laidOut = new Map([[JSON.stringify(workingHours), layOutHours(workingHours, long)]]);

type JobAsNumbers = readonly [start: number, end: number, latitude: number, longitude: number];

/** A calendar as the service reads it: hours by their rule, four numbers a job. */
export type StoredCalendar = Omit<InspectorCalendar, "hours" | "engagements"> & {
  readonly rule: typeof workingHours;
  readonly engagements: readonly JobAsNumbers[];
};

const jobOf = ([
  start,
  end,
  latitude,
  longitude,
]: JobAsNumbers): InspectorCalendar["engagements"][number] => ({
  start,
  end,
  place: { latitude, longitude },
});

/** With its hours laid out beforehand, found by what they were laid out from, as the service keeps them. */
export function toCalendar({ rule, ...calendar }: StoredCalendar): InspectorCalendar {
  const hours = laidOut.get(JSON.stringify(rule));
  if (hours === undefined) throw new Error("these hours were not laid out");
  return { ...calendar, hours, engagements: calendar.engagements.map(jobOf) };
}

/** So many inspectors round one yard, each with a job on every other working day; all of one price, so that every calendar counts. */
export function makeInspectors(count: number): StoredCalendar[] {
  const hours = layOutHours(workingHours, long);
  return Array.from({ length: count }, (_, index) => {
    const base = { latitude: 41 + (index % 25) / 50, longitude: -88.5 + (index % 17) / 40 };
    const jobs = hours.filter((_day, day) => (day + index) % 2 === 0);
    return {
      id: `inspector-${String(index).padStart(4, "0")}`,
      base,
      radius: 300_000,
      speed: 22,
      notice: DAY,
      rule: workingHours,
      engagements: jobs.map(
        ({ start }) =>
          [
            start + (2 + (index % 5)) * HOUR,
            start + (5 + (index % 5)) * HOUR,
            41.2 + (index % 7) / 20,
            -88.2,
          ] as const,
      ),
      skills: ["body" as const, "engine" as const],
      fees: { currency: "USD", perVisit: 40_000, perExtraCar: 20_000, perMile: 0 },
      conflicts: [],
    };
  });
}

/** The core items of the sheet on one car, at a yard with one lift. */
export function makeRequest(): VisitRequest {
  const items = sheetVersion1.items.filter(({ core }) => core).map(toVisitItem);
  const planned = planVisit([{ car: "car", items }]);
  if (planned.kind === "refused") throw new Error("the core items cannot be planned");
  const place = { latitude: 41.5, longitude: -88.1 };
  return {
    plan: planned.plan,
    skills: [],
    currency: "USD",
    cars: [{ id: "car", engagements: [] }],
    travel: greatCircleTravel,
    rules: DEFAULT_RULES,
    site: {
      id: "yard",
      place,
      open: layOutHours(weekdays("08:00", "18:00"), long),
      closures: [],
      daylight: daylight(place, long),
      bays: [{ id: "bay", taken: [] }],
      fees: { currency: "USD", perVisit: 2_000, perLiftSpell: 1_500 },
    },
  };
}
