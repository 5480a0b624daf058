import { Temporal } from "temporal-polyfill";

/** The zone the reader's device is set to. */
export const ownZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;

const at = (instant: string, zone: string) => Temporal.Instant.from(instant).toZonedDateTimeISO(zone);

/** @example dateAt("2026-05-04T03:00:00Z", "America/Denver") // "2026-05-03" */
export const dateAt = (instant: string, zone: string): string => at(instant, zone).toPlainDate().toString();

/** Minutes on the wall clock since midnight. */
export const minuteOfDay = (instant: string, zone: string): number => {
  const { hour, minute } = at(instant, zone);
  return hour * 60 + minute;
};

export const today = (zone: string): string => Temporal.Now.plainDateISO(zone).toString();

export const addDays = (date: string, days: number): string =>
  Temporal.PlainDate.from(date).add({ days }).toString();

/** The Monday of the date's week. */
export const mondayOf = (date: string): string => addDays(date, 1 - Temporal.PlainDate.from(date).dayOfWeek);

export const weekOf = (monday: string): readonly string[] =>
  [0, 1, 2, 3, 4, 5, 6].map((days) => addDays(monday, days));

/** Noon UTC of a date: formatted in UTC it shows that date everywhere. */
export const noonOf = (date: string): Date => new Date(`${date}T12:00:00Z`);

/** A wall-clock date and time of a zone as an instant; the later offset is taken where the clock goes back. */
export const instantOf = (local: string, zone: string): string =>
  Temporal.PlainDateTime.from(local).toZonedDateTime(zone).toInstant().toString({ smallestUnit: "second" });

/** The wall-clock value of an `input type="datetime-local"`. */
export const localOf = (instant: string, zone: string): string =>
  at(instant, zone).toPlainDateTime().toString({ smallestUnit: "minute" });

/** Do two zones read the same on the clock at that instant? */
export const sameClock = (instant: string, one: string, other: string): boolean =>
  at(instant, one).offsetNanoseconds === at(instant, other).offsetNanoseconds;
