import { rrulestr } from "rrule";
import { describe, expect, it } from "vitest";
import { checkRule, wallTimes } from "@evenhand/booking/recurrence";
import { seededRandom } from "@evenhand/measurement/random";

/*
 * Random recurrences against rrule 2.8.1, a translation of python-dateutil's. It reckons in plain UTC dates and knows no
 * offsets; what lays out our recurrences is another library, on a Temporal library, in a zone with two changes a year.
 */
const random = seededRandom(5545);
const pick = <T>(list: readonly [T, ...T[]]): T => list[Math.floor(random() * list.length)] ?? list[0];
const several = <T>(list: readonly [T, ...T[]], most: number): string =>
  [...new Set(Array.from({ length: 1 + Math.floor(random() * most) }, () => pick(list)))].join(",");

const DAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"] as const;
const NTH = [1, 2, 3, 4, -1, -2] as const;
const numbered = (): string => `${pick(NTH)}${pick(DAYS)},${pick(NTH)}${pick(DAYS)}`;
const plain = (): string => several(DAYS, 3);
const month = (): string => several([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], 4);
const monthDay = (): string => several([1, 5, 13, 15, 28, 29, 30, 31, -1, -2, -7], 4);

/** Every kind of part that hours may have, in the ways that may stand together. */
const KINDS: readonly [() => string, ...(() => string)[]] = [
  () => `FREQ=DAILY;INTERVAL=${pick([1, 2, 3, 5])}`,
  () => `FREQ=DAILY;BYMONTH=${month()};BYDAY=${plain()}`,
  () => `FREQ=DAILY;BYMONTHDAY=${monthDay()}`,
  () => `FREQ=WEEKLY;INTERVAL=${pick([1, 2, 3])};WKST=${pick(DAYS)}`,
  () => `FREQ=WEEKLY;INTERVAL=${pick([1, 2, 3])};WKST=${pick(DAYS)};BYDAY=${plain()}`,
  () => `FREQ=WEEKLY;BYMONTH=${month()};BYDAY=${plain()}`,
  () => `FREQ=MONTHLY;INTERVAL=${pick([1, 2, 5])}`,
  () => `FREQ=MONTHLY;INTERVAL=${pick([1, 2, 5])};BYDAY=${numbered()}`,
  () => `FREQ=MONTHLY;BYDAY=${plain()};BYSETPOS=${pick([1, 2, -1])}`,
  () => `FREQ=MONTHLY;BYMONTHDAY=${monthDay()}`,
  () => `FREQ=MONTHLY;BYDAY=${plain()};BYMONTHDAY=8,9,13,20`,
  () => `FREQ=MONTHLY;BYMONTH=${month()};BYDAY=${plain()}`,
  () => `FREQ=YEARLY;INTERVAL=${pick([1, 2])}`,
  () => `FREQ=YEARLY;BYMONTH=${month()}`,
  () => `FREQ=YEARLY;BYMONTH=${month()};BYDAY=${numbered()}`,
  () => `FREQ=YEARLY;BYMONTH=${month()};BYMONTHDAY=1,15,28`,
  () => `FREQ=YEARLY;BYDAY=${pick([1, 20, 52, -1, -10, -52])}${pick(DAYS)}`,
  () => `FREQ=YEARLY;BYYEARDAY=${several([1, 60, 100, 200, 365, -1, -100], 4)}`,
];
const ends = (): string => pick(["", "", ";COUNT=7", ";UNTIL=20281015T230000Z"]);

const rules = Array.from({ length: 360 }, () => ({
  rule: `${pick(KINDS)()}${ends()}`,
  start: `202${pick([5, 6, 7])}-0${pick([1, 2, 5, 7, 9])}-${pick(["01", "09", "17", "28"])}T09:00:00`,
}));
const HORIZON = { start: Date.UTC(2024, 0, 1), end: Date.UTC(2031, 0, 1) };

describe("random recurrences", () => {
  it.each(rules)("$rule from $start", ({ rule, start }) => {
    expect(checkRule({ opens: start, closes: "17:00", rrule: rule, rdates: [], exdates: [] })).toBeNull();
    const other = rrulestr(`DTSTART:${start.replaceAll(/[-:]/g, "")}Z\nRRULE:${rule}`);
    const expected = other
      .between(new Date(HORIZON.start), new Date(HORIZON.end), true)
      .map((time) => time.toISOString().slice(0, 19));
    const recurrence = { start, rrule: rule, rdates: [], exdates: [] };
    const found = wallTimes(recurrence, "America/New_York", HORIZON);
    expect(found.map((wall) => wall.toString({ smallestUnit: "second" }))).toEqual(expected);
  });
});
