import type { InspectorCalendar, VisitRequest } from "../calendar/index.ts";
import { type Interval, intersect, startsWithin, subtract } from "../interval/index.ts";

/** An inspector's time seen from one site: how long to and from everything. Milliseconds. */
export type SeenFromSite = {
  readonly inspector: InspectorCalendar;
  /** From the base to the site, and back. */
  readonly out: number;
  readonly back: number;
  /** What is taken, with the travel from it to the site and from the site to it. */
  readonly taken: readonly (Interval & { readonly fromIt: number; readonly toIt: number })[];
};

/** Travel between the site and the base and every engagement, asked once. */
export function seeFromSite(request: VisitRequest, inspector: InspectorCalendar): SeenFromSite {
  const { travel, site } = request;
  const { base, speed, engagements } = inspector;
  return {
    inspector,
    out: travel(base, site.place, speed).milliseconds,
    back: travel(site.place, base, speed).milliseconds,
    taken: engagements.map(({ start, end, place }) => ({
      start,
      end,
      fromIt: place === null ? 0 : travel(place, site.place, speed).milliseconds,
      toIt: place === null ? 0 : travel(site.place, place, speed).milliseconds,
    })),
  };
}

/** Starts at which a visit would run into an engagement or the way to it or from it. Sorted by start. */
function blockedStarts(request: VisitRequest, inspector: InspectorCalendar, bounds: Interval): Interval[] {
  const { travel, site, plan } = request;
  const { speed, engagements } = inspector;
  const blocked: Interval[] = [];
  for (const { start, end, place } of engagements) {
    const toIt = place === null ? 0 : travel(site.place, place, speed).milliseconds;
    const fromIt = place === null ? 0 : travel(place, site.place, speed).milliseconds;
    const first = start - toIt - plan.length + 1;
    if (first < bounds.end && end + fromIt > bounds.start) blocked.push({ start: first, end: end + fromIt });
  }
  return blocked.sort((a, b) => a.start - b.start);
}

/**
 * Starts at which the inspector can be there, within the given ones.
 *
 * The way from the base and back lies within the hours; between two jobs there is time to drive from one to the other.
 * Each of the two is asked for by itself, never one instead of the other: so taking away an engagement can only add
 * starts, whatever was in the calendar and however the roads run.
 */
export function inspectorStarts(
  request: VisitRequest,
  inspector: InspectorCalendar,
  among: readonly Interval[],
): Interval[] {
  const { travel, site, plan } = request;
  const { base, speed, hours } = inspector;
  const out = travel(base, site.place, speed).milliseconds;
  const back = travel(site.place, base, speed).milliseconds;
  const within = intersect(startsWithin(hours, -out, plan.length + back), among);
  const [first] = within;
  if (first === undefined) return [];
  const bounds = { start: first.start, end: within.at(-1)!.end };
  return subtract(within, blockedStarts(request, inspector, bounds));
}
