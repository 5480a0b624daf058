import { UNITS } from "@evenhand/shared/unit";
import type { UnitSymbol } from "@evenhand/shared/unit";

const NO_BREAK_SPACE = "\u00A0";
const MINUS = "\u2212";
/** The most digits after the point worth showing, and what is shown where there is no uncertainty to go by. */
const MOST_DECIMALS = 9;

/**
 * How many digits after the point show an uncertainty with two significant digits (JCGM 100:2008, 7.2.6); negative
 * where whole tens or hundreds do.
 *
 * @param uncertainty in the unit the figure will be shown in; 0 gives what the value itself needs, up to 9
 * @example decimalsFor(0.0347) // 3
 * @example decimalsFor(0.0996) // 2
 * @example decimalsFor(134) // -1
 */
export const decimalsFor = (uncertainty: number): number => {
  if (!(uncertainty > 0)) return MOST_DECIMALS;
  const exponent = Number(uncertainty.toExponential(1).split("e")[1]);
  return Math.min(MOST_DECIMALS, 1 - exponent);
};

const groupThousands = (digits: string): string =>
  digits.length < 4 ? digits : digits.replaceAll(/\B(?=(\d{3})+$)/g, ",");

/**
 * A number as it is read: rounded to that many digits after the point (to tens or hundreds where negative), thousands
 * grouped, with a true minus sign.
 *
 * @example formatNumber(61204.4, 0) // "61,204"
 * @example formatNumber(-1347, -1) // "−1,350"
 */
export const formatNumber = (value: number, decimals: number): string => {
  const scale = decimals < 0 ? 10 ** -decimals : 1;
  const fixed = (Math.round(Math.abs(value) / scale) * scale).toFixed(0);
  const text = decimals < 0 ? fixed : Math.abs(value).toFixed(decimals);
  const [whole = "0", fraction] = text.split(".");
  const isNegative = value < 0 && /[1-9]/.test(text);
  const grouped = groupThousands(whole);
  return `${isNegative ? MINUS : ""}${fraction === undefined ? grouped : `${grouped}.${fraction}`}`;
};

/** A number with no more digits than it needs: a limit, a difference that matters, a count. */
export const formatExact = (value: number): string => {
  const [whole = "0", fraction] = formatNumber(value, MOST_DECIMALS).split(".");
  const needed = fraction?.replace(/0+$/, "") ?? "";
  return needed === "" ? whole : `${whole}.${needed}`;
};

/**
 * A unit as it follows a number: a no-break space before it, but none before a degree, a per cent or a fraction of an
 * inch; nothing for plain ratios.
 *
 * @example formatUnit("um") // " µm"
 * @example formatUnit("1/32in") // "⁄32 in"
 */
export const formatUnit = (unit: UnitSymbol): string => {
  const { text } = UNITS[unit];
  if (text === "") return "";
  return unit === "1/32in" || unit === "%" || unit === "deg" ? text : `${NO_BREAK_SPACE}${text}`;
};

/**
 * A value to the digits its uncertainty warrants.
 *
 * @param mostDecimals decimals that it is never given more of: nobody measured zeros that nobody wrote
 * @example formatValue(7.9567, 0.35, "psi") // "7.96 psi"
 * @example formatValue(150, 0.35, "psi", 0) // "150 psi"
 */
export const formatValue = (
  value: number,
  uncertainty: number,
  unit: UnitSymbol,
  mostDecimals = Number.POSITIVE_INFINITY,
): string => {
  const number =
    uncertainty > 0
      ? formatNumber(value, Math.min(decimalsFor(uncertainty), mostDecimals))
      : formatExact(value);
  return number + formatUnit(unit);
};

/**
 * A value with its uncertainty: two digits of that, and as many decimals of the value (JCGM 100:2008, 7.2.6).
 *
 * @example formatMeasured(3.8123, 0.8049, "psi") // "3.81 ± 0.80 psi"
 */
export const formatMeasured = (value: number, uncertainty: number, unit: UnitSymbol): string => {
  if (!(uncertainty > 0)) return formatValue(value, 0, unit);
  const decimals = decimalsFor(uncertainty);
  const interval = `${formatNumber(value, decimals)} ± ${formatNumber(uncertainty, decimals)}`;
  const after = formatUnit(unit);
  // What is written against the number, such as a fraction's denominator, would seem to belong to the uncertainty alone.
  return after === "" || after.startsWith(NO_BREAK_SPACE) ? interval + after : `(${interval})${after}`;
};
