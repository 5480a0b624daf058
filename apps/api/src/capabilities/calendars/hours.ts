import { checkRule } from "@evenhand/booking/recurrence";
import type { WeeklyHours } from "@evenhand/shared/booking";
import type { FieldProblem } from "@evenhand/shared/problem";
import { ProblemError } from "../../platform/problems/problem-error.ts";

/** @throws ProblemError `hours-unreadable` naming every rule that cannot be laid out */
export function checkHours(hours: WeeklyHours, at = "/hours"): void {
  const problems: FieldProblem[] = [];
  for (const part of ["open", "away"] as const)
    for (const [index, rule] of hours[part].entries()) {
      const problem = checkRule(rule);
      if (problem !== null) problems.push({ at: `${at}/${part}/${index}`, reason: problem.detail });
    }
  if (problems.length === 0) return;
  throw new ProblemError("hours-unreadable", "Some of these hours cannot be laid out; each is named.", {
    problems,
  });
}

/** @throws ProblemError `invalid-fields` where the dates are the wrong way round or too far apart */
export function checkDates(from: string, until: string, most = 62): void {
  const days = (Date.parse(until) - Date.parse(from)) / 86_400_000;
  if (days >= 0 && days < most) return;
  throw new ProblemError("invalid-fields", `Ask for 1 to ${most} days, the first not after the last.`, {
    problems: [{ at: "query/until", reason: `from the first date to ${most - 1} days later` }],
  });
}
