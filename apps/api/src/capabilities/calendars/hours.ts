import { setImmediate as nextTurn } from "node:timers/promises";
import { BOOKING_HORIZON_MS, type DatesRefusal, datesRefusal } from "@evenhand/booking/booking-horizon";
import { type Interval, normalize } from "@evenhand/booking/interval";
import { checkRule, layOutRule } from "@evenhand/booking/recurrence";
import type { HoursRule, WeeklyHours } from "@evenhand/shared/booking";
import type { FieldProblem } from "@evenhand/shared/problem";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const DAY = 86_400_000;
const mostNamed = 5;

/**
 * Lays hours out as far as anybody will search, so that whoever enters them hears of it and not whoever searches. Others are
 * answered between any two rules.
 *
 * @param now epoch milliseconds
 * @throws ProblemError `hours-unreadable` naming every rule that cannot be laid out
 */
export async function checkHours(hours: WeeklyHours, now: number, at = "/hours"): Promise<void> {
  const over = {
    zone: hours.zone,
    horizon: { start: now - 7 * DAY, end: now + BOOKING_HORIZON_MS + 7 * DAY },
  };
  const problems: FieldProblem[] = [];
  for (const part of ["open", "away"] as const)
    for (const [index, rule] of hours[part].entries()) {
      // What cannot be laid out has cost the most there is: a few are named, and the rest when those are mended.
      if (problems.length >= mostNamed) break;
      await nextTurn();
      const problem = checkRule(rule, over);
      if (problem !== null) problems.push({ at: `${at}/${part}/${index}`, reason: problem.detail });
    }
  if (problems.length === 0) return;
  throw new ProblemError("hours-unreadable", "Some of these hours cannot be laid out; each is named.", {
    problems,
  });
}

/** The stretches of some rules together, with a turn for others between any two. */
export async function layOutInTurns(
  rules: readonly HoursRule[],
  zone: string,
  horizon: Interval,
): Promise<Interval[]> {
  const stretches: Interval[] = [];
  for (const rule of rules) {
    await nextTurn();
    stretches.push(...layOutRule(rule, zone, horizon));
  }
  return normalize(stretches);
}

/**
 * @param now epoch milliseconds
 * @throws ProblemError `invalid-fields` where the dates are the wrong way round, too far apart, or too far from now
 */
export function checkDates(from: string, until: string, now: number, most = 62): void {
  refuseDates(datesRefusal(from, until, now, most), { from: "query/from", until: "query/until" });
}

/**
 * @param now epoch milliseconds
 * @throws ProblemError `invalid-fields` where nobody's hours are laid out that far from now
 */
export function checkDay(date: string, now: number, at = "query/date"): void {
  refuseDates(datesRefusal(date, date, now, 1), { from: at, until: at });
}

const refused = (detail: string, at: string, reason: string) =>
  new ProblemError("invalid-fields", detail, { problems: [{ at, reason }] });

function refuseDates(refusal: DatesRefusal | null, at: { from: string; until: string }): void {
  if (refusal === null) return;
  if (refusal.code === "too-far-ahead") {
    const { days } = refusal;
    const detail = `Hours are laid out for ${days} days ahead.`;
    throw refused(detail, at[refusal.at], `at most ${days} days from today`);
  }
  if (refusal.code === "too-far-back")
    throw refused("Days are shown for three years back.", at[refusal.at], "at most three years ago");
  const { days } = refusal;
  throw refused(
    `Ask for 1 to ${days} days, the first not after the last.`,
    at.until,
    `from the first date to ${days - 1} days later`,
  );
}
