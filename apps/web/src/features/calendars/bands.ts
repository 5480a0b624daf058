import type { InspectorDays, SiteDays } from "@evenhand/shared/http/booking/calendar-views";
import type { Stretch } from "@evenhand/shared/http/calendars";
import { addDays, instantOf } from "../../entities/time/zone-time";

export type BandKind = "open" | "away" | "closed" | "daylight" | "visit";

/** A stretch of a week as it is drawn and as it is said. */
export interface Band extends Stretch {
  readonly kind: BandKind;
  /** Of a visit: */
  readonly appointment?: string;
  readonly site?: string;
  readonly bay?: string;
  readonly state?: string;
}

const plain = (kind: BandKind, stretches: readonly Stretch[]): Band[] =>
  stretches.map(({ start, end }) => ({ kind, start, end }));

export const bandsOfInspector = ({ days }: InspectorDays): readonly Band[] =>
  days.flatMap(({ open, away, daylight, engagements }) => [
    ...plain("daylight", daylight),
    ...plain("open", open),
    ...plain("away", away),
    ...engagements.map(({ start, end, appointment, site, state }) => ({
      kind: "visit" as const,
      start,
      end,
      appointment,
      site: site.name,
      state,
    })),
  ]);

export const bandsOfSite = ({ days }: SiteDays): readonly Band[] =>
  days.flatMap(({ open, closed, daylight, bays }) => [
    ...plain("daylight", daylight),
    ...plain("open", open),
    ...plain("closed", closed),
    ...bays.flatMap((bay) =>
      bay.engagements.map(({ start, end, appointment, state }) => ({
        kind: "visit" as const,
        start,
        end,
        appointment,
        bay: bay.name,
        state,
      })),
    ),
  ]);

export const bandsOfTrial = (trial: {
  readonly open: readonly Stretch[];
  readonly away: readonly Stretch[];
}): readonly Band[] => [...plain("open", trial.open), ...plain("away", trial.away)];

/** A band within one day, with its place on it as shares of the day. */
export interface Placed extends Band {
  readonly from: number;
  readonly to: number;
}

/** What of the bands lies on a date of the zone; each once, also where a day before or after gave it too. */
export const onDate = (bands: readonly Band[], date: string, zone: string): readonly Placed[] => {
  const start = Date.parse(instantOf(`${date}T00:00`, zone));
  const end = Date.parse(instantOf(`${addDays(date, 1)}T00:00`, zone));
  const seen = new Map<string, Placed>();
  for (const band of bands) {
    const from = Math.max(start, Date.parse(band.start));
    const to = Math.min(end, Date.parse(band.end));
    if (from >= to) continue;
    seen.set(`${band.kind} ${from} ${to} ${band.appointment ?? ""} ${band.bay ?? ""}`, {
      ...band,
      start: new Date(from).toISOString(),
      end: new Date(to).toISOString(),
      from: (from - start) / (end - start),
      to: (to - start) / (end - start),
    });
  }
  return [...seen.values()];
};
