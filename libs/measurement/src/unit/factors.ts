import type { UnitSymbol } from "@evenhand/shared/unit";

/**
 * A unit as `(value · numerator + offset) / denominator`, times π where `pi` is 1, in the dimension's
 * reference unit. All four are integers, so no figure here is rounded; degrees of angle are the only
 * units whose factor is irrational.
 */
export type Factor = {
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly offset: bigint;
  readonly pi: 0 | 1;
};

const factor = (numerator: bigint, denominator = 1n, offset = 0n, pi: 0 | 1 = 0): Factor => ({
  numerator,
  denominator,
  offset,
  pi,
});

/*
 * Defined exactly (NIST SP 811, 2008 edition, appendix B; international yard and pound agreement, 1959):
 * the inch is 25.4 mm, the avoirdupois pound 0.453 592 37 kg, standard gravity 9.806 65 m/s²,
 * the US gallon 231 in³, the imperial gallon 4.546 09 L, conventional mercury 13 595.1 kg/m³.
 */
const INCH_NM = 25_400_000n;
const POUND_10NG = 45_359_237n;
const GRAVITY_1E5 = 980_665n;
/** Pound-force in units of 1e-13 N: 0.453 592 37 kg × 9.806 65 m/s². */
const POUND_FORCE_1E13 = POUND_10NG * GRAVITY_1E5;
const MERCURY_1E1 = 135_951n;

/** Every unit against the reference of its dimension, named in the comment. */
export const FACTORS: Readonly<Record<UnitSymbol, Factor>> = {
  // nanometer
  mm: factor(1_000_000n),
  cm: factor(10_000_000n),
  m: factor(1_000_000_000n),
  km: factor(1_000_000_000_000n),
  um: factor(1_000n),
  in: factor(INCH_NM),
  "1/32in": factor(INCH_NM, 32n),
  mil: factor(INCH_NM, 1_000n),
  ft: factor(12n * INCH_NM),
  mi: factor(5_280n * 12n * INCH_NM),
  // pascal
  Pa: factor(1n),
  kPa: factor(1_000n),
  bar: factor(100_000n),
  // lbf/in²: 1e-13 N over (25.4e-3 m)² = 645.16e-6 m²
  psi: factor(POUND_FORCE_1E13, 64_516n * 100_000n),
  "kgf/cm2": factor(GRAVITY_1E5, 10n),
  // 13 595.1 kg/m³ × 9.806 65 m/s² × 0.0254 m
  inHg: factor(MERCURY_1E1 * GRAVITY_1E5 * 254n, 10n * 100_000n * 10_000n),
  mmHg: factor(MERCURY_1E1 * GRAVITY_1E5, 10n * 100_000n * 1_000n),
  // volt, ampere, ohm
  mV: factor(1n, 1_000n),
  V: factor(1n),
  mA: factor(1n, 1_000n),
  A: factor(1n),
  ohm: factor(1n),
  // kelvin: (°F + 459.67) · 5/9, °C + 273.15
  K: factor(1n),
  degC: factor(100n, 100n, 27_315n),
  degF: factor(500n, 900n, 229_835n),
  // part per million
  "1": factor(1_000_000n),
  "%": factor(10_000n),
  ppm: factor(1n),
  // per minute
  rpm: factor(1n),
  "1/min": factor(1n),
  // meter per hour
  "km/h": factor(1_000n),
  mph: factor(1_609_344n, 1_000n),
  "m/s": factor(3_600n),
  // newton meter
  "N.m": factor(1n),
  "lbf.ft": factor(POUND_FORCE_1E13 * 3_048n, 10_000_000_000_000n * 10_000n),
  "lbf.in": factor(POUND_FORCE_1E13 * 254n, 10_000_000_000_000n * 10_000n),
  // gram
  g: factor(1n),
  kg: factor(1_000n),
  lb: factor(POUND_10NG, 100_000n),
  oz: factor(POUND_10NG, 1_600_000n),
  // milliliter; a cubic inch is 16.387 064 mL
  ml: factor(1n),
  l: factor(1_000n),
  cm3: factor(1n),
  in3: factor(16_387_064n, 1_000_000n),
  galUS: factor(231n * 16_387_064n, 1_000_000n),
  galUK: factor(454_609n, 100n),
  // second
  s: factor(1n),
  min: factor(60n),
  h: factor(3_600n),
  // radian
  rad: factor(1n),
  deg: factor(1n, 180n, 0n, 1),
  dE: factor(1n),
};
