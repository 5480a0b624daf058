import type { HoursRule, WeeklyHours } from "@evenhand/shared/booking";
import { RRuleTemporal } from "rrule-temporal";
import { Temporal } from "temporal-polyfill";
import { findPartProblem } from "../recurrence-parts/index.ts";
import { type Interval, intersect, normalize, subtract } from "../interval/index.ts";

const DAY_MS = 86_400_000;

/** A recurrence set of RFC 5545 whose times are wall-clock times of one zone. */
export type Recurrence = {
  /** First wall-clock time, `2026-05-04T09:00:00`. */
  readonly start: string;
  /** Value of RRULE without its name; `null` for a single time. */
  readonly rrule: string | null;
  readonly rdates: readonly string[];
  readonly exdates: readonly string[];
};

const toFloating = (wall: string): Temporal.ZonedDateTime =>
  Temporal.PlainDateTime.from(wall).toZonedDateTime("UTC");

/** The wall clock of a zone at an instant, written as if it were UTC. */
const toWall = (instant: number, zone: string): number =>
  Temporal.Instant.fromEpochMilliseconds(instant)
    .toZonedDateTimeISO(zone)
    .toPlainDateTime()
    .toZonedDateTime("UTC").epochMilliseconds;

/**
 * The instant of a wall-clock time. A time that occurs twice is the first; one that is skipped is read with the offset
 * before the gap (RFC 5545 §3.3.5).
 */
const toInstant = (wall: Temporal.PlainDateTime, zone: string): number =>
  wall.toZonedDateTime(zone, { disambiguation: "compatible" }).epochMilliseconds;

/** UNTIL is given in UTC (RFC 5545 §3.3.10); here it becomes wall clock, as all else is. */
function withWallUntil(rrule: string, zone: string): string {
  return rrule.replace(/UNTIL=(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z/, (_, ...part: string[]) => {
    const until = Temporal.Instant.from(`${part.slice(0, 3).join("-")}T${part.slice(3, 6).join(":")}Z`);
    const wall = until.toZonedDateTimeISO(zone).toPlainDateTime().toString({ smallestUnit: "second" });
    return `UNTIL=${wall.replace(/[-:]/g, "")}Z`;
  });
}

/**
 * Wall-clock times of a recurrence whose instants lie in the horizon.
 *
 * The set is laid out on the wall clock and each time is then placed in the zone, so nine o'clock stays nine o'clock
 * when the offset changes. RFC 5545 says two things of a time that a change of offset skips: §3.3.10 both leaves it
 * out and reads it by §3.3.5. This takes §3.3.5, or a site open from midnight would lose the day on which its zone
 * skips midnight.
 *
 * @throws RangeError or Error where the rule cannot be read.
 * @example
 * wallTimes({ start: "2026-03-07T09:00:00", rrule: "FREQ=DAILY;COUNT=2", rdates: [], exdates: [] }, "America/New_York",
 *   { start: Date.UTC(2026, 2, 1), end: Date.UTC(2026, 3, 1) }).map(String) // ["2026-03-07T09:00:00", "2026-03-08T09:00:00"]
 */
export function wallTimes(recurrence: Recurrence, zone: string, horizon: Interval): Temporal.PlainDateTime[] {
  const excluded = new Set(recurrence.exdates.map((wall) => toFloating(wall).epochMilliseconds));
  const explicit = [...recurrence.rdates, ...(recurrence.rrule === null ? [recurrence.start] : [])].map(
    toFloating,
  );
  const found = new Map<number, Temporal.PlainDateTime>();
  for (const time of [...byRule(recurrence, zone, horizon), ...explicit]) {
    if (!excluded.has(time.epochMilliseconds)) found.set(time.epochMilliseconds, time.toPlainDateTime());
  }
  const inHorizon = [...found.values()].filter((wall) => {
    const instant = toInstant(wall, zone);
    return instant >= horizon.start && instant < horizon.end;
  });
  return inHorizon.sort((a, b) => Temporal.PlainDateTime.compare(a, b));
}

function byRule(recurrence: Recurrence, zone: string, horizon: Interval): Temporal.ZonedDateTime[] {
  if (recurrence.rrule === null) return [];
  const rule = new RRuleTemporal({
    rruleString: withWallUntil(recurrence.rrule, zone),
    dtstart: toFloating(recurrence.start),
    temporal: Temporal,
  });
  // A skipped time moves forward by the gap: a day more on either side takes in every one that lands in the horizon.
  const after = new Date(toWall(horizon.start, zone) - DAY_MS);
  const before = new Date(toWall(horizon.end, zone) + DAY_MS);
  return rule.between(after, before, true);
}

function closing(opening: Temporal.PlainDateTime, closes: string): Temporal.PlainDateTime {
  if (closes === "24:00") return opening.toPlainDate().add({ days: 1 }).toPlainDateTime();
  const closed = opening.toPlainDate().toPlainDateTime(Temporal.PlainTime.from(closes));
  return Temporal.PlainDateTime.compare(closed, opening) > 0 ? closed : closed.add({ days: 1 });
}

/**
 * The stretches a rule is open, cut to the horizon. Opening and closing are both wall-clock times, so hours keep their
 * place on the clock and are an hour longer or shorter on the night the offset changes.
 *
 * @example
 * layOutRule({ opens: "2026-03-07T09:00:00", closes: "17:00", rrule: "FREQ=DAILY", rdates: [], exdates: [] },
 *   "America/New_York", { start: Date.UTC(2026, 2, 7), end: Date.UTC(2026, 2, 9) })
 *   .map(({ start }) => new Date(start).toISOString())
 * // ["2026-03-07T14:00:00.000Z", "2026-03-08T13:00:00.000Z"]
 */
export function layOutRule(rule: HoursRule, zone: string, horizon: Interval): Interval[] {
  const { opens, closes, rrule, rdates, exdates } = rule;
  // Hours opened before the horizon may still run into it: none is longer than a day and the gap of one change.
  const early = { start: horizon.start - 2 * DAY_MS, end: horizon.end };
  const openings = wallTimes({ start: opens, rrule, rdates, exdates }, zone, early);
  const stretches = openings.map((opening) => ({
    start: toInstant(opening, zone),
    end: toInstant(closing(opening, closes), zone),
  }));
  return intersect(normalize(stretches), [horizon]);
}

/**
 * Weekly hours with their exceptions as a normal list of stretches: open by any rule, away by none.
 *
 * @example
 * layOutHours({ zone: "UTC", open: [{ opens: "2026-05-04T09:00:00", closes: "17:00", rrule: null, rdates: [], exdates: [] }],
 *   away: [{ opens: "2026-05-04T12:00:00", closes: "13:00", rrule: null, rdates: [], exdates: [] }] }, may4)
 * // 9 to 12 and 13 to 17
 */
export function layOutHours(hours: WeeklyHours, horizon: Interval): Interval[] {
  const layOut = (rules: readonly HoursRule[]): Interval[] =>
    normalize(rules.flatMap((rule) => layOutRule(rule, hours.zone, horizon)));
  return subtract(layOut(hours.open), layOut(hours.away));
}

/** What is wrong with a rule as written; `null` where it can be laid out. */
export type RuleProblem = {
  readonly code: "unreadable-recurrence" | "unreadable-time";
  readonly detail: string;
};

/**
 * Can this rule be laid out? To be asked once, when hours are entered.
 *
 * @param over the zone, and the stretch that will be searched: a rule that gives out within it is refused now, not then; without
 *   it the week after the first opening is tried
 * @example checkRule({ opens: "2026-05-04T09:00:00", closes: "17:00", rrule: "FREQ=WEEKLY;BYDAY=XX", rdates: [], exdates: [] })
 * // { code: "unreadable-recurrence", detail: "BYDAY=XX: days such as MO,TU, or 1MO for the first Monday" }
 */
export function checkRule(
  rule: HoursRule,
  over?: { readonly zone: string; readonly horizon: Interval },
): RuleProblem | null {
  let start: number;
  try {
    start = [rule.opens, ...rule.rdates, ...rule.exdates].map(toFloating)[0]!.epochMilliseconds;
  } catch (error) {
    return { code: "unreadable-time", detail: String(error instanceof Error ? error.message : error) };
  }
  const part = rule.rrule === null ? null : findPartProblem(rule.rrule);
  if (part !== null) return { code: "unreadable-recurrence", detail: `${part.part}: ${part.reason}` };
  try {
    layOutRule(rule, over?.zone ?? "UTC", over?.horizon ?? { start, end: start + 7 * DAY_MS });
    return null;
  } catch (error) {
    const said = String(error instanceof Error ? error.message : error);
    // The library gives up after so many turns of the rule.
    const detail = said.startsWith("Maximum iterations")
      ? "takes too long to lay out: say the last day with UNTIL in place of COUNT, or begin later"
      : said;
    return { code: "unreadable-recurrence", detail };
  }
}
