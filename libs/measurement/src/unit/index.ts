import { UNITS } from "@evenhand/shared/unit";
import type { Dimension, UnitSymbol } from "@evenhand/shared/unit";
import { FACTORS } from "./factors.ts";

/** Two units of different dimensions were asked to convert. `code` is stable; wording is made elsewhere. */
export class DimensionError extends Error {
  readonly code = "dimensionsDiffer";
  readonly from: UnitSymbol;
  readonly to: UnitSymbol;

  constructor(from: UnitSymbol, to: UnitSymbol) {
    super(`${from} is a unit of ${dimensionOf(from)}, ${to} of ${dimensionOf(to)}: they do not convert.`);
    this.name = "DimensionError";
    this.from = from;
    this.to = to;
  }
}

/** `to = (from · scale + shift) / divisor`: one rounding a step, so at most three in all. */
type Line = { readonly scale: number; readonly shift: number; readonly divisor: number };

/** Worked out once a pair; a function of the pair alone, so keeping them changes no answer. */
const lines = new Map<UnitSymbol, Map<UnitSymbol, Line>>();

const greatestCommonDivisor = (a: bigint, b: bigint): bigint =>
  b === 0n ? a : greatestCommonDivisor(b, a % b);

const magnitude = (a: bigint): bigint => (a < 0n ? -a : a);

/** The line from one unit to another, as the smallest integers it can be written with. */
const lineBetween = (from: UnitSymbol, to: UnitSymbol): Line => {
  const f = FACTORS[from];
  const t = FACTORS[to];
  const scale = f.numerator * t.denominator;
  const shift = f.offset * t.denominator - t.offset * f.denominator;
  const divisor = f.denominator * t.numerator;
  const shared = greatestCommonDivisor(greatestCommonDivisor(scale, divisor), magnitude(shift));
  return {
    scale: Number(scale / shared) * (f.pi > t.pi ? Math.PI : 1),
    shift: Number(shift / shared),
    divisor: Number(divisor / shared) * (f.pi < t.pi ? Math.PI : 1),
  };
};

const findLine = (from: UnitSymbol, to: UnitSymbol): Line => {
  const known = lines.get(from)?.get(to);
  if (known !== undefined) return known;
  if (UNITS[from].dimension !== UNITS[to].dimension) throw new DimensionError(from, to);
  const line = lineBetween(from, to);
  const row = lines.get(from) ?? new Map<UnitSymbol, Line>();
  lines.set(from, row.set(to, line));
  return line;
};

/**
 * The kind of quantity a unit measures.
 *
 * @example dimensionOf("psi") // "pressure"
 */
export const dimensionOf = (symbol: UnitSymbol): Dimension => UNITS[symbol].dimension;

/**
 * A value written in another unit. Factors are exact integers (NIST SP 811, appendix B), combined and
 * reduced before a floating-point number is made, so 152.4 mm is 6 in and not 5.999 999 999 999 999.
 *
 * Temperatures are taken as points on a scale: 195 °F is 90.56 °C. For a difference or an uncertainty of
 * temperature use {@link convertDifference}.
 *
 * @param value the number that stands before `from`
 * @throws {DimensionError} when the units measure different things
 * @example convert(195, "degF", "degC") // 90.55555555555556
 */
export const convert = (value: number, from: UnitSymbol, to: UnitSymbol): number => {
  if (from === to) return value;
  const { scale, shift, divisor } = findLine(from, to);
  return (value * scale + shift) / divisor;
};

/**
 * A difference, a tolerance or an uncertainty written in another unit: the zero of a scale plays no part.
 *
 * @param value the difference, in `from`
 * @throws {DimensionError} when the units measure different things
 * @example convertDifference(9, "degF", "degC") // 5
 */
export const convertDifference = (value: number, from: UnitSymbol, to: UnitSymbol): number => {
  if (from === to) return value;
  const { scale, divisor } = findLine(from, to);
  return (value * scale) / divisor;
};
