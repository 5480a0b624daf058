// Source: 49 CFR 565.15; every number stands under its own in fixtures/published/vin.json.
import { describe, expect, it } from "vitest";
import { findCheckDigit, findWeightedSum, hasRightCheckDigit } from "@evenhand/handbook/check-digit";
import { normalizeVin } from "@evenhand/handbook/identifier-text";
import { vinForm } from "@evenhand/handbook/vin-form";
import { vinYears } from "@evenhand/handbook/vin-year";
import published from "../../fixtures/published/vin.json" with { type: "json" };

const form = (vin: string, modelYear = 1990) => vinForm({ vin, market: "north-america", modelYear });
const values = new Map(Object.entries(published.values));
const sameValue = (a: string, b: string) => values.get(a) === values.get(b);
const replaced = (vin: string, at: number, text: string) =>
  vin.slice(0, at) + text + vin.slice(at + text.length);

/** Every VIN one wrong character away, and what was done to it. */
const substitutions = (vin: string) =>
  Array.from(vin).flatMap((was, at) =>
    Array.from(published.allowed)
      .filter((is) => is !== was)
      .map((is) => ({ at, was, is, vin: replaced(vin, at, is) })),
  );

/** Every VIN one exchange of unlike neighbors away. */
const exchanges = (vin: string) =>
  Array.from(vin.slice(1)).flatMap((second, at) => {
    const first = vin[at] ?? "";
    return first === second ? [] : [{ at, was: first, is: second, vin: replaced(vin, at, second + first) }];
  });

describe("49 CFR 565.15 check digit", () => {
  it("gives the regulation's worked example: sum 411, check digit 4", () => {
    const { vinWithoutCheck, sum, remainder, vin } = published.regulationExample;
    const filled = vinWithoutCheck.replace("?", "0");
    expect(findWeightedSum(filled)).toBe(sum);
    expect(findCheckDigit(filled)).toBe(String(remainder));
    expect(form(vin)).toMatchObject({ reason: "passes", figures: { weightedSum: { value: 411 } } });
  });

  it.each(published.valid)("accepts $vin with sum $sum", ({ vin, sum, check }) => {
    expect(findWeightedSum(vin)).toBe(sum);
    expect(findCheckDigit(vin)).toBe(check);
    expect(form(vin).verdict).toBe("holds");
  });

  it.each(published.invalid)("breaks on $vin: $why ($source)", ({ vin, why }) => {
    expect(form(vin)).toMatchObject({ verdict: "breaks", reason: why.replace(" ", "-") });
  });

  /** The first model year of the 17 characters (49 CFR 571.115 and 565, from memory). */
  it("asks for 17 characters from model year 1981 on", () => {
    const vin = "1M8GDM9AXKP042788";
    expect([form(vin, 1980).reason, form(vin, 1981).reason]).toEqual(["before-1981", "passes"]);
  });

  it("reads a letter that no VIN holds as the digit it looks like (565.13)", () => {
    expect(normalizeVin("IM8GDM9AXKPO42788")).toBe("1M8GDM9AXKP042788");
  });

  it("has no value for I, O, Q and one for each of the 33 others", () => {
    for (const letter of published.forbidden)
      expect(findWeightedSum(`1111111111111111${letter}`)).toBeUndefined();
    for (const [character, value] of values)
      expect(findWeightedSum(`1111111111111111${character}`)).toBe(89 - 2 + 2 * value);
  });
});

describe("errors the check digit catches and those it cannot", () => {
  it.each(published.valid)("catches every wrong character of $vin but one of the same value", ({ vin }) => {
    for (const error of substitutions(vin)) {
      // The check digit's own place has no weight, so there any other character is caught.
      const blind = error.at !== published.checkDigitPosition - 1 && sameValue(error.was, error.is);
      expect(hasRightCheckDigit(error.vin), `${error.was} read ${error.is} at ${error.at + 1}`).toBe(blind);
    }
  });

  it.each(published.valid)(
    "catches every exchange of neighbors in $vin away from the check digit, but of the same value",
    ({ vin }) => {
      const away = exchanges(vin).filter(({ at }) => at !== 7 && at !== 8 && at !== 6);
      for (const error of away)
        expect(hasRightCheckDigit(error.vin), `${error.at + 1}`).toBe(sameValue(error.was, error.is));
    },
  );

  it("lists every error of the published VINs that it cannot catch", async () => {
    const uncaught = published.valid.map(({ vin }) => ({
      vin,
      wrongCharacter: substitutions(vin)
        .filter((error) => hasRightCheckDigit(error.vin))
        .map(({ at, was, is }) => `${at + 1}: ${was} read ${is}`),
      neighborsExchanged: exchanges(vin)
        .filter((error) => hasRightCheckDigit(error.vin))
        .map(({ at, was, is }) => `${at + 1}: ${was}${is} read ${is}${was}`),
    }));
    await expect(`${JSON.stringify(uncaught, null, 2)}\n`).toMatchFileSnapshot(
      "../../fixtures/published/vin-uncaught.json",
    );
  });
});

describe("model-year cycle", () => {
  it.each(
    Array.from(published.yearCodeSequenceFrom1980).map((code, index) => ({ code, year: 1980 + index })),
  )("$code is $year or thirty years later", ({ code, year }) => {
    const vin = (seventh: string) => `1M8GDM${seventh}AX${code}P042788`;
    expect(vinYears(vin("9"), "car")).toEqual([year]);
    expect(vinYears(vin("A"), "car")).toEqual([year + published.yearCycle]);
    expect(vinYears(vin("9"), "other")).toEqual([year, year + published.yearCycle]);
  });

  it("knows the published samples", () => {
    for (const [code, years] of Object.entries(published.yearSamples)) {
      expect(vinYears(`1M8GDM9AX${code}P042788`, "other")).toEqual(years);
    }
  });

  it.each(published.yearCodeForbidden)("has no year for %s", (code) => {
    expect(vinYears(`1M8GDM9AX${code}P042788`, "car")).toEqual([]);
  });
});
