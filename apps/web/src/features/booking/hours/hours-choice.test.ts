import { describe, expect, test } from "vitest";
import { hoursSearch, type HoursSearch } from "../search.ts";
import { hoursAfter, mondayBeside, otherCars, wishOf, type HoursChoice } from "./hours-choice.ts";

const search: HoursSearch = hoursSearch({
  from: "2026-12-02",
  with: "car-2,car-3",
  moving: "visit-1",
  offer: "offer-1",
  why: "2026-12-03",
});

describe("a choice", () => {
  test.each<[string, HoursChoice, Partial<HoursSearch>]>([
    ["of a day begins there", { choose: "day", day: "2026-12-09" }, { from: "2026-12-09", offer: undefined }],
    [
      "of a skill asks for those who have it",
      { choose: "skill", skill: "engine" },
      { skill: "engine", offer: undefined },
    ],
    [
      "of any skill asks for everybody",
      { choose: "skill", skill: "" },
      { skill: undefined, offer: undefined },
    ],
    ["of cars takes them along", { choose: "cars", cars: ["car-4"] }, { with: "car-4", offer: undefined }],
    ["of no car takes none along", { choose: "cars", cars: [] }, { with: undefined, offer: undefined }],
    ["of the week keeps the offer open", { choose: "view", view: "week" }, { view: "week" }],
    ["of the list keeps the offer open", { choose: "view", view: "list" }, { view: undefined }],
    ["of an offer opens it", { choose: "offer", offer: "offer-2" }, { offer: "offer-2" }],
    [
      "of a day to be explained keeps the offer open",
      { choose: "why", day: "2026-12-05" },
      { why: "2026-12-05" },
    ],
    ["of no explanation closes it", { choose: "no-why" }, { why: undefined }],
  ])("%s", (_, choice, change) => {
    expect(hoursAfter(search, choice)).toEqual({ ...search, ...change });
  });

  test.each(["", "2026-13-02", "soon"])("of a day typed as %j changes nothing", (day) => {
    expect(hoursAfter(search, { choose: "day", day })).toBe(search);
  });

  test("of a skill there is not asks for everybody", () => {
    expect(hoursAfter(search, { choose: "skill", skill: "juggling" }).skill).toBeUndefined();
  });
});

describe("what is asked of the service", () => {
  test("is a month of days for the list", () => {
    expect(wishOf(search, "2026-12-02")).toEqual({
      from: "2026-12-02",
      until: "2026-12-31",
      with: "car-2,car-3",
      skills: undefined,
      moving: "visit-1",
    });
  });

  test("is Monday to Sunday for the week of the day", () => {
    const week = hoursAfter(search, { choose: "view", view: "week" });
    // A Wednesday, and a Sunday that ends its week.
    expect(wishOf(week, "2026-12-02")).toMatchObject({ from: "2026-11-30", until: "2026-12-06" });
    expect(wishOf(week, "2026-12-06")).toMatchObject({ from: "2026-11-30", until: "2026-12-06" });
  });
});

test("the week before and after begin on their Mondays", () => {
  expect(mondayBeside("2026-12-06", -1)).toBe("2026-11-23");
  expect(mondayBeside("2026-12-06", 1)).toBe("2026-12-07");
});

test("what is chosen is read again from the address as it was", () => {
  const chosen = hoursAfter(search, { choose: "cars", cars: ["car-7", "car-8"] });
  expect(otherCars(hoursSearch({ ...chosen }))).toEqual(["car-7", "car-8"]);
  expect(otherCars({})).toEqual([]);
});
