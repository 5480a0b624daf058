import { estimate } from "@evenhand/measurement/estimate";
import { describe, expect, it } from "vitest";
import { dayOf } from "../day/index.ts";
import { exactly } from "../interval/index.ts";
import { actualMiles } from "./index.ts";
import type { ActualMilesInput } from "./index.ts";

const on = (year: number, miles: number, place = "service bill") => ({
  day: dayOf(year, 5, 4),
  miles: exactly(miles),
  place,
});
const told = (more: Partial<ActualMilesInput> = {}) =>
  actualMiles({ shown: on(2019, 61_240, "odometer"), digits: 5, entries: [], calledActual: true, ...more });

describe("actualMiles", () => {
  it("breaks where miles called actual are fewer than an older paper has", () => {
    const result = told({ entries: [on(1986, 97_410)] });
    expect(result).toMatchObject({ verdict: "breaks", reason: "called-actual-but-lower", severity: "worth" });
    expect(result.alternatives).toEqual(["161,240 mi", "261,240 mi"]);
    expect(result.words).toMatchObject({ earlierPlace: "service bill", earlierDay: "1986-05-04" });
  });

  it("accuses nobody where they are not called actual, and keeps the alternatives", () => {
    const result = told({ entries: [on(1986, 97_410)], calledActual: false });
    expect(result).toMatchObject({ verdict: "cannot-tell", reason: "lower-than-papers", severity: "worth" });
    expect(result.alternatives).toHaveLength(2);
  });

  it("says nothing of six digits, nor of a paper later than the reading", () => {
    expect(told({ digits: 6, entries: [on(1986, 97_410)] }).reason).toBe("six-digits");
    expect(told({ entries: [on(2022, 97_410)] }).reason).toBe("may-be-more");
  });

  it("goes by the highest older paper, wherever it stands in the list", () => {
    const entries = [on(1990, 20_000), on(1986, 97_410), on(1999, 30_000)];
    expect(told({ entries }).figures.earlier?.value).toBe(97_410);
  });

  it("rules 100,000 miles more out only where no gap between readings is long enough for them", () => {
    const built = dayOf(1958, 10, 1);
    const shown = on(1964, 61_240, "odometer");
    expect(told({ shown, built, entries: [on(1961, 30_000)] }).reason).toBe("no-room");
    expect(told({ shown, built, entries: [on(1961, 30_000)] }).verdict).toBe("holds");
    expect(told({ shown, entries: [on(1961, 30_000)] }).reason).toBe("may-be-more");
    expect(told({ built, entries: [on(1986, 42_000)] }).reason).toBe("may-be-more");
  });

  it("stays undecided within what the odometer can show", () => {
    const shown = { ...on(2019, 0, "odometer"), miles: estimate(61_240, 5) };
    expect(told({ shown, entries: [on(2018, 61_241)] }).reason).toBe("too-near");
    expect(told({ shown, entries: [on(2018, 61_260)] }).reason).toBe("called-actual-but-lower");
  });
});
