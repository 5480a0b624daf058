import { Temporal } from "temporal-polyfill";

/** When the letter that gathers a day's news is written, on the clock of whoever reads it. Our own. */
const HOUR = 7;

/**
 * The last time that it was seven in the morning somewhere: what happened before goes into that morning's letter, what came after
 * waits for the next. A day on which the zone skips the hour has it as it comes by the offset before (RFC 5545 §3.3.5).
 *
 * @param now epoch milliseconds
 * @returns epoch milliseconds, at most `now`
 * @example lastMorning(Date.UTC(2026, 4, 4, 6, 59), "UTC") // Date.UTC(2026, 4, 3, 7)
 * @example lastMorning(Date.UTC(2026, 4, 4, 7), "UTC") // Date.UTC(2026, 4, 4, 7)
 */
export function lastMorning(now: number, zone: string): number {
  const today = Temporal.Instant.fromEpochMilliseconds(now).toZonedDateTimeISO(zone).toPlainDate();
  const morningOf = (date: Temporal.PlainDate): number =>
    date.toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from({ hour: HOUR }) })
      .epochMilliseconds;
  const morning = morningOf(today);
  return morning <= now ? morning : morningOf(today.subtract({ days: 1 }));
}
