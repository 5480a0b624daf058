import * as fc from "fast-check";
import { expect, test } from "vitest";
import { PictureQuestionKind } from "@evenhand/shared/evidence";
import { camerasInstants } from "./cameras-instants.ts";
import { ELSEWHERE_METERS, type PictureFacts, pictureQuestions } from "./index.ts";

const capture = {
  taken: "2026-05-04T09:00:00",
  offset: null,
  changed: null,
  camera: "Ostra Field 7",
  software: null,
  place: { latitude: 41.5, longitude: -81.2 },
};
const nothing: PictureFacts = {
  isOwn: false,
  capture,
  visitBegan: null,
  metersOff: null,
  bothSides: null,
  otherCar: null,
};
const kinds = (facts: Partial<PictureFacts>) =>
  pictureQuestions({ ...nothing, ...facts }).map(({ kind }) => kind);
const at = (text: string) => new Date(`${text}Z`);

test("of an ordinary photograph nothing is asked", () => {
  expect(kinds({})).toEqual([]);
  expect(kinds({ capture: null, visitBegan: at("2026-05-05T09:00:00") })).toEqual([]);
});

test.each([
  ["the morning before, its clock known", "-05:00", "2026-05-05T14:00:00", ["older-than-visit"]],
  ["within half a day, its clock known", "-05:00", "2026-05-05T01:59:59", []],
  ["a day before, by a clock of anywhere", null, "2026-05-05T08:59:59", []],
  ["more than a day before by any clock", null, "2026-05-05T09:00:01", ["older-than-visit"]],
  ["after it began", "+00:00", "2026-05-04T08:00:00", []],
])("older than the visit: %s", (_, offset, visit, wanted) => {
  expect(kinds({ capture: { ...capture, offset }, visitBegan: at(visit) })).toEqual(wanted);
});

test.each([
  [ELSEWHERE_METERS, []],
  [ELSEWHERE_METERS + 1, ["taken-elsewhere"]],
])("%i m from the site", (metersOff, wanted) => {
  expect(kinds({ metersOff })).toEqual(wanted);
});

test.each([
  ["2026-05-04T09:02:00", []],
  ["2026-05-04T09:02:01", ["edited"]],
  ["2026-05-04T08:00:00", []],
])("written at %s, taken at nine", (changed, wanted) => {
  expect(kinds({ capture: { ...capture, changed } })).toEqual(wanted);
});

test("what is alike is named beside it where it may be seen, and not named otherwise", () => {
  const [both, other] = pictureQuestions({ ...nothing, bothSides: "a", otherCar: { beside: null } });
  expect([both?.kind, both?.beside]).toEqual(["supplied-by-both", "a"]);
  expect([other?.kind, other?.beside]).toEqual(["seen-on-another-car", null]);
});

const everything: PictureFacts = {
  isOwn: true,
  capture: { ...capture, changed: "2026-05-09T10:00:00" },
  visitBegan: at("2026-05-30T09:00:00"),
  metersOff: 12_340,
  bothSides: "a",
  otherCar: { beside: "b" },
};

test("the owner is told the figure, anybody else the fact, and nobody is accused", () => {
  const own = pictureQuestions(everything).map(({ words }) => words);
  expect(own).toHaveLength(PictureQuestionKind.options.length);
  expect(own.join(" ")).toMatch(/25 days before.*12 km.*5 days after/);
  const told = pictureQuestions({ ...everything, isOwn: false }).map(({ words }) => words);
  expect(told.join(" ")).not.toMatch(/25|12 km|5 days/);
  expect([...own, ...told].join(" ")).not.toMatch(
    /fake|forged|fraud|lie|cheat|stolen|copied|undefined|[{}]/i,
  );
});

const edited = (changed: string) =>
  pictureQuestions({ ...nothing, isOwn: true, capture: { ...capture, changed } })[0]?.words;

test("of hours less than two days hours are said", () => {
  expect(edited("2026-05-04T09:30:00")).toContain("less than an hour after");
  expect(edited("2026-05-04T10:30:00")).toContain("an hour after");
  expect(edited("2026-05-05T12:00:00")).toContain("27 hours after");
});

test("an instant lies between its bounds, whatever the clock's offset was", () => {
  const offset = fc.integer({ min: -12 * 4, max: 14 * 4 }).map((quarters) => quarters * 15);
  const instant = fc.integer({ min: 0, max: 4e9 }).map((seconds) => seconds * 1000);
  fc.assert(
    fc.property(instant, offset, (taken, minutes) => {
      const clock = new Date(taken + minutes * 60_000).toISOString().slice(0, 19);
      const size = Math.abs(minutes);
      const said = `${minutes < 0 ? "-" : "+"}${String(Math.floor(size / 60)).padStart(2, "0")}:${String(size % 60).padStart(2, "0")}`;
      expect(camerasInstants({ ...capture, taken: clock, offset: said })).toEqual({
        earliest: taken,
        latest: taken,
      });
      const bounds = camerasInstants({ ...capture, taken: clock, offset: null });
      expect(bounds?.earliest).toBeLessThanOrEqual(taken);
      expect(bounds?.latest).toBeGreaterThanOrEqual(taken);
    }),
    { numRuns: 1000 },
  );
});

test("a clock that is none says nothing", () => {
  expect(camerasInstants({ ...capture, taken: "never" })).toBeNull();
});
