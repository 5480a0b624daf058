import { Offers } from "@evenhand/shared/http/booking";
import { beforeEach, expect, test } from "vitest";
import {
  admit,
  type BookingWorld,
  choose,
  confirm,
  findOffers,
  firstOffer,
  hold,
  makeBookingWorld,
  monday,
  newClock,
  siteBody,
} from "../setup/booking-story.ts";
import { query } from "../setup/database.ts";
import { useService } from "../setup/service.ts";
import { publish } from "../setup/story.ts";

const clock = newClock();
const service = useService({ clock });
let world: BookingWorld;
beforeEach(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
});

const copy = (columns: string) => `INSERT INTO appointment SELECT (jsonb_populate_record(a, '{${columns}}')).*
  FROM appointment a WHERE a.id = $1`;
const part = (table: string, extra: string) => `INSERT INTO ${table} SELECT (jsonb_populate_record(p,
  '{"appointment_id": "01920000-0000-7000-8000-000000000001"${extra}}')).* FROM ${table} p WHERE p.appointment_id = $1`;

test("the constraints hold against raw SQL: inspector, lift and car", async () => {
  const id = await confirm(service(), world);
  const sql = (text: string) => query(service().databaseUrl, text, [id]);
  const other = '"id": "01920000-0000-7000-8000-000000000001"';
  await expect(sql(copy(other))).rejects.toThrow(/appointment_inspector_free/);
  const elsewhere = `${other}, "inspector_id": "${await admit(world.inspector, world.operator)}"`;
  await sql(copy(elsewhere));
  await expect(sql(part("appointment_bay", ""))).rejects.toThrow(/appointment_bay_free/);
  await expect(sql(part("appointment_car", ""))).rejects.toThrow(/appointment_car_free/);
  await expect(sql("UPDATE appointment SET ends_at = starts_at WHERE id = $1")).rejects.toThrow(
    /appointment_hour/,
  );
});

test("a part of a visit cannot have another state than the visit", async () => {
  const id = await confirm(service(), world);
  const change = query(
    service().databaseUrl,
    "UPDATE appointment_car SET state = 'cancelled' WHERE appointment_id = $1",
    [id],
  );
  await expect(change).rejects.toThrow(/appointment_car_appointment_id_state_fkey/);
});

test("what happened is never rewritten", async () => {
  const id = await hold(world.buyer, world.vehicle);
  const change = query(
    service().databaseUrl,
    "UPDATE appointment_move SET note = 'x' WHERE appointment_id = $1",
    [id],
  );
  await expect(change).rejects.toThrow(/never changed/);
});

/** Another dealer's car at a yard so many degrees further north, with a lift of its own. */
async function farCar(north: number): Promise<string> {
  const place = { latitude: 41.5 + north, longitude: -88.1 };
  await world.otherDealer.does("sites.create", { body: siteBody(world.otherDealer, { place }) });
  return (await publish(world.otherDealer)).vehicle;
}

/** An hour at the yard that ends before the far one begins, with too little time between them to drive. */
async function undrivable(far: string) {
  const near = (await findOffers(world.buyer, world.vehicle, { limit: "100" })).offers;
  const away = (await findOffers(world.otherBuyer, far, { limit: "100" })).offers;
  for (const first of near)
    for (const second of away) {
      const gap = Date.parse(second.start) - Date.parse(first.end);
      if (gap >= 0 && gap <= 30 * 60_000) return [choose(first), choose(second)] as const;
    }
  throw new Error("no such pair is offered");
}

test("of two visits that do not overlap but cannot be driven between, the second is refused for travel", async () => {
  const far = await farCar(1);
  const [first, second] = await undrivable(far);
  await hold(world.buyer, world.vehicle, first);
  const refused = await world.otherBuyer.isRefused("appointments.hold", {
    body: { vehicles: [far], offer: second },
  });
  expect(refused).toMatchObject({ code: "hour-taken", reasons: [{ code: "travel", direction: "before" }] });
});

test("asked for at the same instant, one of the two is refused, every time", async () => {
  const far = await farCar(1);
  for (let round = 0; round < 5; round += 1) {
    const [first, second] = await undrivable(far);
    const answers = await Promise.all([
      world.buyer.ask("appointments.hold", { body: { vehicles: [world.vehicle], offer: first } }),
      world.otherBuyer.ask("appointments.hold", { body: { vehicles: [far], offer: second } }),
    ]);
    expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([201, 409]);
    await query(service().databaseUrl, "UPDATE appointment SET state = 'cancelled'");
  }
});

test("a lost hour is answered with others, none of which overlaps it", async () => {
  const offer = await firstOffer(world.buyer, world.vehicle);
  await hold(world.buyer, world.vehicle, offer);
  const body = { vehicles: [world.vehicle], offer };
  const refused = await world.otherBuyer.ask("appointments.hold", { body });
  const { offers } = Offers.parse(refused.body.offers);
  expect(offers.length).toBeGreaterThan(0);
  expect(offers.map(({ start }) => start)).not.toContain(offer.start);
  const [next] = (await findOffers(world.otherBuyer, world.vehicle)).offers;
  await hold(world.otherBuyer, world.vehicle, choose(next!));
});

test("the same request sent twice holds one hour", async () => {
  const body = { vehicles: [world.vehicle], offer: await firstOffer(world.buyer, world.vehicle) };
  const key = "the-same-key-twice";
  const first = await world.buyer.does("appointments.hold", { body, key });
  expect(await world.buyer.does("appointments.hold", { body, key })).toEqual(first);
});

test("an inspector with an interest in the dealer, or people of the dealer's, is never offered", async () => {
  const path = { id: world.calendar };
  const since = "2020-01-01T00:00:00Z";
  const interest = { kind: "family", dealer: world.dealer.organization, holder: "inspector", since };
  const { id } = await world.inspector.does("interests.declare", { path, body: interest });
  expect((await findOffers(world.buyer, world.vehicle)).offers).toEqual([]);
  const day = { path: { id: world.vehicle }, query: { date: "2027-05-06" } };
  const explained = await world.buyer.does("offers.explain", day);
  expect(explained.hours[48]?.inspectors[0]?.reasons).toContainEqual({
    code: "not-independent",
    conflicts: [{ code: "interest-in-dealer", kind: "family", holder: "inspector" }],
  });
  await world.inspector.does("interests.end", { path: { id }, body: { endedAt: "2025-01-01T00:00:00Z" } });
  const { inspectors } = await findOffers(world.buyer, world.vehicle);
  expect(inspectors[0]?.past).toMatchObject([{ kind: "family" }]);
});
