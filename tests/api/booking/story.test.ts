import { beforeEach, expect, test } from "vitest";
import { BookingJobs } from "../../../apps/api/src/capabilities/booking/index.ts";
import {
  accept,
  type BookingWorld,
  choose,
  confirm,
  findOffers,
  firstOffer,
  hold,
  makeBookingWorld,
  monday,
  move,
  moveRefused,
  newClock,
  request,
} from "../setup/booking-story.ts";
import { query } from "../setup/database.ts";
import { useService } from "../setup/service.ts";
import { header, inspected, seal, write } from "../setup/story.ts";

const clock = newClock();
const service = useService({ clock });
let world: BookingWorld;
beforeEach(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
});
const see = (person: BookingWorld["buyer"], id: string) => person.does("appointments.get", { path: { id } });
const at = (iso: string, minutes = 0) => new Date(Date.parse(iso) + minutes * 60_000);

test("offers come cheapest first, within hours, notice and daylight, with who the inspector is beholden to", async () => {
  const { offers, inspectors, zone, plan } = await findOffers(world.buyer, world.vehicle);
  expect(zone).toBe("America/Chicago");
  expect(plan.lifts).toHaveLength(2);
  expect(offers[0]?.start).toBe("2027-05-04T14:15:00.000Z");
  expect(offers.map(({ start }) => start)).toEqual(offers.map(({ start }) => start).toSorted());
  expect(inspectors).toMatchObject([
    { id: world.calendar, shareOfWork: { atDealer: 0, all: 0, share: null } },
  ]);
});

test("a further page begins where the first ended", async () => {
  const first = await findOffers(world.buyer, world.vehicle, { limit: "3" });
  const second = await findOffers(world.buyer, world.vehicle, { limit: "3", after: first.next ?? "" });
  const both = await findOffers(world.buyer, world.vehicle, { limit: "6" });
  expect([...first.offers, ...second.offers]).toEqual(both.offers);
});

test("a day is explained, start by start", async () => {
  const path = { id: world.vehicle };
  const sunday = await world.buyer.does("offers.explain", { path, query: { date: "2027-05-09" } });
  expect(sunday.hours).toHaveLength(96);
  expect(sunday.hours[40]?.site).toMatchObject([{ code: "site-closed" }]);
  const today = await world.buyer.does("offers.explain", { path, query: { date: "2027-05-03" } });
  const ten = today.hours.find(({ start }) => start === "2027-05-03T15:00:00.000Z");
  expect(ten?.inspectors).toMatchObject([{ inspector: world.calendar, reasons: [{ code: "notice" }] }]);
});

test("buyer, inspector and dealer take a visit from the offer to the report", async () => {
  const id = await confirm(service(), world);
  const booked = await see(world.buyer, id);
  expect(booked).toMatchObject({ state: "confirmed", as: "buyer", independence: { interests: [] } });
  expect(booked.history.map((each) => each.move)).toEqual(["hold", "request", "accept", "confirm"]);
  expect(booked.payments.map(({ kind }) => kind)).toEqual(["authorized", "captured"]);
  clock.set(at(booked.start));
  await move(service(), world.inspector, "appointments.start", id);
  const { visits } = await see(world.inspector, id);
  const order = visits[0]?.order ?? "";
  const { id: report } = await world.inspector.does("reports.inspect", { path: { id: order }, body: header });
  await seal(world.inspector, report, await write(world.inspector, report, inspected));
  const done = await see(world.buyer, id);
  expect(done).toMatchObject({ state: "reported", settlement: { buyerPays: booked.cost?.total.minor } });
  expect((await see(world.inspector, id)).payments.map(({ kind }) => kind)).toEqual(["paid-out"]);
});

test("the inspector does not know the buyer before accepting, and the dealer knows of nothing before that", async () => {
  const id = await request(service(), world);
  const asked = await see(world.inspector, id);
  const ordered = await world.buyer.does("brief.get", { path: { id: world.vehicle } });
  expect([ordered.depth, asked.buyer]).toEqual(["half-day", null]);
  // What is proposed to the buyer goes by the statement, and is the buyer's alone.
  const path = { id: world.vehicle };
  const { from, looks } = await world.buyer.does("lookFirst.get", { path });
  expect([from, looks.length, looks[0]?.severity]).toEqual(["statement", 12, "halt"]);
  for (const other of [world.inspector, world.dealer])
    expect((await other.isRefused("lookFirst.get", { path })).status).toBe(403);
  expect(asked.visits[0]?.brief?.items).toEqual(ordered.items);
  expect((await world.dealer.isRefused("appointments.get", { path: { id } })).code).toBe("not-found");
  await move(service(), world.inspector, "appointments.accept", id, { independent: true });
  expect((await see(world.inspector, id)).buyer?.id).toBe(world.buyer.organization);
  const dealers = await see(world.dealer, id);
  expect([dealers.buyer, dealers.cost, dealers.visits[0]?.brief]).toEqual([null, null, null]);
});

test("a hold is not the inspector's to see, and is over after ten minutes", async () => {
  const id = await hold(world.buyer, world.vehicle);
  expect((await world.inspector.isRefused("appointments.get", { path: { id } })).code).toBe("not-found");
  clock.set(at(monday.toISOString(), 10));
  const late = await moveRefused(service(), world.buyer, "appointments.request", id, { terms: "2026-11" });
  expect(late["shortfalls"]).toMatchObject([{ code: "hold-running" }, { code: "payment-authorized" }]);
  expect(await service().app.get(BookingJobs).sweep()).toBe(1);
  expect((await see(world.buyer, id)).state).toBe("expired");
});

test("a hold that has run out is ended by whoever wants the hour", async () => {
  const offer = await firstOffer(world.buyer, world.vehicle, { from: "2027-05-10" });
  const first = await hold(world.buyer, world.vehicle, offer);
  const refused = await world.otherBuyer.isRefused("appointments.hold", {
    body: { vehicles: [world.vehicle], offer },
  });
  expect(refused).toMatchObject({ code: "hour-taken", status: 409 });
  clock.set(at(monday.toISOString(), 10));
  await hold(world.otherBuyer, world.vehicle, offer);
  expect((await see(world.buyer, first)).state).toBe("expired");
});

test("nobody books under terms they were not shown", async () => {
  const id = await hold(world.buyer, world.vehicle);
  const refused = await moveRefused(service(), world.buyer, "appointments.request", id, { terms: "1999" });
  expect(refused["shortfalls"]).toMatchObject([
    { code: "terms-acknowledged", version: "2026-11" },
    { code: "payment-authorized" },
  ]);
});

test("the dealer confirms only with every item answered that must be allowed", async () => {
  const id = await accept(service(), world);
  const refused = await moveRefused(service(), world.dealer, "appointments.confirm", id, { access: true });
  expect(refused["shortfalls"]).toMatchObject([{ code: "access-agreed" }]);
});

test("a dealer declines an hour with a cause about the car or the site, never without one", async () => {
  const id = await accept(service(), world);
  const refused = await moveRefused(service(), world.dealer, "appointments.decline", id, {});
  expect(refused["shortfalls"]).toMatchObject([
    { code: "cause", allowed: ["dealer-unavailable", "car-sold"] },
  ]);
  await move(service(), world.dealer, "appointments.decline", id, { cause: "dealer-unavailable" });
  const seen = await see(world.buyer, id);
  expect(seen).toMatchObject({ state: "declined" });
  expect(seen.payments.map(({ kind }) => kind)).toEqual(["authorized", "released"]);
  const [row] = await query<{ state: string }>(service().databaseUrl, "SELECT state FROM inspection_order");
  expect(row?.state).toBe("cancelled");
});

test("a request that nobody answers expires, and the hour is free again", async () => {
  const offer = await firstOffer(world.buyer, world.vehicle, { from: "2027-05-10" });
  const id = await request(service(), world, offer);
  clock.set(at(monday.toISOString(), 24 * 60));
  await service().app.get(BookingJobs).sweep();
  expect((await see(world.buyer, id)).state).toBe("expired");
  await hold(world.otherBuyer, world.vehicle, offer);
});

test("an inspector who does not come has missed the visit, and the buyer has everything back", async () => {
  const id = await confirm(service(), world);
  const { start, cost } = await see(world.buyer, id);
  const early = await moveRefused(service(), world.buyer, "appointments.miss", id);
  expect(early["shortfalls"]).toMatchObject([{ code: "past-grace" }]);
  clock.set(at(start, 60));
  await service().app.get(BookingJobs).sweep();
  const seen = await see(world.buyer, id);
  expect(seen).toMatchObject({ state: "missed", settlement: { buyerRefunded: cost?.total.minor } });
  expect(seen.payments.map(({ kind }) => kind)).toEqual(["authorized", "captured", "refunded"]);
  const { orders } = await world.buyer.does("vehicles.get", { path: { id: world.vehicle } });
  const ended = await world.buyer.does("orders.get", { path: { id: orders[0]?.id ?? "" } });
  expect(ended).toMatchObject({
    state: "cancelled",
    reason: "Nobody began the visit at its hour, so it counts as missed.",
  });
});

test("moving a visit keeps its history, asks the inspector again, and carries what a late withdrawal would cost", async () => {
  const first = await firstOffer(world.buyer, world.vehicle);
  const id = await confirm(service(), world, first);
  const offers = await findOffers(world.buyer, world.vehicle, { moving: id, from: "2027-05-11" });
  const offer = choose(offers.offers[0]!);
  await move(service(), world.buyer, "appointments.reschedule", id, { offer });
  const seen = await see(world.buyer, id);
  expect(seen).toMatchObject({ state: "requested", start: offer.start });
  expect(seen.history.at(-1)).toMatchObject({ move: "reschedule", to: "requested", start: offer.start });
  expect(seen.history[0]).toMatchObject({ move: "hold", start: first.start });
  await hold(world.otherBuyer, world.vehicle, first);
});

test("what a cancellation costs is shown beforehand, by cause, and is what it then costs", async () => {
  const id = await confirm(service(), world);
  const { cancelling } = await see(world.buyer, id);
  expect(cancelling.map(({ cause }) => cause)).toEqual(["buyer-withdrew"]);
  await move(service(), world.buyer, "appointments.cancel", id, { cause: "buyer-withdrew" });
  expect((await see(world.buyer, id)).settlement).toEqual(cancelling[0]?.settlement);
});

test("a warm car is the dealer's to pay for", async () => {
  const id = await confirm(service(), world);
  const { start, cost } = await see(world.buyer, id);
  clock.set(at(start));
  const body = { cause: "car-warm", work: { setOut: true }, note: "Warm at arrival." };
  await move(service(), world.inspector, "appointments.cancel", id, body);
  const total = cost?.total.minor ?? 0;
  expect((await see(world.buyer, id)).settlement).toMatchObject({ buyerPays: 0, buyerRefunded: total });
  expect((await see(world.dealer, id)).payments.map(({ kind }) => kind)).toEqual(["claimed"]);
});

test("a change meant for an older revision is refused, and a move out of turn says what works", async () => {
  const id = await hold(world.buyer, world.vehicle);
  const path = { id };
  const stale = await world.buyer.isRefused("appointments.request", {
    path,
    revision: 7,
    body: { terms: "x" },
  });
  expect(stale.code).toBe("revision-moved");
  const early = await moveRefused(service(), world.buyer, "appointments.reschedule", id, {
    offer: await firstOffer(world.buyer, world.vehicle),
  });
  expect(early).toMatchObject({ code: "appointment-state", moves: ["request", "cancel"] });
});
