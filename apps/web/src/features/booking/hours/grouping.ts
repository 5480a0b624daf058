import type { OfferBody } from "@evenhand/shared/booking";
import { dateAt, minuteOfDay } from "../../../entities/time/zone-time";

/** Offers of one inspector on one day at one price: they differ only by the start. */
export interface OfferRow {
  readonly key: string;
  readonly date: string;
  readonly inspector: string;
  readonly offers: readonly OfferBody[];
}

/** In the order in which the first of each came: by total cost, then time. */
export const rowsOf = (offers: readonly OfferBody[], zone: string): readonly OfferRow[] => {
  const rows = new Map<string, OfferBody[]>();
  for (const offer of offers) {
    const key = `${dateAt(offer.start, zone)} ${offer.inspector} ${offer.cost.total.minor}`;
    const row = rows.get(key);
    if (row) row.push(offer);
    else rows.set(key, [offer]);
  }
  return [...rows].map(([key, row]) => ({
    key,
    date: key.slice(0, 10),
    inspector: row[0]?.inspector ?? "",
    offers: row,
  }));
};

/** One start with everybody who offers it, the cheapest first. */
export interface Start {
  readonly start: string;
  readonly minute: number;
  readonly offers: readonly OfferBody[];
}

export const startsOn = (offers: readonly OfferBody[], date: string, zone: string): readonly Start[] => {
  const starts = new Map<string, OfferBody[]>();
  for (const offer of offers) {
    if (dateAt(offer.start, zone) !== date) continue;
    const those = starts.get(offer.start);
    if (those) those.push(offer);
    else starts.set(offer.start, [offer]);
  }
  return [...starts]
    .map(([start, those]) => ({
      start,
      minute: minuteOfDay(start, zone),
      offers: those.toSorted((one, other) => one.cost.total.minor - other.cost.total.minor),
    }))
    .toSorted((one, other) => (one.start < other.start ? -1 : 1));
};
