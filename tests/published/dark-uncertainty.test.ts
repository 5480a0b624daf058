import { describe, expect, it } from "vitest";
import { derSimonianLaird, pauleMandel } from "@evenhand/measurement/dark-uncertainty";
import kacker from "../../fixtures/published/dark-uncertainty.json" with { type: "json" };

const results = kacker.values.map((value, index) => ({
  value,
  standardUncertainty: Math.sqrt(kacker.variances[index] ?? Number.NaN),
}));

/** Kacker (2004), Table 1, with R's metafor beside it; see the fixture. */
describe("dark uncertainty of nine laboratories", () => {
  it.each([
    ["Paule and Mandel", pauleMandel, kacker.pauleMandel],
    ["DerSimonian and Laird", derSimonianLaird, kacker.derSimonianLaird],
  ] as const)("%s, as metafor has it", (_, method, published) => {
    const { dark, mean, standardUncertainty } = method(results);
    expect(dark ** 2).toBeCloseTo(published.darkVariance, 10);
    expect(mean).toBeCloseTo(published.mean, 10);
    expect(standardUncertainty).toBeCloseTo(published.standardUncertainty, 9);
  });

  it("as Kacker printed them", () => {
    expect(Math.abs(pauleMandel(results).dark - kacker.kacker.pauleMandel)).toBeLessThan(6e-5);
    // 0.5367 by his own formula and data; printed as 0.5359.
    expect(Math.abs(derSimonianLaird(results).dark - kacker.kacker.derSimonianLaird)).toBeLessThan(1e-3);
  });
});
