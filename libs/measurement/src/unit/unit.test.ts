import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { UNITS, UnitSymbol } from "@evenhand/shared/unit";
import { DimensionError, convert, convertDifference, dimensionOf } from "./index.ts";

const RUNS = { numRuns: 1000 };
const symbols = fc.constantFrom(...UnitSymbol.options);

/** Any two units of one dimension. */
const pairs = symbols.chain((from) =>
  fc.tuple(
    fc.constant(from),
    fc.constantFrom(...UnitSymbol.options.filter((to) => dimensionOf(to) === dimensionOf(from))),
  ),
);
/** Numbers people write: no smaller than a thousandth of a billionth. */
const values = fc
  .double({ min: -1e6, max: 1e6, noNaN: true })
  .map((value) => (Math.abs(value) < 1e-12 ? 0 : value));

describe("convert", () => {
  it("has the results its examples state", () => {
    expect(convert(195, "degF", "degC")).toBe(90.55555555555556);
    expect(convertDifference(9, "degF", "degC")).toBe(5);
    expect(dimensionOf("psi")).toBe("pressure");
  });

  it("gives whole and decimal figures without a trail of digits", () => {
    expect(convert(152.4, "mm", "in")).toBe(6);
    expect(convert(7, "in", "mm")).toBe(177.8);
    expect(convert(3, "ft", "in")).toBe(36);
    expect(convert(5, "mil", "um")).toBe(127);
    expect(convert(6, "1/32in", "in")).toBe(0.1875);
    expect(convert(90.5, "degC", "degF")).toBe(194.9);
    expect(convert(59, "degF", "degC")).toBe(15);
  });

  it("is the nearest number to the exact product for every whole inch", () => {
    for (let inches = 1; inches <= 10_000; inches += 1) {
      expect(convert(inches, "in", "mm")).toBe(Number(BigInt(inches) * 254n) / 10);
    }
  });

  it("takes temperatures as points and their differences without the zero", () => {
    expect(convert(0, "degC", "degF")).toBe(32);
    // Exactly 0, not −0, where two zeros meet.
    expect(convert(32, "degF", "degC")).toBe(0);
    expect(convert(273.15, "K", "degC")).toBe(0);
    expect(convert(-459.67, "degF", "K")).toBe(0);
    expect(convert(-273.15, "degC", "K")).toBe(0);
    expect(convertDifference(10, "degC", "degF")).toBe(18);
    expect(convertDifference(10, "degC", "K")).toBe(10);
    expect(convert(10, "degC", "K")).toBe(283.15);
    expect(convert(0, "K", "degF")).toBeCloseTo(-459.67, 10);
  });

  it("turns degrees of angle by π, both ways", () => {
    expect(convert(180, "deg", "rad")).toBe(Math.PI);
    expect(convert(Math.PI / 2, "rad", "deg")).toBe(90);
    expect(convertDifference(360, "deg", "rad")).toBe(2 * Math.PI);
  });

  it("leaves a value in its own unit untouched, whatever it is", () => {
    for (const symbol of UnitSymbol.options) {
      expect(convert(0.1, symbol, symbol)).toBe(0.1);
      expect(convertDifference(0.1, symbol, symbol)).toBe(0.1);
    }
  });

  it("refuses another dimension, naming both units", () => {
    expect(() => convert(32, "psi", "mm")).toThrow(DimensionError);
    expect(() => convert(32, "psi", "mm")).toThrow(
      "psi is a unit of pressure, mm of length: they do not convert.",
    );
    expect(() => convertDifference(1, "V", "A")).toThrow(DimensionError);
  });

  it("refuses with a stable code and the units as data", () => {
    const error = new DimensionError("psi", "mm");
    expect(error).toMatchObject({ name: "DimensionError", code: "dimensionsDiffer", from: "psi", to: "mm" });
  });

  it("refuses every pair across dimensions and converts every pair within one", () => {
    const all = UnitSymbol.options.flatMap((from) => UnitSymbol.options.map((to) => ({ from, to })));
    const within = all.filter(({ from, to }) => UNITS[from].dimension === UNITS[to].dimension);
    const across = all.filter(({ from, to }) => UNITS[from].dimension !== UNITS[to].dimension);
    for (const { from, to } of within) expect(convert(1, from, to)).not.toBeNaN();
    for (const { from, to } of across) expect(() => convert(1, from, to)).toThrow(DimensionError);
  });

  it("comes back to where it started", () => {
    fc.assert(
      fc.property(pairs, values, ([from, to], value) => {
        const there = convert(value, from, to);
        // A zero far from the value costs digits: −40 °C is 233.15 K.
        const scale = Math.abs(value) + (dimensionOf(from) === "temperature" ? 1000 : 0);
        expect(Math.abs(convert(there, to, from) - value)).toBeLessThanOrEqual(1e-14 * scale);
        const difference = convertDifference(value, from, to);
        expect(Math.abs(convertDifference(difference, to, from) - value)).toBeLessThanOrEqual(
          1e-14 * Math.abs(value),
        );
      }),
      RUNS,
    );
  });

  it("keeps the order of values and turns a difference of values into a difference", () => {
    fc.assert(
      fc.property(pairs, values, values, ([from, to], a, b) => {
        const [convertedA, convertedB] = [convert(a, from, to), convert(b, from, to)];
        expect(Math.sign(convertedA - convertedB) * Math.sign(a - b)).toBeGreaterThanOrEqual(0);
        const scale = Math.abs(convertedA) + Math.abs(convertedB) + Math.abs(convertDifference(1, from, to));
        const difference = convertDifference(a - b, from, to);
        expect(Math.abs(convertedA - convertedB - difference)).toBeLessThanOrEqual(1e-12 * (scale + 1000));
      }),
      RUNS,
    );
  });

  it("goes the same way in one step or in two", () => {
    fc.assert(
      fc.property(
        pairs,
        symbols,
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        ([from, to], via, value) => {
          fc.pre(dimensionOf(via) === dimensionOf(from));
          const direct = convertDifference(value, from, to);
          const twice = convertDifference(convertDifference(value, from, via), via, to);
          expect(Math.abs(twice / direct - 1)).toBeLessThan(1e-14);
        },
      ),
      RUNS,
    );
  });
});
