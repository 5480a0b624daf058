import {
  type BookingRules,
  DEFAULT_RULES,
  type InspectorCalendar,
  type SiteCalendar,
  type VisitRequest,
} from "../src/calendar/index.ts";
import { greatCircleTravel } from "../src/travel/index.ts";
import {
  type CarToVisit,
  GATE_SUBJECTS,
  planVisit,
  type VisitItem,
  type VisitPlan,
} from "../src/visit-plan/index.ts";

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;
/** A Monday midnight, so that small numbers of hours read as times of day. */
export const MONDAY = Date.UTC(2026, 5, 1);

export const at = (hour: number): number => MONDAY + hour * HOUR;
export const from = (start: number, end: number): { start: number; end: number } => ({
  start: at(start),
  end: at(end),
});

export const planOf = (cars: readonly CarToVisit[]): VisitPlan => {
  const planned = planVisit(cars);
  if (planned.kind !== "planned") throw new Error(JSON.stringify(planned.problems));
  return planned.plan;
};

export const item = (
  id: string,
  minutes: number,
  needs: VisitItem["needs"] = [],
  more: Partial<VisitItem> = {},
): VisitItem => ({
  item: id,
  minutes,
  needs,
  ...more,
});

/** Thirty minutes of papers. */
export const PAPERS: readonly CarToVisit[] = [{ car: "car-1", items: [item("papers.title", 30)] }];

/** Cold proof 10, body in daylight 50, cold start 5, lift 25 + 5, road 30, hot 20, lift again 10 + 5: 160 minutes. */
export const FULL: readonly CarToVisit[] = [
  {
    car: "car-1",
    items: [
      item("visit.cold-proof", 10, ["cold-engine"]),
      item("body.paint", 50, ["daylight"]),
      item("road.cold-start", 5, ["cold-engine", "road"]),
      item("brakes.lines", 25, ["lift"], { gate: GATE_SUBJECTS }),
      item("road.tracking", 30, ["road"]),
      item("engine.oil-pressure", 20, ["hot-engine"]),
      item("driveline.fresh-leaks", 10, ["lift", "hot-engine"]),
    ],
  },
];

export const inspector = (more: Partial<InspectorCalendar> = {}): InspectorCalendar => ({
  id: "inspector-1",
  base: { latitude: 0, longitude: 0 },
  radius: 200_000,
  speed: 25,
  notice: 0,
  hours: [from(8, 18)],
  engagements: [],
  skills: [],
  fees: { currency: "USD", perVisit: 40_000, perExtraCar: 15_000, perMile: 50 },
  conflicts: [],
  ...more,
});

export const site = (more: Partial<SiteCalendar> = {}): SiteCalendar => ({
  id: "site-1",
  place: { latitude: 0, longitude: 0 },
  open: [from(8, 18)],
  closures: [],
  daylight: [from(6, 20)],
  bays: [
    { id: "bay-1", taken: [] },
    { id: "bay-2", taken: [] },
  ],
  fees: { currency: "USD", perVisit: 2_000, perLiftSpell: 1_500 },
  ...more,
});

export const RULES: BookingRules = { ...DEFAULT_RULES, alignedTo: MONDAY };

export const request = (more: Partial<VisitRequest> = {}): VisitRequest => {
  const plan = more.plan ?? planOf(PAPERS);
  return {
    plan,
    site: site(),
    cars: plan.cars.map(({ car }) => ({ id: car, engagements: [] })),
    skills: [],
    currency: "USD",
    travel: greatCircleTravel,
    rules: RULES,
    ...more,
  };
};
