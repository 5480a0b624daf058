const DAY_MS = 86_400_000;

/** How far ahead hours are offered, and laid out when they are saved: 250 days, in milliseconds. */
export const BOOKING_HORIZON_MS = 250 * DAY_MS;
/** How far back days are shown: three years, in milliseconds. */
export const LOOKING_BACK_MS = 3 * 366 * DAY_MS;

/** Why days cannot be asked for. `days`: as many as may be. */
export type DatesRefusal =
  | { readonly code: "not-a-stretch"; readonly days: number }
  | { readonly code: "too-far-ahead"; readonly at: "from" | "until"; readonly days: number }
  | { readonly code: "too-far-back"; readonly at: "from" | "until" };

const dateRefusal = (at: "from" | "until", date: string, now: number): DatesRefusal | null => {
  if (Date.parse(date) > now + BOOKING_HORIZON_MS)
    return { code: "too-far-ahead", at, days: Math.round(BOOKING_HORIZON_MS / DAY_MS) };
  return Date.parse(date) < now - LOOKING_BACK_MS ? { code: "too-far-back", at } : null;
};

/**
 * Why calendars are not laid out over these dates: the wrong way round, too many at once, or too far from now.
 *
 * @param from the first, `until` the last date, as `YYYY-MM-DD`
 * @param now epoch milliseconds
 * @param most days at once
 * @returns `null` where they can be
 * @example datesRefusal("2026-06-02", "2026-06-01", Date.UTC(2026, 5, 1), 62)?.code // "not-a-stretch"
 */
export function datesRefusal(from: string, until: string, now: number, most: number): DatesRefusal | null {
  const days = (Date.parse(until) - Date.parse(from)) / DAY_MS;
  if (!(days >= 0 && days < most)) return { code: "not-a-stretch", days: most };
  return dateRefusal("until", until, now) ?? dateRefusal("from", from, now);
}
