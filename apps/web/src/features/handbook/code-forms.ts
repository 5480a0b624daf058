/** Braces around one place or a stretch of places. */
const PLACES = /\{(\d{1,2})(?:-(\d{1,2}))?\}/g;

/**
 * Whether the form of a chassis number can be read by the rule: every list in brackets closed and not empty, and nothing in it the
 * rule passes over. A hyphen is: `[A-F]` would be read as A or F.
 *
 * @example chassisPatternWrong("T[MN]###[RW]#####") // undefined
 */
export const chassisPatternWrong = (pattern: string): "brackets" | "bracket-range" | undefined => {
  const lists = pattern.match(/\[[^\][]*\]/g) ?? [];
  if (/[[\]]/.test(pattern.replaceAll(/\[[^\][]+\]/g, ""))) return "brackets";
  return lists.some((list) => /[\s\-.*]/.test(list)) ? "bracket-range" : undefined;
};

/**
 * Whether a stamp can follow from a chassis number: braces closed, around places counted from 1, the first before the last.
 *
 * @example stampWrong("{6}{4-5}{7-11}") // undefined
 */
export const stampWrong = (derivation: string): "braces" | undefined => {
  const text = derivation.replaceAll(/\s/g, "");
  if (/[{}]/.test(text.replaceAll(PLACES, ""))) return "braces";
  const turned = [...text.matchAll(PLACES)].some(
    ([, first, last]) => Number(first) < 1 || Number(last ?? first) < Number(first),
  );
  return turned ? "braces" : undefined;
};

/**
 * Whether dates can be read by a form: it holds the year, or a month or week to be read in the model year; and no part of the date
 * twice.
 *
 * @example dateFormWrong("d") // "no-year"
 */
export const dateFormWrong = (form: string): "no-year" | "part-of-date-twice" | undefined => {
  const letters = form.replaceAll(/[\s-]/g, "").match(/yyyy|yy|y|M|N|m|d|w/g) ?? [];
  const parts = letters.map((letter) => (letter.startsWith("y") ? "year" : letter.replace(/[MN]/, "m")));
  if (!parts.some((part) => part === "year" || part === "m" || part === "w")) return "no-year";
  return new Set(parts).size < parts.length ? "part-of-date-twice" : undefined;
};
