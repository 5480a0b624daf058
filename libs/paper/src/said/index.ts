import { defineMessages } from "@evenhand/message/define-messages";
import type { Money } from "@evenhand/shared/identifier";
import type { z } from "zod";

const { say } = defineMessages("paper-said", {
  minutes: "{minutes} min",
  hours: "{hours} h",
  "hours-minutes": "{hours} h {minutes} min",
  more: "{count, plural, one {and one more} other {and # more}}",
});

/** Whole amounts show no cents: `$41,000`. */
export const moneySaid = ({ minor, currency }: z.infer<typeof Money>): string => {
  const format = new Intl.NumberFormat("en-US", {
    style: "currency",
    currency,
    trailingZeroDisplay: "stripIfInteger",
  });
  return format.format(minor / 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2));
};

/**
 * How long something took.
 *
 * @param minutes from 0
 * @example timeSaid(200) // "3 h 20 min"
 */
export const timeSaid = (minutes: number): string => {
  const hours = Math.floor(minutes / 60);
  const rest = Math.round(minutes - hours * 60);
  if (hours === 0) return say("minutes", { minutes: rest });
  return rest === 0 ? say("hours", { hours }) : say("hours-minutes", { hours, minutes: rest });
};

/** The day of an instant in the zone of a place. */
export const daySaid = (instant: string, zone: string): string =>
  new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: zone }).format(new Date(instant));

/** An instant to the minute in coordinated time, and that it is. */
export const instantSaid = (instant: string): string =>
  new Intl.DateTimeFormat("en-US", {
    year: "numeric",
    month: "long",
    day: "numeric",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZone: "UTC",
    timeZoneName: "short",
  }).format(new Date(instant));

/** What is left out of a list, in words. */
export const moreSaid = (count: number): string => say("more", { count });
