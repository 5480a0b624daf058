import { beforeAll, expect, test } from "vitest";
import {
  type BookingWorld,
  calendarBody,
  makeBookingWorld,
  newClock,
  weekdays,
} from "../api/setup/booking-story.ts";
import type { Asked, Person } from "../api/setup/person.ts";
import { useService } from "../api/setup/service.ts";

const service = useService({ clock: newClock(), emptyBetween: false });
let world: BookingWorld;
beforeAll(async () => {
  world = await makeBookingWorld(service());
});

type Costly = readonly [words: string, ask: () => readonly [Person, Parameters<Person["ask"]>[0], Asked]];

/** As dear as a contract lets hours be: rules that count from long ago, and every one of them. */
const dearHours = {
  zone: "America/Chicago",
  open: Array.from({ length: 30 }, (_, at) => ({
    ...weekdays("06:00", "20:00"),
    opens: `2000-01-${String(1 + (at % 28)).padStart(2, "0")}T06:00:00`,
    rrule: "FREQ=DAILY;BYMONTH=1,2,4,5,7,8,9,10,12;BYMONTHDAY=1,3,5,7,9,11,13,15,17,19,21,23,25,27",
  })),
};
const attacks: readonly Costly[] = [
  [
    "hours as dear as may be",
    () => [
      world.inspector,
      "calendars.layOut",
      { body: { hours: dearHours, from: "2027-05-03", until: "2027-07-01" } },
    ],
  ],
  [
    "hours as dear as may be, saved",
    () => [
      world.inspector,
      "calendars.create",
      { body: calendarBody(world.inspector, { hours: dearHours }) },
    ],
  ],
  ["searches", () => [world.buyer, "offers.list", { path: { id: world.vehicle } }]],
];

/**
 * So many costly requests at once, and beside them ordinary ones, each sent when the one before is answered. If the costly ones
 * held everybody up until the last of them, no ordinary one would be answered before it.
 */
async function answeredMeanwhile(
  [, ask]: Costly,
  costly: number,
): Promise<{ meanwhile: number; failed: number }> {
  const waiting = { left: costly };
  let failed = 0;
  const attack = Array.from({ length: costly }, async () => {
    const [person, route, asked] = ask();
    const { status } = await person.ask(route, asked);
    waiting.left -= 1;
    if (status >= 500) failed += 1;
  });
  let meanwhile = 0;
  while (waiting.left > 0) {
    const { status } = await world.otherBuyer.ask("account.get");
    if (status !== 200) failed += 1;
    else if (waiting.left > 0) meanwhile += 1;
  }
  await Promise.all(attack);
  return { meanwhile, failed };
}

test.each(attacks)(
  "during %s others are answered after one of them at most, not after all",
  async (...attack) => {
    const costly = 6;
    const { meanwhile, failed } = await answeredMeanwhile(attack, costly);
    // One answer between any two of the costly ones would be five; sockets and lists are read some at a time, so a third will do.
    expect({ failed, enough: meanwhile >= costly / 3 }).toEqual({ failed: 0, enough: true });
  },
);
