import { listed } from "@evenhand/message/listed";
import { resultMessages } from "../result-words/index.ts";
/** Days a date can mean: whole days since 1970-01-01, both ends included. */
export type DayRange = { readonly first: number; readonly last: number };

/** Everything a date can mean; several ranges where a code leaves out the decade. An empty set means nothing is left. */
export type DateSet = readonly DayRange[];

const DAY_MS = 86_400_000;

/** Mean length of a year in the Gregorian calendar. */
export const DAYS_A_YEAR = 365.2425;

/**
 * Day number of a date in the Gregorian calendar, from year 100 on; months and days run over as in `Date.UTC`.
 *
 * @example dayOf(1970, 1, 2) // 1
 */
export const dayOf = (year: number, month: number, day: number): number =>
  Date.UTC(year, month - 1, day) / DAY_MS;

const twoDigits = (value: number): string => (value < 10 ? `0${value}` : `${value}`);

/**
 * Day number as an ISO date.
 *
 * @example isoOf(0) // "1970-01-01"
 */
export const isoOf = (day: number): string => {
  const date = new Date(day * DAY_MS);
  const year = date.getUTCFullYear();
  // By parts, which takes a third of the time; years of other lengths are written as the calendar has them.
  if (!(year >= 1000 && year <= 9999)) return date.toISOString().slice(0, 10);
  return `${year}-${twoDigits(date.getUTCMonth() + 1)}-${twoDigits(date.getUTCDate())}`;
};

/**
 * Year a day falls in.
 *
 * @example yearOf(0) // 1970
 */
export const yearOf = (day: number): number => new Date(day * DAY_MS).getUTCFullYear();

const ISO = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/;

/**
 * The days of an ISO year, month or day; `undefined` where the text is none.
 *
 * @example findIsoRange("1969-02") // { first: -334, last: -307 }
 */
export const findIsoRange = (text: string): DayRange | undefined => {
  const match = ISO.exec(text.trim());
  if (match === null) return undefined;
  const [year, month, day] = [Number(match[1]), Number(match[2] ?? 0), Number(match[3] ?? 0)];
  if (month === 0) return match[2] === undefined ? yearRange(year) : undefined;
  if (month > 12) return undefined;
  const whole = monthRange(year, month);
  if (match[3] === undefined) return whole;
  const first = dayOf(year, month, day);
  return first >= whole.first && first <= whole.last ? { first, last: first } : undefined;
};

/** All days of a year. */
export const yearRange = (year: number): DayRange => ({
  first: dayOf(year, 1, 1),
  last: dayOf(year, 12, 31),
});

/** All days of a month, counted from 1. */
export const monthRange = (year: number, month: number): DayRange => ({
  first: dayOf(year, month, 1),
  last: dayOf(year, month + 1, 1) - 1,
});

/**
 * Sunday to Saturday of a numbered week, week 1 being the first full week of the year (49 CFR 574.5).
 *
 * @example dateText([weekRange(2009, 1)]) // "2009-01-04 to 2009-01-10"
 */
export const weekRange = (year: number, week: number): DayRange => {
  const newYear = dayOf(year, 1, 1);
  const weekday = new Date(newYear * DAY_MS).getUTCDay();
  const first = newYear + ((7 - weekday) % 7) + 7 * (week - 1);
  return { first, last: first + 6 };
};

/**
 * What is left of a set when another fact says the day lies within a range.
 *
 * @example narrow([{ first: 0, last: 9 }, { first: 20, last: 29 }], { first: 5, last: 12 }) // [{ first: 5, last: 9 }]
 */
export const narrow = (dates: DateSet, within: DayRange): DateSet => {
  const left: DayRange[] = [];
  for (const range of dates) {
    const [first, last] = [Math.max(range.first, within.first), Math.min(range.last, within.last)];
    if (first <= last) left.push({ first, last });
  }
  return left;
};

/**
 * A range in words: one day, or first to last.
 *
 * @example rangeText({ first: 0, last: 6 }) // "1970-01-01 to 1970-01-07"
 */
export const rangeText = (range: DayRange): string =>
  range.first === range.last
    ? isoOf(range.first)
    : resultMessages.say("between", { first: isoOf(range.first), last: isoOf(range.last) });

/** A set in words. */
export const dateText = (dates: DateSet): string => listed(dates.map(rangeText), "comma-or");

/** The same where the code held no year, which is said beside it. */
export const takenText = (dates: DateSet, yearless = false): string =>
  yearless ? resultMessages.say("no-year", { dates: dateText(dates) }) : dateText(dates);
