import { numbersIn } from "@evenhand/lexicon/number-words";
import { tokenize } from "@evenhand/lexicon/tokenize";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { findUnit } from "../unit-words/index.ts";

/** Numbers in a cell and the unit behind them. `of32` says that they were written as so many thirty-seconds. */
export type Numbers = {
  readonly values: readonly number[];
  readonly unit?: UnitSymbol;
  readonly of32?: true;
};

const VULGAR: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

const LENGTHS = "(?:inch(?:es)?|mm|millimet(?:er|re)s?|cm|volts?|psi|miles?|bar)";
const IN_WORDS: readonly (readonly [words: RegExp, figure: string])[] = [
  [new RegExp(`\\b(?:a )?quarter of an? (?=${LENGTHS}\\b)`, "gi"), "1/4 "],
  [new RegExp(`\\bthree[- ]quarters of an? (?=${LENGTHS}\\b)`, "gi"), "3/4 "],
  [new RegExp(`\\bhalf (?:of )?(?:an? )?(?=${LENGTHS}\\b)`, "gi"), "1/2 "],
  [new RegExp(`\\ban? (?=${LENGTHS}\\b)`, "gi"), "1 "],
];

/** `An inch`, `twelve volts`: where a unit stands behind it, a figure in words is one. */
const inFigures = (text: string): string => {
  if (/\d/.test(text)) return text;
  const short = IN_WORDS.reduce((whole, [words, figure]) => whole.replace(words, figure), text);
  return short === text ? figureBefore(text, (stem) => findUnit(stem) !== undefined) : short;
};

/**
 * A text with its first figure in words written out, where a word that is meant stands behind it.
 *
 * @example figureBefore("eight years", (stem) => stem === "year") // "8 years"
 */
export const figureBefore = (text: string, isMeant: (stem: string) => boolean): string => {
  const tokens = tokenize(text);
  const number = numbersIn(tokens).find(({ to }) => isMeant(tokens[to]?.stem ?? ""));
  const [first, last] = [tokens[number?.from ?? -1], tokens[(number?.to ?? 0) - 1]];
  return number === undefined || first === undefined || last === undefined
    ? text
    : `${text.slice(0, first.start)}${number.value}${text.slice(last.end)}`;
};

/** `165/160/165/162` are readings in a row; a day has no number past 31 in front. */
const inARow = (chain: string): string => {
  const numbers = chain.split("/").map((one) => one.trim());
  return numbers.every((one) => Number(one) > 31) ? numbers.join(" ") : chain;
};

/** Vulgar fractions written out, the signs of minus, times and fraction made plain. */
const plain = (text: string): string =>
  text
    .replaceAll(
      /(?<=\d.*)\bafter\s+(?:about\s+|a\s+)?\d+(?:[- ](?:min(?:ute)?s?|miles?|mi|km|hours?))?\b/gi,
      " ",
    )
    .replaceAll(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${VULGAR[sign] ?? ""}`)
    .replaceAll("⁄", "/")
    .replaceAll("−", "-")
    .replaceAll("\u{a0}", " ")
    .replaceAll(/(\d)\s*(?::|\bto)\s*1(?![\d.])/g, "$1 :1 ")
    .replaceAll(/(?<![\d/.])\d{2,3}(?:\s*\/\s*\d{2,3}){2,}(?![\d/.])/g, inARow);

/** A whole number with a fraction, a fraction, or a decimal with either sign for the point and either for thousands. */
const NUMBER =
  /(?<![\w/.,])(?<sign>[-+])?(?:(?<whole>\d+)[ -])?(?<top>\d+)\s*\/\s*(?<bottom>\d+)(?![\d/])|(?<![\w/])(?<minus>[-+])?(?<decimal>\d[\d.,' ]*\d|\d|(?<![\d.])\.\d+)(?![\d/])/gu;

const COMMA_THOUSANDS = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/;
const POINT_THOUSANDS = /^\d{1,3}(?:\.\d{3}){1,}(?:,\d+)?$/;
const SPACE_THOUSANDS = /^\d{1,3}[ ']\d{3}(?:[.,]\d+)?$/;

/** Whether a sheet writes decimals with a comma: then `98.412` is a number of thousands. */
export type Writing = { readonly comma: boolean };

/** `undefined` where the signs make no number, as in a day or a version. */
export const decimalOf = (text: string, { comma }: Writing): number | undefined => {
  const joined = SPACE_THOUSANDS.test(text) ? text.replaceAll(/[ ']/g, "") : text.trim();
  if (COMMA_THOUSANDS.test(joined) && !(comma && /^\d{1,3},\d{3}$/.test(joined) && joined.startsWith("0")))
    return comma && /^\d,\d{3}$/.test(joined)
      ? Number(joined.replace(",", "."))
      : Number(joined.replaceAll(",", ""));
  if (comma && POINT_THOUSANDS.test(joined)) return Number(joined.replaceAll(".", "").replace(",", "."));
  if (/^\d+,\d+$/.test(joined)) return Number(joined.replace(",", "."));
  return /^(?:\d+(?:\.\d+)?|\.\d+)$/.test(joined) ? Number(joined) : undefined;
};

const fractionOf = (groups: Readonly<Record<string, string | undefined>>): number | undefined => {
  const bottom = Number(groups["bottom"]);
  if (![2, 3, 4, 8, 10, 16, 32, 64].includes(bottom)) return undefined;
  const size = Number(groups["whole"] ?? 0) + Number(groups["top"]) / bottom;
  return groups["sign"] === "-" ? -size : size;
};

type Found = { readonly value: number; readonly end: number; readonly start: number; readonly of32: boolean };

const figuresIn = (text: string, writing: Writing): Found[] =>
  Array.from(text.matchAll(NUMBER)).flatMap((match) => {
    const groups = match.groups ?? {};
    const place = { start: match.index, end: match.index + match[0].length };
    if (groups["top"] !== undefined) {
      const value = fractionOf(groups);
      return value === undefined ? [] : [{ value, ...place, of32: groups["bottom"] === "32" }];
    }
    const runs = splitRun(groups["decimal"] ?? "", unitBehind(text.slice(place.end)));
    const values = runs.map((run) => decimalOf(run, writing));
    const sign = groups["minus"] === "-" ? -1 : 1;
    return values.flatMap((value) =>
      value === undefined ? [] : [{ value: sign * value, ...place, of32: false }],
    );
  });

/** Only of these so many are read that thousands are set apart. */
const IN_THOUSANDS: ReadonlySet<UnitSymbol | undefined> = new Set([undefined, "mi", "km", "rpm"]);

/** `6 6 5` is three numbers, `71 203` one; `165 160 psi` is two. */
const splitRun = (run: string, unit: UnitSymbol | undefined): string[] =>
  SPACE_THOUSANDS.test(run) && IN_THOUSANDS.has(unit)
    ? [run]
    : run.split(/[ ']+/).map((one) => one.replace(/[.,]+$/, ""));

/** The unit that stands right behind a number: of one word or two. */
const unitBehind = (text: string): UnitSymbol | undefined => {
  const words =
    /^[\s-]*(:\s?1\b|["″”°º%]\s?[a-z]*|'{2}|[a-zµμ°º][a-zµμ°²³·/.-]*(?:\s(?:hg|lbs?|ft|c|f)\b)?)/iu.exec(
      text,
    )?.[1];
  if (words === undefined) return undefined;
  const [first = ""] = words.split(/\s/);
  return (
    findUnit(words) ??
    findUnit(first) ??
    // At the end of a sentence.
    findUnit(first.replace(/\.+$/, "")) ??
    (/^["″”]/.test(words) ? "in" : undefined)
  );
};

/** Nobody reads an odometer to a thousandth: `71.203 miles` are seventy-one thousand. */
const isThousands = (text: string): boolean => /^\d{1,3}\.\d{3}$/.test(text.trim());

/**
 * Numbers of a cell with their unit: decimals with point or comma, thousands, fractions, several readings in a row.
 *
 * @example numbersOf("14 3/8 in", { comma: false }) // { values: [14.375], unit: "in" }
 */
export const numbersOf = (text: string, writing: Writing): Numbers | undefined => {
  const whole = plain(inFigures(text));
  const found = figuresIn(whole.replaceAll(":1", "::"), writing);
  const [first, ...others] = found;
  if (first === undefined) return undefined;
  // `14.1 V at 2000`: behind the figure stands what it was read at.
  const at = others.findIndex(({ start }) => /(?:\bat|@)\s*$/i.test(whole.slice(0, start)));
  if (at >= 0) return numbersOf(whole.slice(0, others[at]?.start), writing);
  const units = found.map(({ end }) => unitBehind(whole.slice(end)));
  const unit = units.find((one) => one !== undefined);
  const far = unit === "mi" || unit === "km";
  return {
    values: found.map((one) =>
      far && isThousands(whole.slice(one.start, one.end)) ? one.value * 1000 : one.value,
    ),
    ...(unit === undefined ? {} : { unit }),
    ...(found.every(({ of32 }) => of32) ? { of32: true } : {}),
  };
};

/** Whether what stands in a cell is numbers and a unit and hardly anything else. */
export const isNumeric = (text: string): boolean => {
  const left = plain(text)
    .replaceAll(/[-+]?\.?\d[\d.,'/]*/g, " ")
    .replaceAll(/[~≈<>±@]/g, " ")
    .trim();
  const words = left.split(/[\s/,;&-]+/).filter((word) => word !== "");
  return (
    /\d/.test(text) &&
    (words.length === 0 ||
      findUnit(left) !== undefined ||
      words.every((word) => findUnit(word) !== undefined))
  );
};
