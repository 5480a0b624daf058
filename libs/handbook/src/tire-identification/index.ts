import { dayOf, narrow, weekRange } from "../day/index.ts";
import type { DateSet } from "../day/index.ts";

/** What the end of a tire identification number can mean as a date. */
export type TireDate = {
  /** Whether the date has no decade of its own. */
  readonly decadeless: boolean;
  readonly dates: DateSet;
};

/** Week and year: 01 to 53, in two digits each (from 1999), or the year in one (before 2000). */
const WEEK_AND_YEAR = /^(\d\d)(\d{1,2})$/;
const DECADES = [1970, 1980, 1990, 2000];
/** Numbers are on tires since 22 May 1971 (49 CFR 574, from memory); the last three-digit dates are of July 2000. */
const THREE_DIGITS = { first: dayOf(1971, 5, 22), last: dayOf(2000, 7, 8) };
/** Four digits were permitted some months before they were required (64 FR 36807), so 99 is 1999. */
const FOUR_DIGITS_FROM = 1999;

const weeksOf = (week: number, years: readonly number[]): DateSet =>
  week >= 1 && week <= 53 ? years.map((year) => weekRange(year, week)) : [];

const datesOfGroup = (group: string): DateSet => {
  const [, week, year] = WEEK_AND_YEAR.exec(group) ?? [];
  if (week === undefined || year === undefined) return [];
  if (year.length === 2) {
    const full = 2000 + Number(year);
    return weeksOf(Number(week), [full === FOUR_DIGITS_FROM + 100 ? FOUR_DIGITS_FROM : full]);
  }
  const years = DECADES.map((decade) => decade + Number(year));
  return weeksOf(Number(week), years).filter(
    ({ first, last }) => first >= THREE_DIGITS.first && last <= THREE_DIGITS.last,
  );
};

/** The groups of digits at the end that can be the date: the last one written apart, else by the number's length. */
const dateGroups = (text: string): string[] => {
  const groups = text
    .replace(/^\s*DOT/i, "")
    .trimEnd()
    .split(/[\s-]+/);
  const last = groups.at(-1) ?? "";
  if (/^\d{3,4}$/.test(last)) return [last];
  const number = groups.join("");
  const four = /\d{4}$/.exec(number)?.[0];
  const three = /\d{3}$/.exec(number)?.[0];
  // Twelve symbols and more only came with the four-digit date.
  if (four !== undefined && number.length >= 12) return [four];
  return [four, three].flatMap((group) => group ?? []);
};

/**
 * The days a tire's identification number says it was made in: week and year, a week running from Sunday to
 * Saturday and week 1 being the first full one. Three digits never fix the decade: every one up to 2000 stays.
 * Where a number written in one piece could end in three or in four digits, both are kept.
 *
 * Source: 49 CFR 574.5; 64 FR 36807; 80 FR 19553.
 *
 * @param text the number, or its date alone
 * @param notAfter the day it was read; later weeks are left out
 * @returns no dates where it ends in none
 * @example tireDate("DOT 0VNE HKTA 5107", dayOf(2026, 1, 1)).dates // 2007-12-23 to 2007-12-29
 */
export const tireDate = (text: string, notAfter: number): TireDate => {
  const groups = dateGroups(text);
  const dates = groups.flatMap(datesOfGroup);
  return {
    decadeless: groups.some((group) => group.length === 3),
    dates: narrow(dates, { first: Number.NEGATIVE_INFINITY, last: notAfter }),
  };
};

/**
 * Whether the text ends in something that is a week and a year at all, whatever the day.
 *
 * @example endsInDate("5401") // false
 */
export const endsInDate = (text: string): boolean =>
  dateGroups(text).some((group) => datesOfGroup(group).length > 0);
