// Sources: 49 CFR 574.5, 64 FR 36807, 80 FR 19553; of the sizes each beside its figure. Marks stand in the fixtures.
import { describe, expect, it } from "vitest";
import { dayOf, isoOf, weekRange, yearOf } from "@evenhand/handbook/day";
import { tireAge } from "@evenhand/handbook/tire-age";
import { endsInDate, tireDate } from "@evenhand/handbook/tire-identification";
import { findTireSize } from "@evenhand/handbook/tire-size";
import identification from "../../fixtures/published/tire-identification.json" with { type: "json" };
import sizes from "../../fixtures/published/tire-size.json" with { type: "json" };

const visit = dayOf(2026, 5, 4);
const years = (code: string) => tireDate(code, visit).dates.map(({ last }) => yearOf(last));

describe("tire identification dates", () => {
  it.each(identification.dateExamples)("$code", ({ code, week, year, yearCandidates, range }) => {
    expect(years(code)).toEqual(yearCandidates ?? [year]);
    for (const dates of tireDate(code, visit).dates)
      expect(dates).toEqual(weekRange(yearOf(dates.last), week));
    const texts = tireDate(code, visit).dates.map(({ first, last }) => [isoOf(first), isoOf(last)]);
    expect(texts).toEqual(range === undefined ? texts : [range]);
  });

  it.each(identification.dateExamples)("reads $code at the end of a whole number too", ({ code }) => {
    expect(tireDate(`DOT 0VNE HKTA ${code}`, visit)).toEqual(tireDate(code, visit));
  });

  it("never fixes the decade of three digits", () => {
    const codes = Array.from({ length: 53 }, (_, week) => String(week + 1).padStart(2, "0"));
    for (const week of codes) {
      for (let digit = 0; digit <= 9; digit += 1) {
        const { dates, decadeless } = tireDate(`${week}${digit}`, visit);
        expect(decadeless).toBe(true);
        expect(dates.length, `${week}${digit}`).toBeGreaterThanOrEqual(2);
      }
    }
  });

  it.each(identification.invalidDates)("%s is no date", (code) => {
    expect(endsInDate(code)).toBe(false);
    expect(tireAge({ number: code, visit }).reason).toBe("not-a-date");
  });

  /** 64 FR 36807 permits four digits some months before July 2000, so 99 is the year just gone and never one to come. */
  it("reads 99 as 1999 and 00 as 2000", () => {
    expect([years("4599"), years("0500")]).toEqual([[1999], [2000]]);
  });

  it("takes week 53 and refuses week 54", () => {
    expect(endsInDate("5301")).toBe(true);
    expect(endsInDate("5401")).toBe(false);
  });
});

describe("tire diameters", () => {
  it.each(sizes.tireDiameter.cases)("$size is $in in over all", (published) => {
    const size = findTireSize(published.size);
    expect(size?.diameter.value.toFixed(published.decimals)).toBe(published.in.toFixed(published.decimals));
    expect(size?.diameter.standardUncertainty).toBe(0);
  });

  it.each(sizes.alphaNumeric.cases)(
    "$size is $od_in in over all, and known by less than the uncertainty said",
    (published) => {
      const diameter = findTireSize(published.size)?.diameter;
      const apart = Math.abs((diameter?.value ?? 0) - published.od_in);
      expect(apart).toBeLessThan(published.within_in);
      expect(published.within_in).toBeLessThan(diameter?.standardUncertainty ?? 0);
      expect(diameter?.standardUncertainty).toBeLessThan(0.02 * published.od_in);
    },
  );
});
