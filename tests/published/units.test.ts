import { describe, expect, it } from "vitest";
import { UnitSymbol } from "@evenhand/shared/unit";
import { convert, convertDifference, dimensionOf } from "@evenhand/measurement/unit";
import units from "../../fixtures/published/units.json" with { type: "json" };

/** Source and mark of every figure stand in fixtures/published/units.json: NIST SP 811, appendix B. */
const unit = (symbol: string): UnitSymbol => UnitSymbol.parse(symbol);

describe("units against NIST SP 811", () => {
  it.each(units.exact)("1 $from is exactly $factor $to", ({ from, to, factor }) => {
    expect(convert(1, unit(from), unit(to))).toBe(factor);
    expect(convertDifference(1, unit(from), unit(to))).toBe(factor);
  });

  it("counts 180 degrees Fahrenheit to 100 Celsius between freezing and boiling", () => {
    expect(convertDifference(180, "degF", "degC")).toBe(100);
    expect(convertDifference(100, "degC", "K")).toBe(100);
  });

  it.each(units.full)("1 $from is $factor $to to the last digit but one", ({ from, to, factor }) => {
    expect(Math.abs(convert(1, unit(from), unit(to)) / factor - 1)).toBeLessThan(3e-16);
  });

  it.each(units.publishedRounded)("prints 1 $from as $factor $to", ({ from, to, factor, digits }) => {
    expect(Number(convert(1, unit(from), unit(to)).toPrecision(digits))).toBe(factor);
  });

  it.each(units.cases)("$value $from is $result $to", ({ value, from, to, result, decimals }) => {
    expect(convert(value, unit(from), unit(to))).toBeCloseTo(result, decimals);
  });

  it("has an outside figure for every unit that is not the reference of its dimension or alone in it", () => {
    const checked = new Set(
      [units.exact, units.full, units.cases].flat().flatMap(({ from, to }) => [from, to]),
    );
    const alone = UnitSymbol.options.filter(
      (symbol) =>
        UnitSymbol.options.filter((other) => dimensionOf(other) === dimensionOf(symbol)).length === 1,
    );
    expect(alone).toEqual(["ohm", "dE"]);
    expect(UnitSymbol.options.filter((symbol) => !checked.has(symbol))).toEqual(alone);
  });
});
