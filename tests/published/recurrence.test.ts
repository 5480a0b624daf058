import { describe, expect, it } from "vitest";
import { layOutRule, wallTimes } from "@evenhand/booking/recurrence";
import { HoursRecurrence } from "@evenhand/shared/booking";
import published from "../../fixtures/published/rrule.json" with { type: "json" };

// Source and mark of every case: fixtures/published/rrule.json.
const spaced = (basic: string): string =>
  basic.replace(
    /^(\d{4})(\d\d)(\d\d)(?:T(\d\d)(\d\d)(\d\d)Z?)?$/,
    (_, y, m, d, h = "00", min = "00", s = "00") => `${y}-${m}-${d}T${h}:${min}:${s}`,
  );

/** What the table writes differently from RFC 5545, and how it is read here. */
const asRfc = (rrule: string): string =>
  rrule
    // A semicolon after the last part.
    .replace(/;$/, "")
    // UNTIL as a date or without Z; the table has no zone, so it means the same on the UTC clock.
    .replace(/UNTIL=(\d{8})$/, "UNTIL=$1T000000Z")
    .replace(/UNTIL=(\d{8}T\d{6})(?!Z|\d)/, "UNTIL=$1Z");

/**
 * Six cases on which the table and the library that lays out our recurrences differ. None is an example of RFC 5545
 * and the standard decides neither way, so hours may not be entered with such rules.
 */
const UNDECIDED = new Map([
  // The days of a week that spans two years: the year before's last week, or the new year's? libical issues 794, 1223.
  ["FREQ=YEARLY;BYWEEKNO=53;COUNT=1 from 20270103T000000Z", "week across the year"],
  ["FREQ=YEARLY;BYWEEKNO=-1,-2;COUNT=5 from 20270102", "week across the year"],
  [
    "FREQ=YEARLY;BYWEEKNO=53;BYDAY=TU,SA;INTERVAL=6;UNTIL=20170101T000000Z from 20100102T000000",
    "week across the year",
  ],
  [
    "FREQ=YEARLY;BYWEEKNO=53;BYDAY=TU,SA;INTERVAL=5;UNTIL=20170101T000000Z from 20100102T000000",
    "week across the year",
  ],
  ["FREQ=YEARLY;BYWEEKNO=1;BYDAY=MO,TU;INTERVAL=3;UNTIL=20320101 from 20241231", "week across the year"],
  // Every month of the year, or the month of the start only?
  ["FREQ=YEARLY;BYMONTHDAY=-29,-1;COUNT=4 from 20240201", "yearly day of the month without a month"],
]);

type Case = { rrule: string; dtstart: string; instances: string[]; startAt?: string };
const isUndecided = ({ rrule, dtstart }: Case): boolean => UNDECIDED.has(`${rrule} from ${dtstart}`);
const cases: Case[] = published.cases;
const decided = cases.filter((one) => !isUndecided(one));

const HORIZON = { start: Date.UTC(1990, 0, 1), end: Date.UTC(2110, 0, 1) };
const shown = (rrule: string, start: string, zone: string, horizon = HORIZON): string[] =>
  wallTimes({ start: spaced(start), rrule: asRfc(rrule), rdates: [], exdates: [] }, zone, horizon).map(
    (wall) => wall.toString({ smallestUnit: "second" }),
  );

describe("recurrence instances", () => {
  it.each(decided)("$rrule from $dtstart", ({ rrule, dtstart, instances }) => {
    expect(shown(rrule, dtstart, "UTC")).toEqual(instances.map(spaced));
  });

  it.each(decided.filter(({ startAt }) => startAt !== undefined))("$rrule seen from $startAt", (one) => {
    const from = spaced(one.startAt!);
    const horizon = { ...HORIZON, start: Date.parse(`${from}Z`) };
    expect(shown(one.rrule, one.dtstart, "UTC", horizon)).toEqual(
      one.instances.map(spaced).filter((at) => at >= from),
    );
  });

  // RFC 5545 §3.8.5.3 gives its examples with TZID=America/New_York and UNTIL in UTC: same wall-clock times.
  const fromRfc = decided.filter(
    ({ dtstart, rrule }) => /^1997\d{4}T090000$/.test(dtstart) && !/FREQ=(HOURLY|MINUTELY)/.test(rrule),
  );
  it.each(fromRfc)("$rrule from $dtstart in America/New_York", ({ rrule, dtstart, instances }) => {
    expect(shown(rrule, dtstart, "America/New_York")).toEqual(instances.map(spaced));
  });

  it("takes the RFC's Friday the 13th with its EXDATE of the start", () => {
    const rrule = "FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13;COUNT=2";
    const start = "1997-09-02T09:00:00";
    const times = wallTimes({ start, rrule, rdates: [start], exdates: [start] }, "America/New_York", HORIZON);
    expect(times.map(String)).toEqual(["1998-02-13T09:00:00", "1998-03-13T09:00:00"]);
  });
});

const NEW_YORK = "America/New_York";

describe("what RFC 5545 says of UNTIL and of the clock's changes", () => {
  /** §3.3.10: UNTIL is given in UTC and is itself included; 9 o'clock of September in New York is 13:00Z. */
  it.each([
    ["19970904T130000Z", 3],
    ["19970904T125959Z", 2],
  ])("a daily 9 o'clock from 2 September until %s comes %d times", (until, times) => {
    expect(shown(`FREQ=DAILY;UNTIL=${until}`, "19970902T090000", NEW_YORK)).toHaveLength(times);
  });

  /** §3.3.5, both examples: a time that comes twice is the first, a time skipped has the offset from before the gap. */
  it.each([
    ["2007-11-04T01:30:00", "2007-11-04T05:30:00.000Z"],
    ["2007-03-11T02:30:00", "2007-03-11T07:30:00.000Z"],
  ])("%s in New York is %s", (opens, instant) => {
    const rule = { opens, closes: "12:00", rrule: null, rdates: [], exdates: [] };
    const [laidOut] = layOutRule(rule, NEW_YORK, { start: Date.UTC(2007, 0, 1), end: Date.UTC(2008, 0, 1) });
    expect(new Date(laidOut?.start ?? 0).toISOString()).toBe(instant);
  });
});

describe("recurrences the standard leaves undecided", () => {
  it("are six of the table", () => expect(cases.filter(isUndecided).length).toBe(UNDECIDED.size));

  it.each(cases.filter(isUndecided))("$rrule is refused for hours", ({ rrule }) => {
    expect(HoursRecurrence.safeParse(rrule).success).toBe(false);
  });
});
