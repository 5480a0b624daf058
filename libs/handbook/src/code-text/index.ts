import type { CodeSystem } from "@evenhand/shared/sheet";
import { bareNumber, normalizeVin } from "../identifier-text/index.ts";
import { areSameWords, saysLess } from "../written-words/index.ts";

/** Section, aspect, construction, rim; prefix, load index and speed rating aside. */
const TIRE =
  /^(?:P|LT|T)?(\d{2,3}(?:\.\d{1,2})?|[A-N]R?\d{2})(?:\/(\d{2}))?([A-Z]{0,2}|-)?-?(\d{2}(?:\.5)?)(?:\d{2,3}[A-Z]{1,2})?$/;

/**
 * A tire's size by what it means: `P205/75 R15 97S` and `205/75R15` are one, `6.00 x 16` is `6.00-16`.
 *
 * @example tireSizeText("P205/75 R15 97S") // "205/75R15"
 */
export const tireSizeText = (text: string): string => {
  const plain = text
    .toUpperCase()
    .replaceAll(/\(.*?\)/g, "")
    .replaceAll("×", "X")
    .trim();
  // Load index and speed rating stand behind a space where they are given.
  const [head = plain] = plain.split(/\s+(?=\d{2,3}[A-Z]{1,2}$)/);
  const close = head
    .replaceAll(/\s+/g, "")
    .replaceAll("X", "-")
    .replaceAll("--", "-")
    .replace(/^(\d{3})-(\d{2})-(?=\d{2}$)/, "$1/$2-");
  const [, section, aspect, letters = "-", rim] = TIRE.exec(close) ?? [];
  if (section === undefined || rim === undefined) return close;
  const radial = letters.endsWith("R") || /^[A-N]R/.test(section);
  const build = radial ? "R" : letters.endsWith("B") ? "B" : letters.endsWith("D") ? "D" : "-";
  return `${section}${aspect === undefined ? "" : `/${aspect}`}${build}${rim}`;
};

const MONTHS = ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"];

/** A date as far as it is written: year and month, and the day where it is given. */
type Dated = { readonly year: number; readonly month: number; readonly day: number | undefined };

const fullYear = (text: string): number => (text.length === 4 ? Number(text) : 1900 + Number(text));

const isYear = (text: string): boolean => /^(\d{4}|'?\d{2})$/.test(text);

const withNamedMonth = (parts: readonly string[]): Dated[] => {
  const at = parts.findIndex((part) => MONTHS.includes(part.slice(0, 3)) && /^[A-Z]+$/.test(part));
  if (at < 0) return [];
  const rest = parts.filter((_, index) => index !== at);
  const year = rest.at(-1);
  if (year === undefined || !isYear(year) || rest.length > 2) return [];
  const day = rest.length === 2 ? Number(rest[0]) : undefined;
  if (day !== undefined && !(day >= 1 && day <= 31)) return [];
  const month = MONTHS.indexOf((parts[at] ?? "").slice(0, 3)) + 1;
  return [{ year: fullYear(year.replace("'", "")), month, day }];
};

const isMonth = (value: number): boolean => value >= 1 && value <= 12;
const isDay = (value: number): boolean => value >= 1 && value <= 31;

const inFigures = (parts: readonly string[]): Dated[] => {
  const numbers = parts.map(Number);
  const [first = 0, second = 0, third = 0] = numbers;
  if (parts.length === 2) {
    const [start = "", year = ""] = parts;
    if (/^\d{4}$/.test(start)) return isMonth(second) ? [{ year: first, month: second, day: undefined }] : [];
    return isMonth(first) && isYear(year) ? [{ year: fullYear(year), month: first, day: undefined }] : [];
  }
  if (parts.length !== 3) return [];
  if ((parts[0] ?? "").length === 4) {
    return isMonth(second) && isDay(third) ? [{ year: first, month: second, day: third }] : [];
  }
  const year = parts[2] ?? "";
  if (!isYear(year)) return [];
  // Month first or day first: both are kept where both can be.
  return [
    ...(isMonth(first) && isDay(second) ? [{ year: fullYear(year), month: first, day: second }] : []),
    ...(isMonth(second) && isDay(first) ? [{ year: fullYear(year), month: second, day: first }] : []),
  ];
};

/**
 * The days a text can mean, however it is written; none where it is no date.
 *
 * @example datesIn("Mar 14 1989") // [{ year: 1989, month: 3, day: 14 }]
 */
export const datesIn = (text: string): readonly Dated[] => {
  const parts = text
    .toUpperCase()
    .split(/[\s,./-]+/)
    .filter(Boolean);
  if (parts.some((part) => /[A-Z]/.test(part))) return withNamedMonth(parts);
  return /[\s./-]/.test(text.trim()) ? inFigures(parts) : [];
};

/** Whether two texts can mean one day, or one month where one of them gives no day. */
export const sameDate = (a: string, b: string): boolean => {
  const own = datesIn(a);
  if (own.length === 0) return false;
  const others = datesIn(b);
  return own.some(({ year, month, day }) =>
    others.some(
      (other) =>
        other.year % 100 === year % 100 &&
        other.month === month &&
        (day === undefined || other.day === undefined || day === other.day),
    ),
  );
};

/** Written by people for people: words in any order, with whatever marks. */
const IN_WORDS: ReadonlySet<CodeSystem> = new Set(["text", "description", "own-words"]);

const bySystem = (system: CodeSystem, text: string): string => {
  if (IN_WORDS.has(system)) return text.replaceAll(/\s+/g, " ");
  if (system === "tire-size") return tireSizeText(text);
  if (system === "tire-identification") return bareNumber(text).replace(/^DOT/, "");
  if (system === "vin" || system === "chassis-number") return normalizeVin(bareNumber(text));
  return bareNumber(text);
};

/**
 * A code as it is compared in its system: capitals without spaces and marks; a tire's size by what it means; in a VIN the letters
 * it never holds read as digits; free text only loses case and doubled spaces, since its marks can carry meaning. Text of nothing
 * but marks stays as it is.
 *
 * @example normalizeCode("tire-size", "P205/75 R15") // "205/75R15"
 */
export const normalizeCode = (system: CodeSystem, text: string): string =>
  (bySystem(system, text) || text).trim().toUpperCase();

const isDated = (system: CodeSystem): boolean => system === "date-code" || system === "text";

/** Systems in which one text may give only part of a number: a tire's date alone, a casting number without its suffix. */
const PARTIAL: ReadonlySet<CodeSystem> = new Set(["tire-identification", "casting-number"]);
const SHORTEST_PART = 4;

const isPartOf = (system: CodeSystem, a: string, b: string): boolean => {
  if (!PARTIAL.has(system)) return false;
  const [long, short] = a.length >= b.length ? [a, b] : [b, a];
  if (short.length < SHORTEST_PART)
    return system === "tire-identification" && /^\d{3}$/.test(short) && long.endsWith(short);
  return system === "tire-identification" ? long.endsWith(short) : long.includes(short);
};

/** A code as it was written, and as it is compared. */
export type NormalizedCode = { readonly text: string; readonly normalized: string };

/** `isSameCode` of codes that are normalized already. */
export const isSameAsNormalized = (system: CodeSystem, a: NormalizedCode, b: NormalizedCode): boolean =>
  a.normalized === b.normalized ||
  isPartOf(system, a.normalized, b.normalized) ||
  (IN_WORDS.has(system) && areSameWords(a.text, b.text)) ||
  (isDated(system) && sameDate(a.text, b.text));

/** A year as people write it where they say no more, other words aside: `2019`, `'19`, `new in 2019`. */
const yearAlone = (text: string): number | undefined => {
  const [only, ...more] = text.match(/\d+/g) ?? [];
  if (only === undefined || more.length > 0 || datesIn(text).length > 0) return undefined;
  if (/^(?:19|20)\d{2}$/.test(only)) return Number(only) % 100;
  return /^'?\d{2}$/.test(text.trim()) ? Number(only) : undefined;
};

/** A year alone, and a date in it or the same year in other words. */
const isYearOf = (year: string, other: string): boolean => {
  const alone = yearAlone(year);
  if (alone === undefined) return false;
  return yearAlone(other) === alone || datesIn(other).some((each) => each.year % 100 === alone);
};

/** Many write a metric size without the letter of its construction, which stands on the sheet by itself. */
const isSizeWithoutBuild = (a: string, b: string): boolean => {
  const [one, other] = [tireSizeText(a), tireSizeText(b)];
  const without = (text: string): string => text.replace(/(?<=^\d{3}\/\d{2})[-RBD](?=\d)/, "-");
  return one !== other && [one, other].includes(without(one)) && without(one) === without(other);
};

/** The last characters of a number stand for it where at least so many are written. */
const SHORTEST_END = 5;

const isEndOf = (a: string, b: string): boolean => {
  const [long, short] = a.length >= b.length ? [a, b] : [b, a];
  return short.length >= SHORTEST_END && long.endsWith(short);
};

/**
 * Whether one of two texts that are not one code says only part of what the other says, and nothing against it: a year of a date, the end of
 * a chassis number, a color without its shade, a code without what follows it.
 *
 * @example saysLessThan("date-code", "2019", "06/2019") // true
 * @example saysLessThan("chassis-number", "330914", "72-330914") // true
 * @example saysLessThan("paint-code", "green", "dark green") // true
 */
export const saysLessThan = (system: CodeSystem, a: string, b: string): boolean => {
  if (isDated(system) && (isYearOf(a, b) || isYearOf(b, a))) return true;
  if (system === "vin" || system === "chassis-number")
    return isEndOf(normalizeCode(system, a), normalizeCode(system, b));
  if (system === "tire-size") return isSizeWithoutBuild(a, b);
  return (system === "paint-code" || IN_WORDS.has(system)) && saysLess(a, b);
};

/** Systems in which every code holds a figure. */
const WITH_FIGURES: ReadonlySet<CodeSystem> = new Set([
  "vin",
  "chassis-number",
  "tire-identification",
  "tire-size",
  "casting-number",
  "date-code",
]);

/**
 * Whether words stand where a number or a date is asked for: `new`, `matches`, `not readable`.
 *
 * @example isInWords("date-code", "new hoses") // true
 */
export const isInWords = (system: CodeSystem, text: string): boolean =>
  WITH_FIGURES.has(system) && !/\d/.test(text);

/**
 * Whether two texts are one code in its system, however each is written: a date in another order, a tire's size with its load index, a
 * tire's number by its date alone, a part number without its suffix.
 *
 * @example isSameCode("tire-size", "P205/75 R15 97S", "205/75R15") // true
 * @example isSameCode("date-code", "1958-03-14", "14 Mar 1958") // true
 */
export const isSameCode = (system: CodeSystem, textA: string, textB: string): boolean =>
  isSameAsNormalized(
    system,
    { text: textA, normalized: normalizeCode(system, textA) },
    { text: textB, normalized: normalizeCode(system, textB) },
  );
