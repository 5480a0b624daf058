import { describe, expect, it } from "vitest";
import { HoursRecurrence, HoursRule, WeeklyHours } from "@evenhand/shared/booking";
import { checkRule, layOutHours, layOutRule, wallTimes } from "./index.ts";

const rule = (more: Partial<HoursRule> = {}): HoursRule => ({
  opens: "2026-03-02T09:00:00",
  closes: "17:00",
  rrule: "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR",
  rdates: [],
  exdates: [],
  ...more,
});
const utc = (text: string): number => Date.parse(`${text}Z`);
const shown = (list: readonly { start: number; end: number }[]): string[] =>
  list.map(({ start, end }) =>
    [start, end].map((at) => new Date(at).toISOString().slice(5, 16)).join(" to "),
  );
const days = (first: string, last: string) => ({ start: utc(`${first}T00:00`), end: utc(`${last}T00:00`) });

/** A single opening in New York in 2007. */
const once = (opens: string) =>
  layOutRule(
    rule({ opens, closes: "09:00", rrule: null }),
    "America/New_York",
    days("2007-01-01", "2008-01-01"),
  );

/** How many days of a rule lie before its UNTIL at this UTC time of 4 March. */
const laid = (time: string): number =>
  layOutRule(
    rule({ rrule: `FREQ=DAILY;UNTIL=20260304T${time}Z` }),
    "America/New_York",
    days("2026-03-01", "2026-03-10"),
  ).length;

describe("hours laid out", () => {
  it("keep their place on the clock when the offset changes", () => {
    const both = layOutRule(
      rule({ rrule: "FREQ=DAILY" }),
      "America/New_York",
      days("2026-03-07", "2026-03-09"),
    );
    expect(shown(both)).toEqual(["03-07T14:00 to 03-07T22:00", "03-08T13:00 to 03-08T21:00"]);
  });

  it("run past midnight, an hour shorter on the night the clock goes forward", () => {
    const night = rule({ opens: "2026-03-01T22:00:00", closes: "06:00", rrule: "FREQ=DAILY" });
    const [first, second] = layOutRule(night, "America/New_York", days("2026-03-07", "2026-03-10")).slice(1);
    expect([first, second].map((one) => (one!.end - one!.start) / 3_600_000)).toEqual([7, 8]);
  });

  it("are cut at the horizon, with what began before it", () => {
    const night = rule({ opens: "2026-03-01T22:00:00", closes: "06:00", rrule: "FREQ=DAILY" });
    expect(
      shown(layOutRule(night, "UTC", { start: utc("2026-03-05T02:00"), end: utc("2026-03-05T23:00") })),
    ).toEqual(["03-05T02:00 to 03-05T06:00", "03-05T22:00 to 03-05T23:00"]);
  });

  it("skip what is excluded and add what is named", () => {
    const rules = rule({ exdates: ["2026-03-03T09:00:00"], rdates: ["2026-03-07T10:00:00"] });
    expect(shown(layOutRule(rules, "UTC", days("2026-03-02", "2026-03-05")))).toEqual([
      "03-02T09:00 to 03-02T17:00",
      "03-04T09:00 to 03-04T17:00",
    ]);
    expect(shown(layOutRule(rules, "UTC", days("2026-03-07", "2026-03-08")))).toEqual([
      "03-07T10:00 to 03-07T17:00",
    ]);
  });

  it("leave out what is named away, and join what touches", () => {
    const hours = WeeklyHours.parse({
      zone: "UTC",
      open: [rule({ closes: "12:00" }), rule({ opens: "2026-03-02T12:00:00" })],
      away: [rule({ opens: "2026-03-03T10:00:00", closes: "11:00", rrule: null })],
    });
    expect(shown(layOutHours(hours, days("2026-03-02", "2026-03-04")))).toEqual([
      "03-02T09:00 to 03-02T17:00",
      "03-03T09:00 to 03-03T10:00",
      "03-03T11:00 to 03-03T17:00",
    ]);
  });

  it("run all day to 24:00, also where midnight is skipped", () => {
    // Santiago goes from 23:59:59 on 5 September 2026 to 01:00 on the 6th.
    const all = rule({ opens: "2026-09-01T00:00:00", closes: "24:00", rrule: "FREQ=DAILY" });
    const horizon = { start: utc("2026-09-04T00:00"), end: utc("2026-09-09T00:00") };
    expect(layOutRule(all, "America/Santiago", horizon)).toEqual([horizon]);
  });

  it("end with UNTIL in UTC, read on the zone's own clock", () => {
    // 9 o'clock in New York on 4 March is 14:00Z.
    expect([laid("135959"), laid("140000")]).toEqual([2, 3]);
  });

  it("take the first of two and the offset before a gap (RFC 5545 §3.3.5)", () => {
    expect(once("2007-11-04T01:30:00")[0]!.start).toBe(utc("2007-11-04T05:30:00"));
    expect(once("2007-03-11T02:30:00")[0]!.start).toBe(utc("2007-03-11T07:30:00"));
  });

  it("give wall-clock times in the horizon, each once, in order", () => {
    const recurrence = {
      start: "2026-03-07T09:00:00",
      rrule: "FREQ=DAILY;COUNT=2",
      rdates: ["2026-03-07T09:00:00", "2026-03-06T08:00:00"],
      exdates: [],
    };
    const times = wallTimes(recurrence, "America/New_York", days("2026-03-01", "2026-04-01")).map(String);
    expect(times).toEqual(["2026-03-06T08:00:00", "2026-03-07T09:00:00", "2026-03-08T09:00:00"]);
  });
});

describe("rules as entered", () => {
  it("are checked", () => {
    expect(checkRule(rule())).toBeNull();
    expect(checkRule(rule({ rrule: "FREQ=WEEKLY;BYDAY=XX" }))).toEqual({
      code: "unreadable-recurrence",
      detail: "BYDAY=XX: days such as MO,TU, or 1MO for the first Monday",
    });
    expect(checkRule(rule({ opens: "2026-02-31T09:00:00" }))?.code).toBe("unreadable-time");
    expect(checkRule(rule({ exdates: ["soon"] }))?.code).toBe("unreadable-time");
  });

  it("are tried over the stretch that will be searched, where a rule may give out that begins well", () => {
    const late = rule({ opens: "2000-01-13T09:00:00", rrule: "FREQ=DAILY;COUNT=65;BYMONTHDAY=-22;BYDAY=WE" });
    const horizon = { start: Date.UTC(2027, 4, 3), end: Date.UTC(2028, 0, 3) };
    expect(checkRule(late)).toBeNull();
    expect(checkRule(late, { zone: "America/Chicago", horizon })).toEqual({
      code: "unreadable-recurrence",
      detail: "takes too long to lay out: say the last day with UNTIL in place of COUNT, or begin later",
    });
  });

  it.each([
    "FREQ=HOURLY",
    "FREQ=SECONDLY;INTERVAL=1",
    "FREQ=DAILY;BYHOUR=9,10",
    "FREQ=YEARLY;BYWEEKNO=53",
    "FREQ=YEARLY;BYMONTHDAY=1",
    "FREQ=DAILY;COUNT=3;UNTIL=20260304T000000Z",
    "BYDAY=MO",
    "FREQ=WEEKLY\nDTSTART:20200101",
  ])("may not recur by %s", (text) => expect(HoursRecurrence.safeParse(text).success).toBe(false));

  it.each([
    "FREQ=WEEKLY;BYDAY=MO,TU",
    "FREQ=MONTHLY;BYDAY=-1FR",
    "FREQ=YEARLY;BYMONTH=12;BYMONTHDAY=24,25",
    "FREQ=DAILY;UNTIL=20260304T000000Z",
  ])("may recur by %s", (text) => expect(HoursRecurrence.safeParse(text).success).toBe(true));

  it.each([
    [{ opens: "2026-03-02T09:00:00Z" }],
    [{ opens: "2026-03-02T09:00:00+01:00" }],
    [{ closes: "24:30" }],
    [{ closes: "9:00" }],
  ])("may not hold %o", (more) => expect(HoursRule.safeParse(rule(more)).success).toBe(false));

  it.each(["Mars/Olympus", "+02:00", "", "EST5EDT junk"])("may not be in zone %o", (zone) => {
    expect(WeeklyHours.safeParse({ zone, open: [] }).success).toBe(false);
  });
});
