import type { VisitRequest } from "../calendar/index.ts";
import { assignBays } from "../free-hours/assign-bays.ts";
import { withSoak } from "../free-hours/site-starts.ts";
import { holds, type Interval, overlap } from "../interval/index.ts";
import type { RefusedHour } from "../refused-hour/index.ts";
import type { CarSpan } from "../visit-plan/index.ts";

const shift = ({ from, to }: { from: number; to: number }, start: number): Interval => ({
  start: start + from,
  end: start + to,
});

/** The stretch nearest in time among those long enough; `null` where there is none. */
export function nearestStretch(list: readonly Interval[], wanted: Interval): Interval | null {
  const long = wanted.end - wanted.start;
  const apart = ({ start, end }: Interval): number => Math.max(start - wanted.start, wanted.end - end, 0);
  let nearest: Interval | null = null;
  for (const one of list) {
    if (one.end - one.start >= long && (nearest === null || apart(one) < apart(nearest))) nearest = one;
  }
  return nearest;
}

function openingRefusals({ site, plan }: VisitRequest, start: number): RefusedHour[] {
  const visit = { start, end: start + plan.length };
  const closure = site.closures.find((one) => overlap(one, visit));
  const refusals: RefusedHour[] = closure === undefined ? [] : [{ code: "dealer-closed", closure }];
  if (!holds(site.open, visit))
    refusals.push({ code: "site-closed", nearest: nearestStretch(site.open, visit) });
  return refusals;
}

function daylightRefusals({ site, plan }: VisitRequest, start: number): RefusedHour[] {
  return plan.segments
    .filter((segment) => segment.daylight && !holds(site.daylight, shift(segment, start)))
    .map((segment) => {
      const needed = shift(segment, start);
      const { car, stage } = segment;
      return { code: "no-daylight", car, stage, needed, nearest: nearestStretch(site.daylight, needed) };
    });
}

function carRefusals(request: VisitRequest, span: CarSpan, start: number): RefusedHour[] {
  const needed = shift(span, start);
  const soak = request.rules.coldSoak;
  const engagements = request.cars.find(({ id }) => id === span.car)?.engagements ?? [];
  return engagements.flatMap((one): RefusedHour[] => {
    const taken = { start: one.start, end: one.end };
    if (overlap(taken, needed)) return [{ code: "car-taken", car: span.car, taken }];
    return overlap(withSoak(span, one, soak), needed)
      ? [{ code: "car-not-cold", car: span.car, taken, soak }]
      : [];
  });
}

function bayRefusals({ site, plan }: VisitRequest, start: number): RefusedHour[] {
  return plan.lifts
    .filter((lift) => assignBays(site, [lift], start) === null)
    .map((lift) => {
      const { car, spell } = lift;
      return { code: "no-bay", car, spell, needed: shift(lift, start), bays: site.bays.length };
    });
}

/** What speaks against a start whoever inspects: the step, opening hours, daylight, cars, bays. */
export function siteRefusals(request: VisitRequest, start: number): RefusedHour[] {
  const { step, alignedTo } = request.rules;
  const past = (((start - alignedTo) % step) + step) % step;
  const offStep: RefusedHour[] =
    past === 0 ? [] : [{ code: "off-the-step", earlier: start - past, later: start - past + step }];
  return [
    ...offStep,
    ...openingRefusals(request, start),
    ...daylightRefusals(request, start),
    ...request.plan.cars.flatMap((span) => carRefusals(request, span, start)),
    ...bayRefusals(request, start),
  ];
}
