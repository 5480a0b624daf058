import { dayOf, monthRange, narrow, weekRange, yearOf, yearRange } from "../day/index.ts";
import type { DateSet, DayRange } from "../day/index.ts";

/**
 * How a maker wrote dates, as the firm enters it. Letters stand for parts of the date, anything else for
 * itself; spaces and hyphens are passed over.
 *
 * - `M` month by letter, A to L; `N` the same with I left out (A to M)
 * - `m` month by number; `d` day by number, one or two digits each, two where a digit follows
 * - `w` week by number, two digits
 * - `y` last digit of the year; `yy` last two; `yyyy` all
 *
 * A form without a year needs the month or the week: its codes are taken as of the car's model year.
 */
export type DateForm = string;

type Parts = { year?: string; month?: number; day?: number; week?: number };

type Token = { readonly source: string; readonly read: (text: string, parts: Parts) => void };

const WITH_I = "ABCDEFGHIJKL";
const WITHOUT_I = "ABCDEFGHJKLM";

const tokens: Readonly<Record<string, Token>> = {
  yyyy: { source: String.raw`(\d{4})`, read: (text, parts) => void (parts.year = text) },
  yy: { source: String.raw`(\d{2})`, read: (text, parts) => void (parts.year = text) },
  y: { source: String.raw`(\d)`, read: (text, parts) => void (parts.year = text) },
  M: { source: "([A-L])", read: (text, parts) => void (parts.month = WITH_I.indexOf(text) + 1) },
  N: { source: "([A-HJ-M])", read: (text, parts) => void (parts.month = WITHOUT_I.indexOf(text) + 1) },
  m: { source: String.raw`(\d{1,2})`, read: (text, parts) => void (parts.month = Number(text)) },
  d: { source: String.raw`(\d{1,2})`, read: (text, parts) => void (parts.day = Number(text)) },
  w: { source: String.raw`(\d{2})`, read: (text, parts) => void (parts.week = Number(text)) },
};

const FORM = /yyyy|yy|y|M|N|m|d|w|./g;
const PASSED_OVER = /[\s-]/g;

const literal = (piece: string): string => `\\u{${piece.toUpperCase().codePointAt(0)?.toString(16)}}`;

const findParts = (code: string, form: DateForm): Parts | undefined => {
  const pieces = form.replaceAll(PASSED_OVER, "").match(FORM) ?? [];
  const read = pieces.flatMap((piece) => tokens[piece] ?? []);
  // A part named twice makes no sense, and would let the matching below take exponential time.
  if (new Set(read).size < read.length) return undefined;
  const source = pieces.map((piece) => tokens[piece]?.source ?? literal(piece));
  const match = new RegExp(`^${source.join("")}$`, "u").exec(code.replaceAll(PASSED_OVER, "").toUpperCase());
  if (match === null) return undefined;
  const parts: Parts = {};
  for (const [index, token] of read.entries()) token.read(match[index + 1] ?? "", parts);
  return parts;
};

/** Every year a written year can mean between two years. */
const yearsOf = (written: string, from: number, to: number): number[] => {
  const step = 10 ** written.length;
  const first = from + ((((Number(written) - from) % step) + step) % step);
  return Array.from(
    { length: Math.max(0, Math.floor((to - first) / step) + 1) },
    (_, index) => first + index * step,
  );
};

const findRange = (year: number, { month, day, week }: Parts): DayRange | undefined => {
  if (week !== undefined) return week >= 1 && week <= 53 ? weekRange(year, week) : undefined;
  if (month === undefined) return yearRange(year);
  if (month < 1 || month > 12) return undefined;
  const whole = monthRange(year, month);
  if (day === undefined) return whole;
  const first = dayOf(year, month, day);
  return first >= whole.first && first <= whole.last ? { first, last: first } : undefined;
};

/** Whether codes of this form hold no year, but a month or a week to be placed in the model year. */
export const isYearless = (form: DateForm): boolean => {
  const pieces = form.replaceAll(PASSED_OVER, "").match(FORM) ?? [];
  return !pieces.some((piece) => piece.startsWith("y")) && pieces.some((piece) => "MNmw".includes(piece));
};

/**
 * The days a code without a year can mean in a model year, which runs from September to August (common practice, no source). Its
 * first cars had parts of the two months before, so that July and August stand for either summer.
 */
const modelYearDays = (modelYear: number): DayRange => ({
  first: dayOf(modelYear - 1, 7, 1),
  last: dayOf(modelYear, 8, 31),
});

/**
 * Every stretch of days a date code can mean. Nothing is guessed: a one-digit year gives one range a decade.
 *
 * @param form how the maker wrote dates
 * @param within the days it can lie in at all (the make's years; not after the day it was read)
 * @param modelYear of the car; a code without a year is read within it, and without it not at all
 * @returns an empty set where the code does not fit the form or no year fits
 * @example
 * dateCandidates("A 15 7", "M d y", { first: dayOf(1955, 1, 1), last: dayOf(1979, 12, 31) })
 * // 1957-01-15, 1967-01-15, 1977-01-15
 */
export const dateCandidates = (
  code: string,
  form: DateForm,
  within: DayRange,
  modelYear?: number,
): DateSet => {
  const parts = findParts(code, form);
  if (parts === undefined) return [];
  if (parts.year === undefined) {
    if (modelYear === undefined || !isYearless(form)) return [];
    const either = [modelYear - 1, modelYear].flatMap((year) => findRange(year, parts) ?? []);
    return narrow(narrow(either, modelYearDays(modelYear)), within);
  }
  const firstYear = yearOf(within.first);
  const lastYear = yearOf(within.last);
  // A numbered week may run into the next year, so the year before is asked too.
  const ranges = yearsOf(parts.year, firstYear - 1, lastYear).flatMap((year) => findRange(year, parts) ?? []);
  return narrow(ranges, within);
};
