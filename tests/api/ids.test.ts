import { expect, test } from "vitest";
import { SetClock } from "../../apps/api/src/platform/clock/index.ts";
import { TimeIds } from "../../apps/api/src/platform/database/ids.ts";

test("ids made in the same millisecond are different and sort as they were made", () => {
  const ids = new TimeIds(new SetClock(new Date("2027-05-03T14:00:00Z")));
  const made = Array.from({ length: 2_000 }, () => ids.next());
  expect(new Set(made).size).toBe(made.length);
  expect(made).toEqual(made.toSorted());
});

test("ids of a later moment sort behind", () => {
  const clock = new SetClock(new Date("2027-05-03T14:00:00Z"));
  const ids = new TimeIds(clock);
  const before = ids.next();
  clock.set(new Date("2027-05-03T14:00:00.001Z"));
  expect(ids.next() > before).toBe(true);
});
