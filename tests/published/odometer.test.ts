// Source: 49 CFR 580.17(a), read in the source; cases and the regulation's own examples in the fixture.
import { describe, expect, it } from "vitest";
import { odometerDisclosure } from "@evenhand/handbook/odometer-disclosure";
import published from "../../fixtures/published/cfr49-580-17.json" with { type: "json" };

const exempt = (modelYear: number, transferYear: number) =>
  odometerDisclosure({ modelYear, transferYear }).reason === "exempt-by-age";

const heavy = (weightRating: number) =>
  odometerDisclosure({ modelYear: 2020, transferYear: 2026, weightRating }).reason;

describe("49 CFR 580.17 exemption from odometer disclosure", () => {
  it.each(published.cases)("model year $modelYear transferred $transfer: exempt $exempt", (entry) => {
    expect(exempt(entry.modelYear, Number(entry.transfer.slice(0, 4)))).toBe(entry.exempt);
  });

  it("has the regulation's own examples, from both sides", () => {
    expect(published.regExamples).toEqual([
      { transferYear: 2020, exemptModelYears: "2010 and older" },
      { transferYear: 2031, exemptModelYears: "2011 and older" },
    ]);
    expect([exempt(2010, 2020), exempt(2011, 2020)]).toEqual([true, false]);
    expect([exempt(2011, 2031), exempt(2012, 2031), exempt(2011, 2030)]).toEqual([true, false, false]);
  });

  it("exempts over 16,000 lb and not at it", () => {
    expect([heavy(16_000), heavy(16_001)]).toEqual(["due", "exempt-by-kind"]);
  });

  it("exempts what does not drive itself", () => {
    expect(odometerDisclosure({ modelYear: 2020, transferYear: 2026, selfPropelled: false }).reason).toBe(
      "exempt-by-kind",
    );
  });

  /** Before 2021 the regulation had ten years for every model year (from memory). */
  it("answers for a transfer before 2021 as the rule of that day did", () => {
    for (let transfer = 1990; transfer <= 2020; transfer += 1) {
      for (let modelYear = 1960; modelYear <= transfer + 1; modelYear += 1) {
        expect(exempt(modelYear, transfer), `${modelYear} in ${transfer}`).toBe(transfer >= modelYear + 10);
      }
    }
  });
});
