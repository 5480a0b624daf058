import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DAY, HOUR, MONDAY } from "../../testing/builders.ts";
import { dayRoute, type Job, SAME_OUTING } from "./index.ts";

/** Places on one line, a minute's drive a degree, so that legs are sums. */
const place = (degrees: number) => ({ latitude: 0, longitude: degrees });
const travel = (a: { longitude: number }, b: { longitude: number }) => ({
  meters: 0,
  milliseconds: Math.abs(a.longitude - b.longitude) * 60_000,
});
const job = (start: number, end: number, degrees: number): Job => ({
  start: MONDAY + start * HOUR,
  end: MONDAY + end * HOUR,
  place: place(degrees),
});
const legs = (...jobs: Job[]) => dayRoute(jobs, place(10), 20, travel);

describe("the route of a day", () => {
  it("goes out from the base and back to it", () => {
    expect(legs(job(8, 10, 13))).toEqual([{ travelBefore: 3, travelAfter: 3 }]);
    expect(legs()).toEqual([]);
  });

  it("drives on from job to job within an outing", () => {
    expect(legs(job(8, 10, 13), job(12, 13, 18))).toEqual([
      { travelBefore: 3, travelAfter: null },
      { travelBefore: 5, travelAfter: 8 },
    ]);
  });

  it("sleeps at home when the next job is twelve hours off or more", () => {
    const next = (gap: number): Job => ({
      ...job(8, 10, 18),
      start: MONDAY + 10 * HOUR + gap,
      end: MONDAY + 3 * DAY,
    });
    expect(legs(job(8, 10, 13), next(SAME_OUTING - 1))[0]?.travelAfter).toBeNull();
    expect(legs(job(8, 10, 13), next(SAME_OUTING))).toEqual([
      { travelBefore: 3, travelAfter: 3 },
      { travelBefore: 8, travelAfter: 8 },
    ]);
  });

  it("ends at the base, and drives back exactly where it sets out from there again", () => {
    const jobs = fc.array(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 20 })), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(jobs, (gaps) => {
        let end = MONDAY;
        const all = gaps.map(([gap, degrees]) => {
          const start = end + gap * HOUR;
          end = start + HOUR;
          return { start, end, place: place(degrees) };
        });
        const route = dayRoute(all, place(10), 20, travel);
        expect(route.length).toBe(all.length);
        for (const [index, leg] of route.entries()) {
          const home = all[index + 1] === undefined || (gaps[index + 1]?.[0] ?? 0) * HOUR >= SAME_OUTING;
          expect(leg.travelAfter === null).toBe(!home);
        }
      }),
      { numRuns: 1_000 },
    );
  });
});
