import type { CarDealing, InterestKind, Place, Skill } from "@evenhand/shared/booking";
import type { Interval } from "../interval/index.ts";
import type { TravelRule } from "../travel/index.ts";
import type { VisitPlan } from "../visit-plan/index.ts";

/**
 * What is known of everybody's time when an hour is looked for. Recurrences are laid out beforehand
 * (`recurrence/`), so here are only normal lists of stretches in epoch milliseconds (`interval/`). Money is whole
 * minor units.
 */

/** Time of an inspector that is taken. A place asks for travel to it and from it; `null` (a break, a day off) for none. */
export type Engagement = Interval & { readonly place: Place | null };

/** Why an inspector may not accept work on this car (`independence/`). */
export type Conflict =
  | {
      readonly code: "interest-in-dealer";
      readonly kind: InterestKind;
      readonly holder: "inspector" | "firm";
    }
  | { readonly code: "dealt-with-car"; readonly dealing: CarDealing; readonly car: string };

export type InspectorFees = {
  readonly currency: string;
  readonly perVisit: number;
  /** For each car after the first. */
  readonly perExtraCar: number;
  /** By road, out and back. */
  readonly perMile: number;
};

export type InspectorCalendar = {
  readonly id: string;
  readonly base: Place;
  /** Meters, great circle. */
  readonly radius: number;
  /** Usual speed of travel, meters per second. */
  readonly speed: number;
  /** Milliseconds between booking and start. */
  readonly notice: number;
  /** Normal list. Hours hold the travel from the base and back as well. */
  readonly hours: readonly Interval[];
  readonly engagements: readonly Engagement[];
  readonly skills: readonly Skill[];
  readonly fees: InspectorFees;
  readonly conflicts: readonly Conflict[];
};

/** One lift; `taken` is a normal list. */
export type BayCalendar = { readonly id: string; readonly taken: readonly Interval[] };

export type SiteCalendar = {
  readonly id: string;
  readonly place: Place;
  /** Normal lists: opening hours, the dealer's closures, sunrise to sunset. */
  readonly open: readonly Interval[];
  readonly closures: readonly Interval[];
  readonly daylight: readonly Interval[];
  readonly bays: readonly BayCalendar[];
  readonly fees: { readonly currency: string; readonly perVisit: number; readonly perLiftSpell: number };
};

/** A visit the car is taken for, and what that visit asks of it and does to it. */
export type CarEngagement = Interval & { readonly needsCold: boolean; readonly warms: boolean };

export type CarCalendar = { readonly id: string; readonly engagements: readonly CarEngagement[] };

export type BookingRules = {
  /** Offers start on this step, counted from `alignedTo`, a midnight of the site. Milliseconds. */
  readonly step: number;
  readonly alignedTo: number;
  /** An offer can be booked for so long after it was made: the notice period is kept to the end of it. */
  readonly offerLife: number;
  /** How long a warm engine takes to be cold through; common practice, no source. */
  readonly coldSoak: number;
};

export const DEFAULT_RULES: BookingRules = {
  step: 15 * 60_000,
  alignedTo: 0,
  offerLife: 10 * 60_000,
  coldSoak: 8 * 3_600_000,
};

/** A visit for which hours are looked for. */
export type VisitRequest = {
  readonly plan: VisitPlan;
  readonly site: SiteCalendar;
  /** One for each car of the plan. */
  readonly cars: readonly CarCalendar[];
  /** Skills the inspector must have. */
  readonly skills: readonly Skill[];
  /** The currency the buyer pays in; who charges another is not offered. */
  readonly currency: string;
  readonly travel: TravelRule;
  readonly rules: BookingRules;
};
