import * as fc from "fast-check";
import { expect, test } from "vitest";
import { intersect } from "../interval/index.ts";
import { USUAL_HOURS, workEnds, workingDeadline } from "./index.ts";

const HOUR = 3_600_000;
const friday = (hour: number) => Date.UTC(2026, 4, 8, hour);
const monday = (hour: number) => Date.UTC(2026, 4, 11, hour);

test.each([
  ["within the day", friday(10), 3, friday(13)],
  ["to the minute of closing", friday(10), 7, friday(17)],
  ["over the weekend", friday(16), 4, monday(12)],
  ["from a night on", friday(20), 1, monday(10)],
  ["three days of eight hours", friday(9), 24, Date.UTC(2026, 4, 12, 17)],
])("counts open hours %s", (_, now, hours, expected) => {
  expect(workingDeadline(now, hours * HOUR, USUAL_HOURS)).toBe(expected);
});

test("a day on which the site is closed does not count", () => {
  const closed = [{ start: monday(0), end: monday(24) }];
  expect(workingDeadline(friday(16), 2 * HOUR, USUAL_HOURS, closed)).toBe(Date.UTC(2026, 4, 12, 10));
});

test("nine o'clock stays nine o'clock of the site when the offset changes", () => {
  const hours = { ...USUAL_HOURS, zone: "America/New_York" };
  const before = Date.UTC(2026, 2, 6, 21);
  expect(workingDeadline(before, 2 * HOUR, hours)).toBe(Date.UTC(2026, 2, 9, 14));
});

test("a site that never opens has sixty days", () => {
  const never = { zone: "UTC", open: [], away: [] };
  expect(workingDeadline(friday(9), HOUR, never)).toBe(friday(9) + 60 * 24 * HOUR);
});

test("more work never ends earlier, and no hour begun later ends sooner", () => {
  const small = fc.integer({ min: 0, max: 50 });
  const stretches = fc.array(fc.tuple(small, small), { maxLength: 8 }).map((all) => {
    let at = 0;
    return all.map(([gap, length]) => {
      const start = at + gap + 1;
      at = start + length + 1;
      return { start, end: at };
    });
  });
  fc.assert(
    fc.property(stretches, small, small, (open, work, now) => {
      const ends = (more: number, from: number) =>
        workEnds(more, intersect(open, [{ start: from, end: 10_000 }])) ?? Infinity;
      expect(ends(work, now)).toBeLessThanOrEqual(ends(work + 1, now));
      expect(ends(work, now)).toBeLessThanOrEqual(ends(work, now + 1));
      expect(ends(work, now)).toBeGreaterThanOrEqual(now);
    }),
    { numRuns: 1_000 },
  );
});
