import { beforeAll, beforeEach, expect, test } from "vitest";
import {
  admit,
  type BookingWorld,
  firstOffer,
  hold,
  makeBookingWorld,
  monday,
  move,
  newClock,
} from "../setup/booking-story.ts";
import { query } from "../setup/database.ts";
import { useService } from "../setup/service.ts";
import { publish } from "../setup/story.ts";

const clock = newClock();
const service = useService({ clock, emptyBetween: false, environment: { HOLDS_OF_A_BUYER: "2" } });
let world: BookingWorld;
let cars: string[];
beforeAll(async () => {
  world = await makeBookingWorld(service());
  for (let more = 0; more < 5; more += 1) await admit(world.inspector, world.operator);
  cars = [world.vehicle];
  for (let more = 0; more < 5; more += 1) cars.push((await publish(world.dealer)).vehicle);
});
beforeEach(async () => {
  clock.set(monday);
  await query(service().databaseUrl, "UPDATE appointment SET state = 'cancelled', deadline = NULL");
});
/** The hour that is best for each car now, asked for at once. */
const askFor = async (wanted: readonly string[]) => {
  const bodies = [];
  for (const vehicle of wanted)
    bodies.push({ vehicles: [vehicle], offer: await firstOffer(world.buyer, vehicle) });
  return Promise.all(bodies.map((body) => world.buyer.ask("appointments.hold", { body })));
};
const held = () =>
  query<{ car: string }>(
    service().databaseUrl,
    "SELECT vehicle_id AS car FROM appointment_car WHERE state = 'held'",
  );

test("of many hours asked for at once a buyer holds two, and one who lets go takes another", async () => {
  const answers = await askFor(cars);
  // Some lose the hour to the one before; two at most are held whatever the order.
  expect(answers.filter(({ status }) => status === 201).length).toBeLessThanOrEqual(2);
  const [first] = await held();
  while ((await held()).length < 2) {
    const free = cars.find((car) => car !== first?.car) ?? "";
    await hold(world.buyer, free);
  }
  const [one, two] = await held();
  const third = cars.find((car) => car !== one?.car && car !== two?.car) ?? "";
  const body = { vehicles: [third], offer: await firstOffer(world.buyer, third) };
  const refused = await world.buyer.ask("appointments.hold", { body });
  expect([refused.status, refused.headers["retry-after"]]).toEqual([409, "600"]);
  expect(refused.body).toMatchObject({ type: expect.stringContaining("holds-open") });
  expect(refused.body.detail).toContain("Book it or cancel it, or wait 10 minutes");
  await move(service(), world.buyer, "appointments.cancel", String(refused.body.appointment), {
    cause: "buyer-withdrew",
  });
  await world.buyer.does("appointments.hold", { body });
});

test("for one car a buyer holds one hour, until it runs out; another buyer may hold another", async () => {
  await hold(world.buyer, world.vehicle);
  const body = { vehicles: [world.vehicle], offer: await firstOffer(world.buyer, world.vehicle) };
  const refused = await world.buyer.isRefused("appointments.hold", { body });
  expect([refused.code, refused.detail.includes("for this car already")]).toEqual(["holds-open", true]);
  await hold(world.otherBuyer, world.vehicle);
  clock.set(new Date(monday.getTime() + 11 * 60_000));
  await hold(world.buyer, world.vehicle);
});
