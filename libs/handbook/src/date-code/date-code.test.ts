import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayOf, isoOf, rangeText, yearOf } from "../day/index.ts";
import { dateCandidates } from "./index.ts";

const decades = { first: dayOf(1955, 1, 1), last: dayOf(1979, 12, 31) };
const texts = (code: string, form: string, within = decades) =>
  dateCandidates(code, form, within).map(rangeText);

describe("dateCandidates", () => {
  it.each([
    ["A 15 7", "M d y", ["1957-01-15", "1967-01-15", "1977-01-15"]],
    ["a157", "Mdy", ["1957-01-15", "1967-01-15", "1977-01-15"]],
    ["L-31-6", "M d y", ["1956-12-31", "1966-12-31", "1976-12-31"]],
    ["7J5", "yNd", ["1957-09-05", "1967-09-05", "1977-09-05"]],
    ["7M", "yN", ["1957-12-01 to 1957-12-31", "1967-12-01 to 1967-12-31", "1977-12-01 to 1977-12-31"]],
    ["7A", "yN", ["1957-01-01 to 1957-01-31", "1967-01-01 to 1967-01-31", "1977-01-01 to 1977-01-31"]],
    ["03 67", "w yy", ["1967-01-15 to 1967-01-21"]],
    ["5367", "wyy", ["1967-12-31 to 1968-01-06"]],
    ["0167", "wyy", ["1967-01-01 to 1967-01-07"]],
    ["12/1967", "m/yyyy", ["1967-12-01 to 1967-12-31"]],
    ["1967", "yyyy", ["1967-01-01 to 1967-12-31"]],
    ["B-2-67", "bdyy", ["1967-01-01 to 1967-12-31"]],
    ["B-2-67", "Bdyy", ["1967-01-01 to 1967-12-31"]],
  ])("%s written as %s", (code, form, expected) => {
    expect(texts(code, form)).toEqual(expected);
  });

  it.each([
    ["A 32 7", "M d y"],
    ["B 30 7", "M d y"],
    ["B 0 7", "M d y"],
    ["M 15 7", "M d y"],
    ["7I", "yN"],
    ["0067", "wyy"],
    ["5467", "wyy"],
    ["13/1967", "m/yyyy"],
    ["0/1967", "m/yyyy"],
    ["1950", "yyyy"],
    ["A 15", "M d"],
    ["A 15 7x", "M d y"],
    ["xA 15 7", "M d y"],
    ["7A7", "y M y"],
    ["A+7", "M.y"],
  ])("%s cannot be written as %s", (code, form) => {
    expect(texts(code, form)).toEqual([]);
  });

  it("keeps only days within the maker's years", () => {
    expect(texts("0166", "wyy", { first: dayOf(1966, 1, 5), last: dayOf(1966, 1, 7) })).toEqual([
      "1966-01-05 to 1966-01-07",
    ]);
    expect(texts("A 1 0", "M d y", { first: dayOf(1960, 1, 1), last: dayOf(1970, 1, 1) })).toEqual([
      "1960-01-01",
      "1970-01-01",
    ]);
  });

  it("keeps a week that runs into the maker's first year", () => {
    expect(texts("5365", "wyy", { first: dayOf(1966, 1, 1), last: dayOf(1966, 12, 31) })).toEqual([
      "1966-01-02 to 1966-01-08",
    ]);
  });

  it("always holds the day a code was made of, once a decade", () => {
    const LETTERS = "ABCDEFGHIJKL";
    fc.assert(
      fc.property(fc.integer({ min: decades.first, max: decades.last }), (at) => {
        const [, month = "", date = ""] = isoOf(at).split("-");
        const candidates = dateCandidates(
          `${LETTERS[Number(month) - 1]}${Number(date)} ${yearOf(at) % 10}`,
          "M d y",
          decades,
        );
        expect(candidates).toContainEqual({ first: at, last: at });
        expect(new Set(candidates.map(({ first }) => yearOf(first) % 10))).toEqual(
          new Set([yearOf(at) % 10]),
        );
      }),
      { numRuns: 1000 },
    );
  });
});
