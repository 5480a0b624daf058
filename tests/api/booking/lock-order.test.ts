import { beforeAll, expect, test } from "vitest";
import {
  type BookingWorld,
  confirm,
  findOffers,
  choose,
  makeBookingWorld,
  move,
  newClock,
  revisionOf,
} from "../setup/booking-story.ts";
import { query } from "../setup/database.ts";
import { useService } from "../setup/service.ts";
import { header, inspected, write } from "../setup/story.ts";

const rounds = 12;
const clock = newClock();
const service = useService({ clock, emptyBetween: false });
let world: BookingWorld;
beforeAll(async () => {
  world = await makeBookingWorld(service());
});

const on = <R extends object>(text: string, values: unknown[] = []) =>
  query<R>(service().databaseUrl, text, values);
const deadlocks = async (): Promise<number> => {
  const counted = "SELECT deadlocks::int AS count FROM pg_stat_database WHERE datname = current_database()";
  return (await on<{ count: number }>(counted))[0]?.count ?? Number.NaN;
};

/** A visit under way with findings that can be sealed. */
async function underWay(): Promise<{ visit: string; report: string; revision: number }> {
  const { offers } = await findOffers(world.buyer, world.vehicle);
  const [offer] = offers;
  if (offer === undefined) throw new Error("nothing is offered");
  const visit = await confirm(service(), world, choose(offer));
  clock.set(new Date(offer.start));
  await move(service(), world.inspector, "appointments.start", visit);
  const { visits } = await world.inspector.does("appointments.get", { path: { id: visit } });
  const path = { id: visits[0]?.order ?? "" };
  const { id: report } = await world.inspector.does("reports.inspect", { path, body: header });
  return { visit, report, revision: await write(world.inspector, report, inspected) };
}

test(`a visit's report is sealed and the visit cancelled at the same instant, ${String(rounds)} times: one is first, nobody waits in a ring`, async () => {
  const before = await deadlocks();
  for (let round = 0; round < rounds; round += 1) {
    const { visit, report, revision } = await underWay();
    const cancelling = { cause: "car-warm", work: { setOut: true }, note: "Warm at arrival." };
    const meant = await revisionOf(service(), visit);
    const [sealed, cancelled] = await Promise.all([
      world.inspector.ask("reports.seal", { path: { id: report }, revision }),
      world.inspector.ask("appointments.cancel", {
        path: { id: visit },
        revision: meant,
        body: cancelling,
      }),
    ]);
    const [row] = await on<{ state: string }>("SELECT state FROM appointment WHERE id = $1", [visit]);
    const cancelWasFirst = cancelled.status === 201;
    // What was begun is sealed in either case.
    expect([sealed.status, row?.state, cancelled.status]).toEqual(
      cancelWasFirst ? [201, "cancelled", 201] : [201, "reported", 412],
    );
  }
  expect(await deadlocks()).toBe(before);
});
