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

const figuresIn = (text: string): number => {
  let figures = 0;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) figures += 1;
  }
  return figures;
};

/** A year as people write it where they say no more, other words aside: `2019`, `'19`, `new in 2019`. */
const yearAlone = (text: string): number | undefined => {
  const figures = figuresIn(text);
  if (figures !== 2 && figures !== 4) return undefined;
  const [only, ...more] = text.match(/\d+/g) ?? [];
  if (only === undefined || more.length > 0 || datesIn(text).length > 0) return undefined;
  if (/^(?:19|20)\d{2}$/.test(only)) return Number(only) % 100;
  return /^'?\d{2}$/.test(text.trim()) ? Number(only) : undefined;
};

/**
 * A year alone, and a date in it or the same year in other words.
 *
 * @example isYearOf("new in 2019", "06/2019") // true
 */
export const isYearOf = (year: string, other: string): boolean => {
  const alone = yearAlone(year);
  if (alone === undefined) return false;
  return yearAlone(other) === alone || datesIn(other).some((each) => each.year % 100 === alone);
};
