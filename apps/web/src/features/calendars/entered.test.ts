import { expect, test } from "vitest";
import { firstCalendar, timeOf, wrongFields } from "./calendar-form.ts";
import { calendarFields, siteFields } from "./fields.ts";
import { firstSite, newBay, newClosure, siteOf, wrongSiteFields } from "./site-form.ts";

const calendar = {
  ...firstCalendar("Maribel Okonjo-Strand"),
  latitude: "39.74",
  longitude: "-104.99",
  perVisit: "455.50",
};

test("an inspector's time goes in meters, meters a second, minutes and cents", () => {
  expect(wrongFields(calendar)).toEqual([]);
  const time = timeOf(calendar);
  // A mile is 1,609.344 m exactly.
  expect(time.radius).toBe(160_934);
  expect(time.speed).toBeCloseTo(20.1168, 10);
  expect(time.notice).toBe(24 * 60);
  expect(time.fees).toEqual({ currency: "USD", perVisit: 45_550, perExtraCar: 0, perMile: 0 });
});

test("an empty field is no zero, and what is wrong has a name to be called by", () => {
  const wrong = wrongFields({ ...calendar, latitude: "", perVisit: "much" });
  expect(wrong.map((name) => calendarFields[name].label)).toEqual(["place.latitude", "calendar.per-visit"]);
  const wrongOfSite = wrongSiteFields({ ...firstSite(), longitude: "-104.99", perLiftSpell: "free" });
  expect(wrongOfSite.map((name) => siteFields[name].label)).toEqual(["place.latitude", "site.per-lift"]);
});

test("times without access go with seconds, also where none were typed", () => {
  const closure = { ...newClosure("America/Denver"), from: "2026-12-21T09:00", until: "2026-12-21T12:30:00" };
  const site = siteOf({ ...firstSite(), closures: [closure], bays: [newBay()] });
  expect(site.closures).toEqual([{ from: "2026-12-21T09:00:00", until: "2026-12-21T12:30:00", note: "" }]);
});
