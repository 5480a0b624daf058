import type { SaidNumber } from "../answer-of/index.ts";

const STOOD =
  /\b(?:sat|sit|sitting|stood|standing|stored|storage|laid up|off the road|parked up|parked|garaged|in the barn|not been driven|not been on the road|has not moved|not moved|not run|has not run)\b/u;
const IN_USE_UP_TO = 0.25;
const A_SEASON_UP_TO = 1;
const LONG = 5;

/**
 * How long a car stood, where somebody says so with a number: "off the road since 2009", "sat in a garage for two years". Nothing where
 * no number of years, months, or year is said beside it.
 *
 * @param text stems of the piece of talk
 */
export const stoodFor = (text: string, numbers: readonly SaidNumber[], year: number): string | undefined => {
  if (
    !STOOD.test(text) ||
    /\b(?:last|every) (?:owner|winter)\b|\b(?:sat|sit) (?:there|in it|on it|in)\b/u.test(text)
  )
    return undefined;
  const isSince = /\b(?:since|from)\b/u.test(text);
  const since = numbers.find(({ value, unit }) => unit === undefined && value >= 1950 && value <= year);
  const long = numbers.find(({ unit }) => unit === "years")?.value;
  const months = numbers.find(({ to, unit }) => unit === undefined && to > 0)?.value;
  const years =
    since !== undefined && isSince
      ? year - since.value
      : (long ?? (/\bmonth\b/u.test(text) && months !== undefined ? months / 12 : undefined));
  if (years === undefined) return undefined;
  if (years >= LONG) return "five-years-or-more";
  if (years >= A_SEASON_UP_TO) return "a-year-or-more";
  return years > IN_USE_UP_TO ? "a-season" : undefined;
};
