import type { InspectorCalendar, VisitRequest } from "../calendar/index.ts";

/** The international mile in meters (NIST SP 811, exact). */
const METERS_A_MILE = 1609.344;

/** Money in whole minor units of one currency. */
export type VisitCost = {
  readonly currency: string;
  readonly visit: number;
  readonly travel: number;
  readonly site: number;
  readonly total: number;
};

/**
 * What a visit costs: the inspector's fee for the visit and each further car, the miles by road from the base and back,
 * and the site's fees. Miles are not rounded; the fee for them is, to the nearest minor unit.
 *
 * Travel is always charged from the base, also when the inspector comes from a job nearby, so that the price of an
 * hour does not depend on who else books.
 *
 * @example
 * // 40 000 cents a visit, 50 a mile, 10 miles by road, site 2 000 and 1 500 for the one stay on the lift
 * visitCost(request, inspector) // { currency: "USD", visit: 40000, travel: 1000, site: 3500, total: 44500 }
 */
export function visitCost(request: VisitRequest, inspector: InspectorCalendar): VisitCost {
  const { plan, site, travel, currency } = request;
  const { fees, base, speed } = inspector;
  const out = travel(base, site.place, speed).meters;
  const back = travel(site.place, base, speed).meters;
  const cost = {
    visit: fees.perVisit + fees.perExtraCar * (plan.cars.length - 1),
    travel: Math.round((fees.perMile * (out + back)) / METERS_A_MILE),
    site: site.fees.perVisit + site.fees.perLiftSpell * plan.lifts.length,
  };
  return { currency, ...cost, total: cost.visit + cost.travel + cost.site };
}
