import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  dateText,
  dayOf,
  findIsoRange,
  isoOf,
  monthRange,
  narrow,
  rangeText,
  weekRange,
  yearOf,
  yearRange,
} from "./index.ts";

const day = fc.integer({ min: dayOf(1900, 1, 1), max: dayOf(2100, 12, 31) });
const text = (range: ReturnType<typeof findIsoRange>) => range && rangeText(range);

describe("days", () => {
  it("counts from 1970-01-01", () => {
    expect([dayOf(1970, 1, 1), dayOf(1970, 1, 2), dayOf(1969, 12, 31)]).toEqual([0, 1, -1]);
    expect([isoOf(0), isoOf(-1), yearOf(-1), yearOf(0)]).toEqual(["1970-01-01", "1969-12-31", 1969, 1970]);
  });

  it("goes there and back", () => {
    fc.assert(
      fc.property(day, (at) => {
        expect(findIsoRange(isoOf(at))).toEqual({ first: at, last: at });
        expect(yearOf(at)).toBe(Number(isoOf(at).slice(0, 4)));
      }),
      { numRuns: 1000 },
    );
  });

  it("has the days of months and years, leap days included", () => {
    expect(rangeText(monthRange(1968, 2))).toBe("1968-02-01 to 1968-02-29");
    expect(rangeText(monthRange(1967, 12))).toBe("1967-12-01 to 1967-12-31");
    expect(rangeText(yearRange(1967))).toBe("1967-01-01 to 1967-12-31");
  });

  it.each([
    ["1967", "1967-01-01 to 1967-12-31"],
    [" 1967-02 ", "1967-02-01 to 1967-02-28"],
    ["1967-02-28", "1967-02-28"],
    ["1967-02-01", "1967-02-01"],
    ["1967-02-29", undefined],
    ["1967-02-00", undefined],
    ["1967-12", "1967-12-01 to 1967-12-31"],
    ["1967-13", undefined],
    ["1967-00", undefined],
    ["67-02", undefined],
    ["1967-02-281", undefined],
    ["x1967", undefined],
  ])("reads %s as %s", (written, expected) => {
    expect(text(findIsoRange(written))).toBe(expected);
  });
});

describe("weekRange", () => {
  it.each([
    [2009, 1, "2009-01-04 to 2009-01-10"],
    [2023, 1, "2023-01-01 to 2023-01-07"],
    [2022, 1, "2022-01-02 to 2022-01-08"],
    [2021, 2, "2021-01-10 to 2021-01-16"],
    [2022, 53, "2023-01-01 to 2023-01-07"],
  ])("%i week %i is %s", (year, week, expected) => {
    expect(rangeText(weekRange(year, week))).toBe(expected);
  });

  it("begins on a Sunday in the first seven days for week 1", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1950, max: 2100 }), (year) => {
        const { first, last } = weekRange(year, 1);
        expect((((first + 4) % 7) + 7) % 7).toBe(0);
        expect(last - first).toBe(6);
        expect(first - dayOf(year, 1, 1)).toBeLessThan(7);
        expect(first).toBeGreaterThanOrEqual(dayOf(year, 1, 1));
      }),
      { numRuns: 1000 },
    );
  });
});

describe("narrow", () => {
  it("keeps what both hold, single days included", () => {
    const dates = [
      { first: 0, last: 9 },
      { first: 20, last: 29 },
    ];
    expect(narrow(dates, { first: 9, last: 20 })).toEqual([
      { first: 9, last: 9 },
      { first: 20, last: 20 },
    ]);
    expect(narrow(dates, { first: 10, last: 19 })).toEqual([]);
  });

  it("writes a set", () => {
    expect(
      dateText([
        { first: 0, last: 0 },
        { first: 5, last: 6 },
      ]),
    ).toBe("1970-01-01, or 1970-01-06 to 1970-01-07");
  });
});
