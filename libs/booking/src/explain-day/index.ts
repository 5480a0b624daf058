import type { InspectorCalendar, VisitRequest } from "../calendar/index.ts";
import { inspectorRefusals } from "../can-book/inspector-refusals.ts";
import { siteRefusals } from "../can-book/site-refusals.ts";
import { seeFromSite } from "../free-hours/inspector-starts.ts";
import { standingRefusals } from "../free-hours/standing-refusals.ts";
import type { Interval } from "../interval/index.ts";
import type { RefusedHour } from "../refused-hour/index.ts";

/** One start on the step, who is offered at it, and what speaks against the rest. */
export type ExplainedHour = {
  readonly start: number;
  readonly offeredBy: readonly string[];
  /** Against the hour whoever inspects. */
  readonly site: readonly RefusedHour[];
  /** Against the hour with one inspector. */
  readonly inspectors: readonly { readonly inspector: string; readonly reasons: readonly RefusedHour[] }[];
};

export type DayQuestion = { readonly now: number; readonly day: Interval };

/**
 * For every start on the step in a day: who is offered, and for everyone who is not, why, with figures. An inspector is
 * offered at a start here exactly when `findOffers` offers them.
 *
 * @example
 * explainDay(request, [inspector], { now, day })[0]
 * // { start, offeredBy: [], site: [{ code: "site-closed", nearest: … }], inspectors: [] }
 */
export function explainDay(
  request: VisitRequest,
  inspectors: readonly InspectorCalendar[],
  { now, day }: DayQuestion,
): ExplainedHour[] {
  const { step, alignedTo, offerLife } = request.rules;
  const known = inspectors.map((inspector) => ({
    seen: seeFromSite(request, inspector),
    standing: standingRefusals(request, inspector),
    earliest: now + inspector.notice + offerLife,
  }));
  const hours: ExplainedHour[] = [];
  for (
    let start = alignedTo + Math.ceil((day.start - alignedTo) / step) * step;
    start < day.end;
    start += step
  ) {
    const site = siteRefusals(request, start);
    const asked = known.map(({ seen, standing, earliest }) => ({
      inspector: seen.inspector.id,
      reasons: [...standing, ...inspectorRefusals(seen, request.plan.length, start, earliest)],
    }));
    const offeredBy = site.length > 0 ? [] : asked.filter(({ reasons }) => reasons.length === 0);
    hours.push({
      start,
      offeredBy: offeredBy.map(({ inspector }) => inspector),
      site,
      inspectors: asked.filter(({ reasons }) => reasons.length > 0),
    });
  }
  return hours;
}
