import type { CarEngagement, VisitRequest } from "../calendar/index.ts";
import {
  type Interval,
  intersect,
  startsTouching,
  startsWithin,
  subtract,
  union,
} from "../interval/index.ts";
import type { CarSpan, LiftSpell } from "../visit-plan/index.ts";

/**
 * An engagement of a car with the time the engine must stand before or after it: a visit that needs a cold engine
 * waits after one that runs it.
 */
export function withSoak(span: CarSpan, taken: CarEngagement, soak: number): Interval {
  return {
    start: taken.start - (span.warms && taken.needsCold ? soak : 0),
    end: taken.end + (span.needsCold && taken.warms ? soak : 0),
  };
}

function carStarts(request: VisitRequest, among: readonly Interval[]): Interval[] {
  let starts = [...among];
  for (const span of request.plan.cars) {
    const car = request.cars.find(({ id }) => id === span.car);
    if (car === undefined) throw new RangeError(`no calendar for car ${span.car}`);
    const taken = car.engagements.map((one) => withSoak(span, one, request.rules.coldSoak));
    starts = subtract(starts, startsTouching(taken, span.from, span.to));
  }
  return starts;
}

const bayStarts = (request: VisitRequest, { from, to }: LiftSpell, among: readonly Interval[]): Interval[] =>
  request.site.bays
    .map(({ taken }) => subtract(among, startsTouching(taken, from, to)))
    .reduce<Interval[]>((any, one) => union(any, one), []);

/**
 * Starts at which the site is open for the whole visit, each car is free (and cold where that is asked), each stay on
 * the lift finds a bay, and each part that needs it lies in daylight; within the given starts.
 */
export function siteStarts(request: VisitRequest, among: readonly Interval[]): Interval[] {
  const { plan, site } = request;
  let starts = intersect(startsWithin(subtract(site.open, site.closures), 0, plan.length), among);
  for (const { daylight, from, to } of plan.segments) {
    if (daylight) starts = intersect(starts, startsWithin(site.daylight, from, to));
  }
  starts = carStarts(request, starts);
  for (const lift of plan.lifts) starts = bayStarts(request, lift, starts);
  return starts;
}
