import { Injectable } from "@nestjs/common";
import { daylight } from "@evenhand/booking/daylight";
import { type Interval, intersect, normalize } from "@evenhand/booking/interval";
import { layOutHours, layOutRule } from "@evenhand/booking/recurrence";
import type { Place } from "@evenhand/shared/booking";
import { Zone } from "@evenhand/shared/zone";
import { LRUCache } from "lru-cache";
import { z } from "zod";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const DAY = 86_400_000;
/** Stretches are laid out from every such mark on, far enough for the longest horizon asked for. */
const mark = 32 * DAY;
const reach = 100 * DAY;
/** What a stretch and its place in a list take, about. */
const stretchBytes = 64;

/** Hours that are stored and cannot be laid out. To be logged, never shown: it holds what the library said. */
export class HoursUnreadable extends ProblemError {
  constructor(cause: unknown) {
    super(
      "hours-unreadable",
      "The hours that are stored here cannot be laid out. Nothing is offered by them until they are entered anew.",
      { problems: [{ at: "/hours", reason: "entered anew under Hours" }] },
    );
    this.cause = cause;
  }
}

/**
 * A zone as it is stored.
 *
 * @throws HoursUnreadable where it is none
 */
export function readableZone(stored: unknown): string {
  const parsed = Zone.safeParse(stored);
  if (!parsed.success) throw new HoursUnreadable(parsed.error);
  return parsed.data;
}

const Zoned = z.object({ zone: z.unknown() });

/** The zone of hours as they are stored. @throws HoursUnreadable where there is none */
export const zoneOfHours = (stored: unknown): string => readableZone(Zoned.safeParse(stored).data?.zone);

const StoredRule = z.object({
  opens: z.string(),
  closes: z.string(),
  rrule: z.string().nullable(),
  rdates: z.array(z.string()),
  exdates: z.array(z.string()),
});
/** Hours as far as they can be laid out at all; whether each rule can is seen when it is. */
const StoredHours = z.object({ zone: Zone, open: z.array(StoredRule), away: z.array(StoredRule) });

/**
 * Recurrences and daylight laid out, kept by what they were laid out from: the same hours give the same stretches, so nothing
 * needs to be told when hours change, and any number of services agree.
 */
@Injectable()
export class LaidOutHours {
  static readonly maxBytes = 64 * 1024 * 1024;

  private readonly kept = new LRUCache<string, Interval[] | HoursUnreadable>({
    maxSize: LaidOutHours.maxBytes,
    sizeCalculation: (found, key) =>
      2 * key.length + stretchBytes * (found instanceof HoursUnreadable ? 20 : found.length + 1),
  });

  /** @throws HoursUnreadable where what is stored cannot be laid out, as all of these do */
  open(stored: unknown, horizon: Interval): Interval[] {
    return this.keep(`h ${JSON.stringify(stored)}`, horizon, (long) =>
      layOutHours(StoredHours.parse(stored), long),
    );
  }

  away(stored: unknown, horizon: Interval): Interval[] {
    return this.keep(`a ${JSON.stringify(stored)}`, horizon, (long) => {
      const { away, zone } = StoredHours.parse(stored);
      return normalize(away.flatMap((rule) => layOutRule(rule, zone, long)));
    });
  }

  daylight(place: Place, horizon: Interval): Interval[] {
    const key = `d ${place.latitude} ${place.longitude}`;
    return this.keep(key, horizon, (long) => daylight(place, long));
  }

  private keep(what: string, horizon: Interval, layOut: (long: Interval) => Interval[]): Interval[] {
    const from = Math.floor(horizon.start / mark) * mark;
    if (horizon.end > from + reach) {
      const long = laidOutOr(() => layOut(horizon));
      if (long instanceof HoursUnreadable) throw long;
      return long;
    }
    const key = `${from} ${what}`;
    const known = this.kept.get(key);
    const found = known ?? laidOutOr(() => layOut({ start: from - DAY, end: from + reach }));
    if (known === undefined) this.kept.set(key, found);
    if (found instanceof HoursUnreadable) throw found;
    return intersect(found, [horizon]);
  }

  /** What is kept at this moment, about. */
  get bytes(): number {
    return this.kept.calculatedSize;
  }
}

/** Hours are checked when they are entered; what reached the database otherwise may be anything. */
function laidOutOr(layOut: () => Interval[]): Interval[] | HoursUnreadable {
  try {
    return layOut();
  } catch (error) {
    return new HoursUnreadable(error);
  }
}
