import { describe, expect, it } from "vitest";
import { dateText, dayOf, weekRange } from "../day/index.ts";
import { endsInDate, tireDate } from "./index.ts";

const read = (text: string, notAfter = dayOf(2026, 5, 4)) => dateText(tireDate(text, notAfter).dates);

describe("tireDate", () => {
  it.each([
    ["DOT 0VNE HKTA 5107", "2007-12-23 to 2007-12-29"],
    ["dot 0vnehkta5107", "2007-12-23 to 2007-12-29"],
    ["0VNE-HKTA-5107", "2007-12-23 to 2007-12-29"],
    ["10VNEHKTA5107", "2007-12-23 to 2007-12-29"],
    ["  2501  ", "2001-06-24 to 2001-06-30"],
    ["0199", "1999-01-03 to 1999-01-09"],
    ["0100", "2000-01-02 to 2000-01-08"],
    ["0VNEHK031", "1981-01-18 to 1981-01-24, or 1991-01-20 to 1991-01-26"],
    ["0VNE HK 031", "1981-01-18 to 1981-01-24, or 1991-01-20 to 1991-01-26"],
    ["270", "1980-07-06 to 1980-07-12, or 1990-07-08 to 1990-07-14, or 2000-07-02 to 2000-07-08"],
    ["280", "1980-07-13 to 1980-07-19, or 1990-07-15 to 1990-07-21"],
    ["211", "1971-05-23 to 1971-05-29, or 1981-05-24 to 1981-05-30, or 1991-05-26 to 1991-06-01"],
    ["201", "1981-05-17 to 1981-05-23, or 1991-05-19 to 1991-05-25"],
  ])("reads %s as %s", (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it("keeps both readings of a short number in one piece that ends in four digits", () => {
    const { dates, decadeless } = tireDate("0VNEHK2501", dayOf(2026, 5, 4));
    expect(decadeless).toBe(true);
    expect(dates).toEqual([
      weekRange(2001, 25),
      weekRange(1971, 50),
      weekRange(1981, 50),
      weekRange(1991, 50),
    ]);
    expect(tireDate("0VNEHKTA2501", dayOf(2026, 5, 4))).toEqual({
      decadeless: false,
      dates: [weekRange(2001, 25)],
    });
  });

  it("does not count the letters before the number among its symbols", () => {
    for (const text of ["DOT 0VNEHK2501", "dot0VNEHK2501", "  DOT0VNEHK2501 ", "0VNE  LM2501"]) {
      expect(tireDate(text, dayOf(2026, 5, 4))).toEqual(tireDate("0VNEHK2501", dayOf(2026, 5, 4)));
    }
    expect(tireDate("0VNEHKTA25O1", dayOf(2026, 5, 4)).dates).toEqual([]);
    expect(tireDate("25010VNEHKTA", dayOf(2026, 5, 4)).dates).toEqual([]);
  });

  it("leaves out weeks after the day it was read, and cuts the week it was read in", () => {
    expect(read("2528")).toBe("");
    expect(read("1826", dayOf(2026, 5, 4))).toBe("2026-05-03 to 2026-05-04");
  });

  it.each([
    ["5301", true],
    ["5401", false],
    ["0001", false],
    ["0101", true],
    ["541", false],
    ["001", false],
    ["DOT 0VNE HKTA", false],
    ["12345", true],
    ["12", false],
    ["", false],
  ])("%s ends in a date: %s", (text, expected) => {
    expect(endsInDate(text)).toBe(expected);
  });
});
