import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";

/** Readings this far apart are of different days. A day is a stretch of work, not a date: midnight in UTC is an afternoon elsewhere. */
const SAME_DAY_HOURS = 12;
const HOUR_MS = 3_600_000;

/** When two findings were made, as far as the comparison cares. */
export type VisitTimes = { readonly differentDays: boolean; readonly later: "a" | "b" | null };

const instantOf = (finding: Finding, report: Pick<Report, "visit">): number =>
  Date.parse(finding.time ?? report.visit.started);

/**
 * How the times of two findings lie; a finding without a time has that of the visit's start.
 *
 * @example visitTimes(morning, may, afternoon, may).differentDays // false
 */
export const visitTimes = (
  a: Finding,
  reportA: Pick<Report, "visit">,
  b: Finding,
  reportB: Pick<Report, "visit">,
): VisitTimes => {
  const after = instantOf(b, reportB) - instantOf(a, reportA);
  return {
    differentDays: Math.abs(after) > SAME_DAY_HOURS * HOUR_MS,
    later: after === 0 ? null : after > 0 ? "b" : "a",
  };
};
