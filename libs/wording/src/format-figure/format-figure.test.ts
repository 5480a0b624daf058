import { describe, expect, it } from "vitest";
import { decimalsFor, formatExact, formatMeasured, formatNumber, formatUnit, formatValue } from "./index.ts";

describe("decimalsFor", () => {
  it.each([
    [0.0347, 3],
    [0.0994, 3],
    [0.0996, 2],
    [1, 1],
    [12, 0],
    [134, -1],
    [99.6, -1],
    [0, 9],
    [1e-12, 9],
  ])("%d: %d", (uncertainty, decimals) => {
    expect(decimalsFor(uncertainty)).toBe(decimals);
  });
});

describe("formatNumber", () => {
  it.each([
    [61204.4, 0, "61,204"],
    [-1347, -1, "−1,350"],
    [1234567, -2, "1,234,600"],
    [0.25, 3, "0.250"],
    [-0.04, 1, "0.0"],
    [1234.5678, 4, "1,234.5678"],
    [999, 0, "999"],
  ])("%d to %d digits: %s", (value, decimals, text) => {
    expect(formatNumber(value, decimals)).toBe(text);
  });
});

describe("formatExact", () => {
  it("shows the digits a number needs", () => {
    expect(formatExact(2)).toBe("2");
    expect(formatExact(0.1 + 0.2)).toBe("0.3");
    expect(formatExact(1200.5)).toBe("1,200.5");
    expect(formatExact(100)).toBe("100");
    expect(formatExact(1.05)).toBe("1.05");
  });
});

describe("figures with units", () => {
  it("put a no-break space before a unit, but none before a fraction, a per cent, a degree or nothing", () => {
    expect(formatUnit("um")).toBe("\u00A0µm");
    expect(formatUnit("1/32in")).toBe("⁄32 in");
    expect(formatUnit("%")).toBe("%");
    expect(formatUnit("deg")).toBe("°");
    expect(formatUnit("1")).toBe("");
  });

  it("match the value to two digits of the uncertainty", () => {
    expect(formatMeasured(3.8123, 0.8049, "psi")).toBe("3.81 ± 0.80\u00A0psi");
    expect(formatMeasured(1347, 134, "mi")).toBe("1,350 ± 130\u00A0mi");
    expect(formatValue(7.9567, 0.35, "psi")).toBe("7.96\u00A0psi");
    expect(formatValue(150, 0.35, "psi", 0)).toBe("150\u00A0psi");
    expect(formatValue(150.04, 0.35, "psi", 1)).toBe("150.0\u00A0psi");
    expect(formatValue(1347, 134, "psi", 0)).toBe("1,350\u00A0psi");
  });

  it("put an interval in brackets before what is written against it", () => {
    expect(formatMeasured(3.5, 1, "1/32in")).toBe("(3.5 ± 1.0)⁄32 in");
    expect(formatMeasured(3.5, 1, "1")).toBe("3.5 ± 1.0");
  });

  it("need no uncertainty", () => {
    expect(formatMeasured(3.5, 0, "psi")).toBe("3.5\u00A0psi");
    expect(formatValue(3.5, 0, "psi")).toBe("3.5\u00A0psi");
  });
});
