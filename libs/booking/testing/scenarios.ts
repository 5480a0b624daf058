import * as fc from "fast-check";
import type { Engagement, InspectorCalendar, SiteCalendar, VisitRequest } from "../src/calendar/index.ts";
import { type Interval, normalize } from "../src/interval/index.ts";
import { FULL, inspector, item, MINUTE, MONDAY, PAPERS, planOf, request, site } from "./builders.ts";

/** Two days in which everything happens. */
export const HORIZON: Interval = { start: MONDAY, end: MONDAY + 48 * 60 * MINUTE };

const stretch = (longest: number): fc.Arbitrary<Interval> =>
  fc
    .tuple(fc.integer({ min: 0, max: 48 * 60 }), fc.integer({ min: 10, max: longest }))
    .map(([start, long]) => ({ start: MONDAY + start * MINUTE, end: MONDAY + (start + long) * MINUTE }));
const list = (longest: number, most: number, least = 0): fc.Arbitrary<Interval[]> =>
  fc.array(stretch(longest), { minLength: least, maxLength: most }).map(normalize);

/** Up to about an hour and a half apart at 25 m/s. */
export const place = fc.record({
  latitude: fc.double({ min: 0, max: 0.5, noNaN: true }),
  longitude: fc.double({ min: 0, max: 0.5, noNaN: true }),
});

export const engagement: fc.Arbitrary<Engagement> = fc
  .tuple(stretch(240), fc.option(place))
  .map(([one, where]) => ({ ...one, place: where }));

const plan = fc
  .oneof(
    fc.constant(PAPERS),
    fc.constant(FULL),
    fc.constant([
      ...FULL,
      { car: "car-2", items: [item("body.paint", 20, ["daylight"]), item("underbody.rails", 15, ["lift"])] },
    ]),
    fc
      .integer({ min: 5, max: 90 })
      .map((minutes) => [{ car: "car-1", items: [item("underbody.rails", minutes, ["lift", "daylight"])] }]),
  )
  .map(planOf);

const anySite: fc.Arbitrary<SiteCalendar> = fc
  .record({
    place,
    open: list(1_500, 4, 2),
    closures: list(200, 2),
    daylight: list(1_500, 4, 2),
    bays: fc
      .array(list(200, 4), { minLength: 0, maxLength: 3 })
      .map((all) => all.map((taken, i) => ({ id: `bay-${i}`, taken }))),
  })
  .map(site);

const anyInspector = (id: string): fc.Arbitrary<InspectorCalendar> =>
  fc
    .record({
      id: fc.constant(id),
      base: place,
      radius: fc.constantFrom(20_000, 200_000, 200_000),
      speed: fc.integer({ min: 10, max: 40 }),
      notice: fc.integer({ min: 0, max: 600 }).map((minutes) => minutes * MINUTE),
      hours: list(1_500, 4, 2),
      engagements: fc.array(engagement, { maxLength: 4 }),
      skills: fc.constantFrom([], ["body" as const]),
      fees: fc.constantFrom(
        { currency: "USD", perVisit: 40_000, perExtraCar: 0, perMile: 0 },
        { currency: "USD", perVisit: 40_000, perExtraCar: 100, perMile: 61 },
        { currency: "EUR", perVisit: 1, perExtraCar: 1, perMile: 1 },
      ),
    })
    .map(inspector);

const carEngagement = fc
  .tuple(stretch(180), fc.boolean(), fc.boolean())
  .map(([one, needsCold, warms]) => ({ ...one, needsCold, warms }));

export type Scenario = {
  readonly now: number;
  readonly request: VisitRequest;
  readonly inspectors: InspectorCalendar[];
};

/** Everybody's time at random: most have some offers, many are tight, some have none. */
export const scenario: fc.Arbitrary<Scenario> = fc
  .record({
    now: fc.integer({ min: -6 * 60, max: 12 * 60 }).map((minute) => MONDAY + minute * MINUTE),
    plan,
    site: anySite,
    engagements: fc.array(carEngagement, { maxLength: 2 }),
    skills: fc.constantFrom([], [], [], [], ["body" as const]),
    inspectors: fc.tuple(anyInspector("a"), anyInspector("b"), anyInspector("c")),
  })
  .map(({ now, plan: chosen, site: where, engagements, skills, inspectors }) => ({
    now,
    request: request({
      plan: chosen,
      site: where,
      skills,
      cars: chosen.cars.map(({ car }, i) => ({ id: car, engagements: i === 0 ? engagements : [] })),
    }),
    inspectors,
  }));
