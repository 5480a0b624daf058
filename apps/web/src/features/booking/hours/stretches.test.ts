import type { DayExplained, RefusedHourBody } from "@evenhand/shared/http/booking";
import { expect, test } from "vitest";
import { stretchesOf } from "./stretches.ts";

const hour = (time: string, site: readonly RefusedHourBody[], offeredBy: readonly string[] = []) => ({
  start: `2026-12-02T${time}:00Z`,
  offeredBy: [...offeredBy],
  site: [...site],
  inspectors: [],
});
const times = (hours: DayExplained["hours"]): readonly string[] =>
  stretchesOf(hours).map(({ first, last }) => `${first.start.slice(11, 16)}–${last.start.slice(11, 16)}`);

const closed: RefusedHourBody = { code: "site-closed", nearest: null };
const early = (earliest: string): RefusedHourBody => ({ code: "notice", earliest });

test("starts with the same in the way are one stretch, and a free one between them parts it", () => {
  const hours = [
    hour("14:00", [closed]),
    hour("14:30", [closed]),
    hour("15:00", []),
    hour("15:30", [closed]),
  ];
  expect(times(hours)).toEqual(["14:00–14:30", "15:00–15:00", "15:30–15:30"]);
});

test("another figure of the same reason is no other reason", () => {
  const hours = [
    hour("14:00", [early("2026-12-03T14:00:00Z")]),
    hour("14:30", [early("2026-12-03T14:30:00Z")]),
  ];
  expect(times(hours)).toEqual(["14:00–14:30"]);
});

test("the order in which inspectors offer makes no difference, who they are does", () => {
  const hours = [hour("14:00", [], ["a", "b"]), hour("14:30", [], ["b", "a"]), hour("15:00", [], ["a"])];
  expect(times(hours)).toEqual(["14:00–14:30", "15:00–15:00"]);
});

test("a day without starts has no stretch", () => {
  expect(times([])).toEqual([]);
});
