import { expect, test } from "vitest";
import { decide } from "@evenhand/booking/appointment";
import { DAY, HOUR } from "../../testing/builders.ts";
import { GOOD, inState, move, NEW_SLOT, START } from "../../testing/appointments.ts";

const late = START - HOUR;

test("what a late change left owing stays owing when the visit is moved again before anybody confirmed it", () => {
  const once = move(inState("confirmed"), "reschedule", "buyer", late);
  expect([once.state, once.carriedShare > 0]).toEqual(["requested", true]);
  const later = { start: NEW_SLOT.start + DAY, end: NEW_SLOT.end + DAY };
  const twice = move(once, "reschedule", "buyer", late + 1, { ...GOOD, newHour: later });
  expect(twice.carriedShare).toBe(once.carriedShare);
});

test("a dealer whose car turns out warm once the visit is under way owes the wasted visit", () => {
  const facts = {
    ...GOOD,
    cause: "car-warm" as const,
    work: { setOut: true, minutesDone: 5, minutesPlanned: 180 },
  };
  const decision = decide(inState("under-way"), "cancel", "inspector", START + HOUR, facts);
  const settled = decision.kind === "refused" ? [] : decision.consequences;
  const settlement = settled.find((each) => each.code === "settle")?.settlement;
  // The visit's 40 000 and the travel's 1 000; the site that failed gets nothing.
  expect([settlement?.dealerOwes, settlement?.buyerPays, settlement?.inspectorGets]).toEqual([
    41_000, 0, 41_000,
  ]);
});
