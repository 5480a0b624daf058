import type { SiteCalendar } from "../calendar/index.ts";
import { findHolding, type Interval } from "../interval/index.ts";
import type { LiftSpell } from "../visit-plan/index.ts";

export type BayStay = Interval & { readonly car: string; readonly bay: string };

/** Is nothing of the stretch taken? */
const isFree = (taken: readonly Interval[], { start, end }: Interval): boolean =>
  findHolding(taken, start) === undefined && !taken.some((one) => one.start >= start && one.start < end);

const staysOf = (lifts: readonly LiftSpell[], start: number): Omit<BayStay, "bay">[] =>
  lifts.map(({ car, from, to }) => ({ car, start: start + from, end: start + to }));

/**
 * A bay for each stay on the lift of a visit that starts at `start`; `null` where a stay finds none. One bay for the
 * whole visit where one is free, else the first that is, in the site's own order.
 */
export function assignBays(
  { bays }: SiteCalendar,
  lifts: readonly LiftSpell[],
  start: number,
): BayStay[] | null {
  const stays = staysOf(lifts, start);
  const forAll = bays.find(({ taken }) => stays.every((stay) => isFree(taken, stay)));
  const assigned: BayStay[] = [];
  for (const stay of stays) {
    const bay = forAll ?? bays.find(({ taken }) => isFree(taken, stay));
    if (bay === undefined) return null;
    assigned.push({ ...stay, bay: bay.id });
  }
  return assigned;
}

/** The bays named, where each is still free for its stay; else as `assignBays` has it. */
export function keepBays(
  site: SiteCalendar,
  lifts: readonly LiftSpell[],
  start: number,
  named: readonly string[],
): BayStay[] | null {
  const kept = staysOf(lifts, start).flatMap((stay, index) => {
    const bay = site.bays.find(({ id }) => id === named[index]);
    return bay !== undefined && isFree(bay.taken, stay) ? [{ ...stay, bay: bay.id }] : [];
  });
  return kept.length === lifts.length ? kept : assignBays(site, lifts, start);
}
