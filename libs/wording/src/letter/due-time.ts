const MINUTE = 60_000;

const styles = {
  brief: { weekday: "short", month: "short", day: "numeric", timeZoneName: "short" },
  whole: { weekday: "long", month: "long", day: "numeric", timeZoneName: "long" },
} as const;

const clock = { hour: "numeric", minute: "2-digit" } as const;

/**
 * A deadline on the clock of a zone, with the zone's name. Midnight is said as the last minute of the day that ends: 12:00 AM of
 * which day, nobody is sure.
 *
 * @param instant epoch milliseconds
 * @example dueTime(Date.UTC(2027, 4, 5, 18), "America/Chicago", "brief") // "Wed, May 5, 1:00 PM CDT"
 */
export function dueTime(instant: number, zone: string, style: keyof typeof styles): string {
  const at = (when: number, how: Intl.DateTimeFormatOptions): string =>
    new Intl.DateTimeFormat("en-US", { ...how, timeZone: zone }).format(when).replaceAll("\u202f", " ");
  const isMidnight = at(instant, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" }) === "00:00";
  return at(isMidnight ? instant - MINUTE : instant, { ...styles[style], ...clock });
}
