import { Injectable } from "@nestjs/common";
import { daylight } from "@evenhand/booking/daylight";
import { type Interval, intersect, normalize } from "@evenhand/booking/interval";
import { layOutHours, layOutRule } from "@evenhand/booking/recurrence";
import type { Place, WeeklyHours } from "@evenhand/shared/booking";

const DAY = 86_400_000;
/** Stretches are laid out from every such mark on, far enough for the longest horizon asked for. */
const mark = 32 * DAY;
const reach = 100 * DAY;
const most = 20_000;

/**
 * Recurrences and daylight laid out, kept by what they were laid out from: the same hours give the same stretches, so nothing
 * needs to be told when hours change, and any number of services agree.
 */
@Injectable()
export class LaidOutHours {
  private readonly kept = new Map<string, Interval[]>();

  open(hours: WeeklyHours, horizon: Interval): Interval[] {
    return this.keep(`h ${JSON.stringify(hours)}`, horizon, (long) => layOutHours(hours, long));
  }

  away(hours: WeeklyHours, horizon: Interval): Interval[] {
    const layOut = (long: Interval) =>
      normalize(hours.away.flatMap((rule) => layOutRule(rule, hours.zone, long)));
    return this.keep(`a ${JSON.stringify(hours)}`, horizon, layOut);
  }

  daylight(place: Place, horizon: Interval): Interval[] {
    const key = `d ${place.latitude} ${place.longitude}`;
    return this.keep(key, horizon, (long) => daylight(place, long));
  }

  private keep(what: string, horizon: Interval, layOut: (long: Interval) => Interval[]): Interval[] {
    const from = Math.floor(horizon.start / mark) * mark;
    if (horizon.end > from + reach) return layOut(horizon);
    const key = `${from} ${what}`;
    let found = this.kept.get(key);
    if (found === undefined) {
      found = layOut({ start: from - DAY, end: from + reach });
      if (this.kept.size >= most) this.kept.clear();
      this.kept.set(key, found);
    }
    return intersect(found, [horizon]);
  }
}
