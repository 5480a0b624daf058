import type { WeeklyHours } from "@evenhand/shared/booking";
import { expect, test } from "vitest";
import { beginningOn, comingAgain, hoursOf, newDay, typedHours } from "./weekly-hours.ts";

const rule = (opens: string, closes: string, rrule: string | null) => ({
  opens,
  closes,
  rrule,
  rdates: [],
  exdates: [],
});

const hours: WeeklyHours = {
  zone: "America/Denver",
  open: [
    rule("2026-11-23T08:00:00", "17:00", "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR"),
    rule("2026-12-05T09:00:00", "12:00", null),
    rule("2026-12-01T18:00:00", "21:00", "FREQ=MONTHLY;BYDAY=1TU"),
  ],
  away: [
    rule("2026-12-24T00:00:00", "24:00", "FREQ=DAILY;COUNT=9"),
    rule("2026-11-25T12:00:00", "13:00", "FREQ=WEEKLY;BYDAY=WE"),
    rule("2026-11-30T12:00:00", "13:00", "FREQ=WEEKLY;BYDAY=MO,TU"),
  ],
};

test("what is read and written again is the same hours", () => {
  expect(hoursOf(typedHours(hours))).toEqual({
    ...hours,
    away: [hours.away[0], hours.away[1], hours.away[2]],
  });
});

test("days in a row, a weekly break and a rule of another program each have their place", () => {
  const typed = typedHours(hours);
  expect(typed.away.map(({ first, last, whole, weekly }) => ({ first, last, whole, weekly }))).toEqual([
    { first: "2026-12-24", last: "2027-01-01", whole: true, weekly: false },
    { first: "2026-11-25", last: "2026-11-25", whole: false, weekly: true },
  ]);
  expect(typed.otherOpen).toEqual([hours.open[2]]);
  expect(typed.otherAway).toEqual([hours.away[2]]);
});

test("a recurrence begins on one of its own days", () => {
  const typed = typedHours(hours);
  const [row] = typed.weekly;
  if (row === undefined) throw new Error("There is a weekly row.");
  const changed = hoursOf({ ...typed, weekly: [{ ...row, days: ["SA"] }] });
  expect(changed.open[0]).toMatchObject({ opens: "2026-11-28T08:00:00", rrule: "FREQ=WEEKLY;BYDAY=SA" });
});

const away = { ...newDay("America/Denver", true), first: "2026-12-21", last: "2026-12-23" };

test("days away that begin later end no earlier than they begin", () => {
  expect(beginningOn(away, "2026-12-22", true)).toMatchObject({ first: "2026-12-22", last: "2026-12-23" });
  expect(beginningOn(away, "2026-12-28", true)).toMatchObject({ first: "2026-12-28", last: "2026-12-28" });
});

test("a single day moves whole", () => {
  const day = { ...away, last: away.first };
  expect(beginningOn(day, "2026-12-18", false)).toMatchObject({ first: "2026-12-18", last: "2026-12-18" });
});

test("what comes again every week is one day", () => {
  expect(comingAgain(away, true)).toMatchObject({ weekly: true, first: "2026-12-21", last: "2026-12-21" });
  expect(comingAgain({ ...away, weekly: true }, false)).toMatchObject({ weekly: false, last: "2026-12-21" });
});
