import { describe, expect, it } from "vitest";
import {
  at,
  DAY,
  from,
  FULL,
  HOUR,
  inspector,
  item,
  MINUTE,
  MONDAY,
  planOf,
  request,
  RULES,
  site,
} from "../../testing/builders.ts";
import type { InspectorCalendar, VisitRequest } from "../calendar/index.ts";
import { findOffers } from "./index.ts";

const DAYLONG = { now: MONDAY - 2 * DAY, horizon: { start: MONDAY, end: MONDAY + DAY }, limit: 1_000 };
const hoursOf = (asked: VisitRequest, ...people: InspectorCalendar[]): number[] =>
  findOffers(asked, people, DAYLONG).offers.map(({ start }) => (start - MONDAY) / HOUR);

/** An hour's drive, to the minute: 90 km by road at 25 m/s: 72 km on the great circle. */
const AN_HOUR_NORTH = { latitude: 89_990 / 1.25 / 111_195.08, longitude: 0 };

/** Taken all Monday but between two minutes after eight. */
const takenBut = (first: number, last: number) => [
  { start: at(0), end: at(8) + first * MINUTE },
  { start: at(8) + last * MINUTE, end: at(24) },
];

describe("free hours", () => {
  it("leave room for the way from the base and back", () => {
    const far = inspector({ hours: [from(9, 12)], base: AN_HOUR_NORTH });
    expect(hoursOf(request(), far)).toEqual([10, 10.25, 10.5]);
  });

  it("leave room for the way between two jobs", () => {
    const jobs = [
      { ...from(9, 10), place: AN_HOUR_NORTH },
      { ...from(13, 14), place: AN_HOUR_NORTH },
    ];
    expect(hoursOf(request(), inspector({ hours: [from(8, 15)], engagements: jobs }))).toEqual([
      11, 11.25, 11.5,
    ]);
  });

  it("ask for no way to a break", () => {
    const lunch = { ...from(12, 13), place: null };
    const hours = hoursOf(request(), inspector({ hours: [from(11, 14)], engagements: [lunch] }));
    expect(hours).toEqual([11, 11.25, 11.5, 13, 13.25, 13.5]);
  });

  it("keep the notice period to the end of an offer's life", () => {
    const noticed = inspector({ notice: 2 * DAY + 16 * HOUR });
    expect(hoursOf(request(), noticed)[0]).toBe(16.25);
  });

  it("put only the parts that need it in daylight", () => {
    const plan = planOf([
      { car: "car-1", items: [item("papers.title", 60), item("body.paint", 60, ["daylight"])] },
    ]);
    const winter = site({ daylight: [from(10, 12)] });
    expect(hoursOf(request({ plan, site: winter }), inspector())).toEqual([9, 9.25, 9.5, 9.75, 10]);
  });

  it("give the lift only to the two spells that need it, from any bay", () => {
    const plan = planOf(FULL);
    // On the lift from 65 to 95 and from 145 to 160 minutes; started at 8, the bays are free only for just those.
    const bays = [
      { id: "early", taken: takenBut(65, 95) },
      { id: "late", taken: takenBut(145, 160) },
    ];
    const found = findOffers(request({ plan, site: site({ bays }) }), [inspector()], DAYLONG);
    expect(found.offers.map(({ start, bays: stays }) => [start, ...stays.map(({ bay }) => bay)])).toEqual([
      [at(8), "early", "late"],
    ]);
  });

  it("stay on one bay where one is free for both spells", () => {
    const bays = [
      { id: "busy", taken: [from(10, 11)] },
      { id: "free", taken: [] },
    ];
    const found = findOffers(request({ plan: planOf(FULL), site: site({ bays }) }), [inspector()], DAYLONG);
    expect(found.offers[0]?.bays.map(({ bay }) => bay)).toEqual(["free", "free"]);
  });

  it("wait for the engine to be cold after another visit that ran it", () => {
    const cars = [{ id: "car-1", engagements: [{ ...from(8, 9), needsCold: false, warms: true }] }];
    const asked = request({
      plan: planOf(FULL),
      cars,
      site: site({ open: [from(8, 24)], daylight: [from(0, 24)] }),
    });
    expect(hoursOf(asked, inspector({ hours: [from(8, 24)] }))[0]).toBe(17);
  });

  it("are none on a dealer's closure, outside the radius, with an interest, without the skill, in other money", () => {
    expect(hoursOf(request({ site: site({ closures: [from(0, 24)] }) }), inspector())).toEqual([]);
    expect(hoursOf(request(), inspector({ base: AN_HOUR_NORTH, radius: 71_000 }))).toEqual([]);
    expect(hoursOf(request({ skills: ["welding"] }), inspector())).toEqual([]);
    expect(hoursOf(request({ currency: "EUR" }), inspector())).toEqual([]);
    const conflicts = [
      { code: "interest-in-dealer" as const, kind: "owns" as const, holder: "firm" as const },
    ];
    expect(hoursOf(request(), inspector({ conflicts }))).toEqual([]);
  });

  it("are none where the site has no lift and the visit needs one", () => {
    expect(hoursOf(request({ plan: planOf(FULL), site: site({ bays: [] }) }), inspector())).toEqual([]);
  });

  it("come cheapest first, then soonest, then by inspector", () => {
    const cheap = inspector({
      id: "z",
      hours: [from(15, 16)],
      fees: { currency: "USD", perVisit: 10_000, perExtraCar: 0, perMile: 0 },
    });
    const early = inspector({ id: "b", hours: [from(9, 10)] });
    const same = inspector({ id: "a", hours: [from(9, 9.5)] });
    const { offers } = findOffers(request(), [early, cheap, same], { ...DAYLONG, limit: 5 });
    expect(offers.map(({ inspector: who, start }) => [who, (start - MONDAY) / HOUR])).toEqual([
      ["z", 15],
      ["z", 15.25],
      ["z", 15.5],
      ["a", 9],
      ["b", 9],
    ]);
  });

  it("count the step from the midnight they are told", () => {
    const half = { ...RULES, alignedTo: MONDAY + 10 * MINUTE, step: 60 * MINUTE };
    expect(hoursOf(request({ rules: half }), inspector({ hours: [from(9, 11.75)] }))).toEqual([
      9 + 1 / 6,
      10 + 1 / 6,
      11 + 1 / 6,
    ]);
  });

  it("refuse to guess at a car whose calendar is missing", () => {
    expect(() => hoursOf(request({ cars: [] }), inspector())).toThrow(RangeError);
  });
});
