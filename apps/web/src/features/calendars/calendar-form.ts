import type { Skill } from "@evenhand/shared/booking";
import type { CalendarSeen, InspectorTime } from "@evenhand/shared/http/calendars";
import { minorDigits, parseMoney, usualCurrency } from "../../ui/money";
import { firstHours, hoursOf, typedHours, type HoursTyped } from "./weekly-hours";
import { ownZone } from "../../entities/time/zone-time";

const METERS_A_MILE = 1609.344;
/** Exactly: a mile by 3,600 seconds. */
const METERS_PER_SECOND_A_MPH = METERS_A_MILE / 3600;

/** An inspector's time as it is typed: American units, hours of notice, amounts with a decimal point. */
export interface CalendarTyped {
  readonly name: string;
  readonly hours: HoursTyped;
  readonly latitude: string;
  readonly longitude: string;
  readonly radius: string;
  readonly speed: string;
  readonly notice: string;
  readonly currency: string;
  readonly perVisit: string;
  readonly perExtraCar: string;
  readonly perMile: string;
  readonly skills: readonly Skill[];
  readonly accepting: boolean;
}

export const firstCalendar = (name: string): CalendarTyped => ({
  name,
  hours: firstHours(ownZone()),
  latitude: "",
  longitude: "",
  radius: "100",
  speed: "45",
  notice: "24",
  currency: usualCurrency,
  perVisit: "",
  perExtraCar: "0",
  perMile: "0",
  skills: [],
  accepting: true,
});

export const amountText = (minor: number, currency: string): string => {
  const digits = minorDigits(currency);
  return (minor / 10 ** digits).toFixed(digits).replace(/\.0+$/, "");
};

const round = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

export const typedCalendar = (seen: CalendarSeen): CalendarTyped => ({
  name: seen.name,
  hours: typedHours(seen.hours),
  latitude: String(seen.base.latitude),
  longitude: String(seen.base.longitude),
  radius: round(seen.radius / METERS_A_MILE, 1),
  speed: round(seen.speed / METERS_PER_SECOND_A_MPH, 1),
  notice: round(seen.notice / 60, 2),
  currency: seen.fees.currency,
  perVisit: amountText(seen.fees.perVisit, seen.fees.currency),
  perExtraCar: amountText(seen.fees.perExtraCar, seen.fees.currency),
  perMile: amountText(seen.fees.perMile, seen.fees.currency),
  skills: seen.skills,
  accepting: seen.accepting,
});

/** A number as typed, or not one at all: an empty field is no zero. */
export const numberOf = (typed: string): number => (typed.trim() === "" ? Number.NaN : Number(typed));

export type CalendarNumber =
  "latitude" | "longitude" | "radius" | "speed" | "notice" | "perVisit" | "perExtraCar" | "perMile";
export type CalendarText = "name" | "currency";

/** Fields that hold no number. */
export const wrongFields = (typed: CalendarTyped): readonly CalendarNumber[] => [
  ...(["latitude", "longitude", "radius", "speed", "notice"] as const).filter((name) =>
    Number.isNaN(numberOf(typed[name])),
  ),
  ...(["perVisit", "perExtraCar", "perMile"] as const).filter(
    (name) => parseMoney(typed[name], typed.currency) === null,
  ),
];

export const timeOf = (typed: CalendarTyped): InspectorTime => {
  const amount = (text: string): number => parseMoney(text, typed.currency)?.minor ?? 0;
  return {
    hours: hoursOf(typed.hours),
    base: { latitude: numberOf(typed.latitude), longitude: numberOf(typed.longitude) },
    radius: Math.round(numberOf(typed.radius) * METERS_A_MILE),
    speed: numberOf(typed.speed) * METERS_PER_SECOND_A_MPH,
    notice: Math.round(numberOf(typed.notice) * 60),
    fees: {
      currency: typed.currency,
      perVisit: amount(typed.perVisit),
      perExtraCar: amount(typed.perExtraCar),
      perMile: amount(typed.perMile),
    },
    skills: [...typed.skills],
  };
};
