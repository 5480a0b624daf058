import type { InspectorCalendar, VisitRequest } from "../calendar/index.ts";
import { type BayStay, keepBays } from "../free-hours/assign-bays.ts";
import { seeFromSite } from "../free-hours/inspector-starts.ts";
import { standingRefusals } from "../free-hours/standing-refusals.ts";
import type { RefusedHour } from "../refused-hour/index.ts";
import { type VisitCost, visitCost } from "../visit-cost/index.ts";
import { inspectorRefusals } from "./inspector-refusals.ts";
import { siteRefusals } from "./site-refusals.ts";

/** What of an offer is booked: the hour, the bays it named, and the price the buyer saw. */
export type BookableOffer = {
  readonly start: number;
  readonly bays: readonly Pick<BayStay, "bay">[];
  readonly cost: Pick<VisitCost, "total">;
};

/** Everything as it stands now, read in the booking transaction. */
export type BookingState = {
  readonly now: number;
  readonly request: VisitRequest;
  readonly inspector: InspectorCalendar;
};

export type BookingDecision =
  | {
      readonly kind: "bookable";
      readonly end: number;
      readonly bays: readonly BayStay[];
      readonly cost: VisitCost;
    }
  | { readonly kind: "refused"; readonly reasons: readonly RefusedHour[] };

/**
 * Can this offer be booked as things stand now?
 *
 * The same demands as in `free-hours/`, asked of one start instead of worked out as sets, so each failure can name its
 * figures. An offer of at most `rules.offerLife` ago, with nothing else changed, is always bookable (a property test
 * of `free-hours/` holds the two together). Bays are chosen anew where the ones named have gone, since any will do.
 *
 * For moving an existing appointment, leave its own stretches out of the calendars.
 *
 * @example
 * canBook(offer, { now, request, inspector }) // { kind: "refused", reasons: [{ code: "travel", direction: "before", … }] }
 */
export function canBook(offer: BookableOffer, { now, request, inspector }: BookingState): BookingDecision {
  const { plan, site } = request;
  const cost = visitCost(request, inspector);
  const reasons: RefusedHour[] = [
    ...standingRefusals(request, inspector),
    ...siteRefusals(request, offer.start),
    ...inspectorRefusals(seeFromSite(request, inspector), plan.length, offer.start, now + inspector.notice),
  ];
  if (cost.total !== offer.cost.total) {
    reasons.push({ code: "price-changed", offered: offer.cost.total, total: cost.total });
  }
  const named = offer.bays.map(({ bay }) => bay);
  const bays = keepBays(site, plan.lifts, offer.start, named);
  return reasons.length > 0 || bays === null
    ? { kind: "refused", reasons }
    : { kind: "bookable", end: offer.start + plan.length, bays, cost };
}
