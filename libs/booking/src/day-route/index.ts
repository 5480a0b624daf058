import type { Place } from "@evenhand/shared/booking";
import type { Interval } from "../interval/index.ts";
import { greatCircleTravel, type TravelRule } from "../travel/index.ts";

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** Longest break after which one still drives on from the last job; after a longer one, from the base again. Common practice, no source. */
export const SAME_OUTING = 12 * HOUR_MS;

export type Job = Interval & { readonly place: Place };

/** Minutes of driving to a job, and after the last one of an outing back to the base. `null`: the next job follows. */
export type Legs = { readonly travelBefore: number; readonly travelAfter: number | null };

const follows = (one: Job | undefined, next: Job | undefined): boolean =>
  one !== undefined && next !== undefined && next.start - one.end < SAME_OUTING;

/**
 * How long an inspector drives to each job, from the one before or from the base, and back after the last.
 *
 * @param jobs in the order of their starts
 * @param speed meters per second, above zero
 * @returns as many as there are jobs, in their order
 * @example dayRoute([{ start: 0, end: 3_600_000, place: base }], base, 20) // [{ travelBefore: 0, travelAfter: 0 }]
 */
export function dayRoute(
  jobs: readonly Job[],
  base: Place,
  speed: number,
  travel: TravelRule = greatCircleTravel,
): Legs[] {
  const minutes = (from: Place, to: Place): number => travel(from, to, speed).milliseconds / MINUTE_MS;
  return jobs.map((job, index) => {
    const [before, after] = [jobs[index - 1], jobs[index + 1]];
    const came = before !== undefined && follows(before, job) ? before.place : base;
    return {
      travelBefore: minutes(came, job.place),
      travelAfter: follows(job, after) ? null : minutes(job.place, base),
    };
  });
}
