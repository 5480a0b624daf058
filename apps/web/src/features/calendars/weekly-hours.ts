import type { HoursRule, WeeklyHours } from "@evenhand/shared/booking";
import { addDays, mondayOf, today } from "../../entities/time/zone-time";

export const weekdays = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"] as const;
export type Weekday = (typeof weekdays)[number];

/** Hours that come again every week on the same days. */
export interface WeeklyRow {
  readonly key: string;
  readonly days: readonly Weekday[];
  readonly opens: string;
  readonly closes: string;
  /** What was there before: its first opening and the dates taken out of it. */
  readonly kept: Pick<HoursRule, "rdates" | "exdates"> & { readonly since: string };
}

/** One day, or some days in a row; `weekly` where it comes again on that weekday. */
export interface DayRow {
  readonly key: string;
  readonly first: string;
  readonly last: string;
  readonly whole: boolean;
  readonly weekly: boolean;
  readonly opens: string;
  readonly closes: string;
}

/** Hours as they are edited. What a program entered by other rules is kept as it came. */
export interface HoursTyped {
  readonly zone: string;
  readonly weekly: readonly WeeklyRow[];
  readonly extra: readonly DayRow[];
  readonly away: readonly DayRow[];
  readonly otherOpen: readonly HoursRule[];
  readonly otherAway: readonly HoursRule[];
}

let made = 0;
export const newKey = (): string => `row-${(made += 1)}`;

const timeOf = (local: string): string => local.slice(11, 16);
const dateOf = (local: string): string => local.slice(0, 10);

const weeklyDays = (rrule: string | null): readonly Weekday[] | null => {
  const days = /^FREQ=WEEKLY;BYDAY=([A-Z,]+)$/.exec(rrule ?? "")?.[1]?.split(",");
  if (days === undefined) return null;
  const known = weekdays.filter((day) => days.includes(day));
  return known.length === days.length ? known : null;
};

const weeklyRow = (rule: HoursRule): WeeklyRow | null => {
  const days = weeklyDays(rule.rrule);
  if (days === null) return null;
  const { opens, closes, rdates, exdates } = rule;
  return {
    key: newKey(),
    days,
    opens: timeOf(opens),
    closes,
    kept: { since: dateOf(opens), rdates, exdates },
  };
};

/** A single day, days in a row as the editor writes them, or one weekday every week. */
const dayRow = ({ opens, closes, rrule, rdates, exdates }: HoursRule): DayRow | null => {
  if (rdates.length > 0 || exdates.length > 0) return null;
  const first = dateOf(opens);
  const row = { key: newKey(), first, opens: timeOf(opens), closes };
  const whole = row.opens === "00:00" && closes === "24:00";
  if (rrule === null) return { ...row, last: first, whole, weekly: false };
  const count = /^FREQ=DAILY;COUNT=(\d+)$/.exec(rrule)?.[1];
  if (count !== undefined) return { ...row, last: addDays(first, Number(count) - 1), whole, weekly: false };
  const days = weeklyDays(rrule);
  return days?.length === 1 && days[0] === weekdayOf(first)
    ? { ...row, last: first, whole, weekly: true }
    : null;
};

const weekdayOf = (date: string): Weekday => {
  const monday = mondayOf(date);
  return weekdays.find((_, index) => addDays(monday, index) === date) ?? "MO";
};

const split = <T>(rules: readonly HoursRule[], read: (rule: HoursRule) => T | null) => {
  const rows: T[] = [];
  const others: HoursRule[] = [];
  for (const rule of rules) {
    const row = read(rule);
    if (row === null) others.push(rule);
    else rows.push(row);
  }
  return { rows, others };
};

/** For editing. Nothing is lost: a rule the editor has no row for is kept as it is. */
export const typedHours = ({ zone, open, away }: WeeklyHours): HoursTyped => {
  const weekly = split(open, weeklyRow);
  const extra = split(weekly.others, dayRow);
  const gone = split(away, dayRow);
  return {
    zone,
    weekly: weekly.rows,
    extra: extra.rows,
    away: gone.rows,
    otherOpen: extra.others,
    otherAway: gone.others,
  };
};

/** The first of the days at or after a date: a recurrence begins on one of its own days. */
const firstOn = (days: readonly Weekday[], from: string): string => {
  const dates = [0, 1, 2, 3, 4, 5, 6].map((after) => addDays(from, after));
  return dates.find((date) => days.includes(weekdayOf(date))) ?? from;
};

const daysBetween = (first: string, last: string): number =>
  Math.round((Date.parse(last) - Date.parse(first)) / 86_400_000) + 1;

const ruleOfDay = (row: DayRow): HoursRule => {
  const count = Math.max(1, daysBetween(row.first, row.last));
  return {
    opens: `${row.first}T${row.whole ? "00:00" : row.opens}:00`,
    closes: row.whole ? "24:00" : row.closes,
    rrule: row.weekly
      ? `FREQ=WEEKLY;BYDAY=${weekdayOf(row.first)}`
      : count === 1
        ? null
        : `FREQ=DAILY;COUNT=${count}`,
    rdates: [],
    exdates: [],
  };
};

/** As the service takes them. Weekly rows with no day are left out. */
export const hoursOf = (typed: HoursTyped): WeeklyHours => ({
  zone: typed.zone,
  open: [
    ...typed.weekly
      .filter(({ days }) => days.length > 0)
      .map(({ days, opens, closes, kept }) => ({
        opens: `${firstOn(days, kept.since)}T${opens}:00`,
        closes,
        rrule: `FREQ=WEEKLY;BYDAY=${days.join(",")}`,
        rdates: kept.rdates,
        exdates: kept.exdates,
      })),
    ...typed.extra.map(ruleOfDay),
    ...typed.otherOpen,
  ],
  away: [...typed.away.map(ruleOfDay), ...typed.otherAway],
});

export const newWeekly = (zone: string): WeeklyRow => ({
  key: newKey(),
  days: ["MO", "TU", "WE", "TH", "FR"],
  opens: "08:00",
  closes: "17:00",
  kept: { since: mondayOf(today(zone)), rdates: [], exdates: [] },
});

export const newDay = (zone: string, whole: boolean): DayRow => ({
  key: newKey(),
  first: today(zone),
  last: today(zone),
  whole,
  weekly: false,
  opens: "09:00",
  closes: "17:00",
});

/** Begun on another day: one day stays one day, and of several the last never comes before the first. */
export const beginningOn = (row: DayRow, first: string, several: boolean): DayRow => ({
  ...row,
  first,
  last: several && row.last > first ? row.last : first,
});

/** What comes again every week is one day long. */
export const comingAgain = (row: DayRow, weekly: boolean): DayRow => ({ ...row, weekly, last: row.first });

/** Nothing but working hours from Monday to Friday. */
export const firstHours = (zone: string): HoursTyped => ({
  zone,
  weekly: [newWeekly(zone)],
  extra: [],
  away: [],
  otherOpen: [],
  otherAway: [],
});
