import type { Figure, FigureRange } from "@evenhand/shared/cross-check";
import { UNITS } from "@evenhand/shared/unit";
import { resultMessages } from "../result-words/index.ts";

/** Standard uncertainties are shown doubled, as a half width that holds about 95 %. */
const SHOWN_FACTOR = 2;
/** Digits of a figure that carries no uncertainty and is not whole. */
const PLAIN_DIGITS = 5;
/** Ages are told to a tenth of a year, and days are whole. */
const MOST_DECIMALS: Readonly<Record<string, number>> = { a: 1, d: 0 };

const isUnitSymbol = (unit: string): unit is keyof typeof UNITS => Object.hasOwn(UNITS, unit);

/**
 * The word behind a plain number of years or days; nothing for other units.
 *
 * @example timeWord("a") // " years"
 */
export const timeWord = (unit: string): string => ({ a: " years", d: " days" })[unit] ?? "";

/** Years and days are plain numbers; the sentence has the word. */
const withUnit = (number: string, unit: string): string => {
  const text = isUnitSymbol(unit) ? UNITS[unit].text : "";
  if (text === "") return number;
  if (text.startsWith("⁄")) return number.includes("±") ? `(${number})${text}` : `${number}${text}`;
  return text === "%" ? `${number}%` : `${number} ${text}`;
};

/** The sign of what is rounded to nothing. */
const NEGATIVE_ZERO = /^-(?=0(?:\.0*)?$)/;

/** A format takes longer to make than to use a hundred times; there are as many as digits, with and without groups. */
const formats = new Map<number, Intl.NumberFormat>();

const formatOf = (digits: number, useGrouping: boolean): Intl.NumberFormat => {
  const key = useGrouping ? digits : -1 - digits;
  const known = formats.get(key);
  if (known !== undefined) return known;
  const made = new Intl.NumberFormat("en-US", {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    useGrouping,
  });
  formats.set(key, made);
  return made;
};

const grouped = (value: number, decimals: number, unit: string): string => {
  const digits = Math.min(MOST_DECIMALS[unit] ?? decimals, decimals);
  return formatOf(digits, unit !== "a")
    .format(value)
    .replace(NEGATIVE_ZERO, "")
    .replace("-", "−");
};

/** Decimals at which an uncertainty keeps two digits. */
const decimalsOf = (uncertainty: number): number => {
  const exponent = Number(uncertainty.toExponential(1).split("e")[1]);
  return Math.min(12, Math.max(0, 1 - exponent));
};

const plain = (value: number, unit: string): string => {
  const rounded = Number.isInteger(value) ? value : Number(value.toPrecision(PLAIN_DIGITS));
  return grouped(rounded, (String(rounded).split(".")[1] ?? "").length, unit);
};

/**
 * A figure as a sentence gives it: the expanded uncertainty (k = 2) with two digits and the value to match; up to
 * five digits where it carries none.
 *
 * @example figureText({ value: 3.2284, unit: "1", standardUncertainty: 0.0313 }) // "3.228 ± 0.063"
 * @example figureText({ value: 27.1063, unit: "in" }) // "27.106 in"
 */
export const figureText = ({ value, unit, standardUncertainty = 0 }: Figure): string => {
  if (standardUncertainty === 0) return withUnit(plain(value, unit), unit);
  const shown = SHOWN_FACTOR * standardUncertainty;
  const decimals = decimalsOf(shown);
  return withUnit(`${grouped(value, decimals, unit)} ± ${grouped(shown, decimals, unit)}`, unit);
};

/**
 * A range, with as many digits as its width deserves.
 *
 * @example rangeFigureText({ low: 3.1042, high: 3.3391, unit: "1" }) // "3.10 to 3.34"
 */
export const rangeFigureText = ({ low, high, unit }: FigureRange): string => {
  if (low === high) return withUnit(plain(low, unit), unit);
  const decimals = decimalsOf(high - low);
  const [first, last] = [grouped(low, decimals, unit), grouped(high, decimals, unit)];
  return withUnit(
    first === last ? first : resultMessages.say("between", { first: first ?? "", last: last ?? "" }),
    unit,
  );
};
