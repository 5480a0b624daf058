import type { Skill, VisitStage } from "@evenhand/shared/booking";
import type { Conflict } from "../calendar/index.ts";
import type { Interval } from "../interval/index.ts";

/**
 * Why an hour is not offered, or a booking refused: a stable code (`RefusedHourCode`) and the figures that say what
 * would work. Instants are epoch milliseconds, lengths milliseconds, distances meters, money minor units.
 */
export type RefusedHour =
  /** Too soon: the first start the inspector's notice allows. */
  | { readonly code: "notice"; readonly earliest: number }
  /** Starts lie on a step: the ones before and after. */
  | { readonly code: "off-the-step"; readonly earlier: number; readonly later: number }
  /** The visit is not within opening hours: the nearest stretch that is long enough for it, if any. */
  | { readonly code: "site-closed"; readonly nearest: Interval | null }
  | { readonly code: "dealer-closed"; readonly closure: Interval }
  /** No lift free for this stay on it; `bays` says how many the site has. */
  | {
      readonly code: "no-bay";
      readonly car: string;
      readonly spell: 1 | 2;
      readonly needed: Interval;
      readonly bays: number;
    }
  /** A part that needs daylight lies outside it: the nearest daylight, `null` in the polar night. */
  | {
      readonly code: "no-daylight";
      readonly car: string;
      readonly stage: VisitStage;
      readonly needed: Interval;
      readonly nearest: Interval | null;
    }
  | { readonly code: "car-taken"; readonly car: string; readonly taken: Interval }
  /** Between another visit that runs the engine and one that needs it cold it must stand; `until` or `before`. */
  | { readonly code: "car-not-cold"; readonly car: string; readonly taken: Interval; readonly soak: number }
  /** Leaving the base or being back lies outside the inspector's hours; the nearest stretch that is long enough. */
  | { readonly code: "outside-hours"; readonly away: Interval; readonly nearest: Interval | null }
  | { readonly code: "inspector-taken"; readonly taken: Interval }
  /** No time to drive from the job before, or to the one after. */
  | {
      readonly code: "travel";
      readonly direction: "before" | "after";
      readonly needed: number;
      readonly available: number;
    }
  | { readonly code: "outside-radius"; readonly distance: number; readonly radius: number }
  | { readonly code: "lacks-skill"; readonly skills: readonly Skill[] }
  | { readonly code: "not-independent"; readonly conflicts: readonly Conflict[] }
  | { readonly code: "other-currency"; readonly currency: string; readonly wanted: string }
  /** Fees changed since the offer. */
  | { readonly code: "price-changed"; readonly offered: number; readonly total: number };
