import { IN_WORDS } from "@evenhand/shared/sheet";
import type { CodeSystem } from "@evenhand/shared/sheet";
import { bareNumber, normalizeVin } from "../identifier-text/index.ts";
import { isYearOf, sameDate } from "../written-date/index.ts";
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
  const joined = head.replaceAll(/\s+/g, "").replaceAll("X", "-").replaceAll("--", "-");
  // A dash for the stroke, as in 205-70-14.
  const close = joined[3] === "-" && joined[6] === "-" ? `${joined.slice(0, 3)}/${joined.slice(4)}` : joined;
  const [, section, aspect, letters = "-", rim] = TIRE.exec(close) ?? [];
  if (section === undefined || rim === undefined) return close;
  const radial = letters.endsWith("R") || /^[A-N]R/.test(section);
  const build = radial ? "R" : letters.endsWith("B") ? "B" : letters.endsWith("D") ? "D" : "-";
  return `${section}${aspect === undefined ? "" : `/${aspect}`}${build}${rim}`;
};

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

/** Whether every letter and figure of the one stands somewhere in the other. */
const standIn = (short: string, long: string): boolean => {
  for (let at = 0; at < short.length; at += 1) {
    const character = short.charAt(at);
    if (character !== " " && !long.includes(character)) return false;
  }
  return true;
};

/** Most codes that are not one share not even their letters, which is seen without looking for words. A description may count in words. */
const mayShareWords = (system: CodeSystem, a: string, b: string): boolean =>
  system === "description" || standIn(a, b) || standIn(b, a);

/** A code as it was written, and as it is compared. */
export type NormalizedCode = { readonly text: string; readonly normalized: string };

/** `isSameCode` of codes that are normalized already. */
export const isSameAsNormalized = (system: CodeSystem, a: NormalizedCode, b: NormalizedCode): boolean =>
  a.normalized === b.normalized ||
  isPartOf(system, a.normalized, b.normalized) ||
  (IN_WORDS.has(system) &&
    mayShareWords(system, a.normalized, b.normalized) &&
    areSameWords(a.text, b.text)) ||
  (isDated(system) && sameDate(a.text, b.text));

const withoutBuild = (size: string): string => size.replace(/(?<=^\d{3}\/\d{2})[-RBD](?=\d)/, "-");

/** Many write a metric size without the letter of its construction, which stands on the sheet by itself. */
const isSizeWithoutBuild = (one: string, other: string): boolean => {
  const [bare, otherBare] = [withoutBuild(one), withoutBuild(other)];
  return one !== other && bare === otherBare && (one === bare || other === bare);
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
 * @example saysLessThan("date-code", { text: "2019", normalized: "2019" }, { text: "06/2019", normalized: "062019" }) // true
 */
export const saysLessThan = (system: CodeSystem, a: NormalizedCode, b: NormalizedCode): boolean => {
  if (isDated(system) && (isYearOf(a.text, b.text) || isYearOf(b.text, a.text))) return true;
  if (system === "vin" || system === "chassis-number") return isEndOf(a.normalized, b.normalized);
  if (system === "tire-size") return isSizeWithoutBuild(a.normalized, b.normalized);
  if (system !== "paint-code" && !IN_WORDS.has(system)) return false;
  return mayShareWords(system, a.normalized, b.normalized) && saysLess(a.text, b.text);
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
