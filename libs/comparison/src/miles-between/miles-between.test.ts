import { describe, expect, it } from "vitest";
import type { Report } from "@evenhand/shared/report";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { finding, inspection, statement } from "../../testing/small-reports.ts";
import { milesBetween } from "./index.ts";
import type { OdometerRead } from "./index.ts";

const odometer = (value: number, unit: UnitSymbol = "mi") =>
  finding("identity.odometer", { kind: "reading", unit, values: [{ value }] });
const silent = (report: Report): OdometerRead => ({ visit: report.visit, finding: undefined });
const stated = (value: number, unit?: UnitSymbol): OdometerRead => ({
  ...silent(statement([])),
  finding: odometer(value, unit),
});
/** Eight days after the statement. */
const found = (value: number, unit?: UnitSymbol): OdometerRead => ({
  ...silent(inspection([])),
  finding: odometer(value, unit),
});

describe("milesBetween", () => {
  it.each<[string, OdometerRead, OdometerRead, number]>([
    ["what the later odometer shows more", stated(61_240), found(61_640), 400],
    ["whichever side is later", found(61_640), stated(61_240), 400],
    ["nothing where it fell", stated(61_640), found(61_240), 0],
    ["no more than 150 a day", stated(61_240), found(71_240), 1200],
    ["nothing where one is silent", stated(61_240), silent(inspection([])), 0],
    ["nothing where it was read in something else", stated(61_240), found(3, "V"), 0],
  ])("%s", (_name, a, b, miles) => {
    expect(milesBetween(a, b)).toBe(miles);
  });

  it("converts kilometers", () => {
    expect(milesBetween(stated(1000, "km"), found(1160.9344, "km"))).toBeCloseTo(100, 9);
  });
});
