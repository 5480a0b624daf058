import assert from "node:assert/strict";
import type { ChosenOffer, Offers } from "@evenhand/shared/http/booking";
import { SetClock } from "../../../apps/api/src/platform/clock/index.ts";
import { query } from "./database.ts";
import type { Person } from "./person.ts";
import type { Service } from "./service.ts";
import { publish } from "./story.ts";
import { makeWorld, type World } from "./world.ts";

/** Monday, 3 May 2027, nine in the morning in Chicago. */
export const monday = new Date("2027-05-03T14:00:00Z");
export const newClock = (): SetClock => new SetClock(monday);

export const weekdays = (opens: string, closes: string) => ({
  opens: `2026-01-05T${opens}:00`,
  closes,
  rrule: "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR",
});
const zone = "America/Chicago";

/** An invented yard on a real plain. */
export const yard = { latitude: 41.5, longitude: -88.1 };
export const near = { latitude: 41.6, longitude: -88.1 };

export const siteBody = (dealer: Person, more: object = {}) => ({
  organization: dealer.organization,
  name: "The yard",
  address: "1 Plain Road",
  place: yard,
  hours: { zone, open: [weekdays("08:00", "18:00")] },
  bays: ["North lift"],
  fees: { currency: "USD", perVisit: 2_000, perLiftSpell: 1_500 },
  ...more,
});

export const calendarBody = (inspector: Person, more: object = {}) => ({
  organization: inspector.organization,
  name: "Ines Arkwright",
  account: inspector.account,
  hours: { zone, open: [weekdays("06:00", "20:00")] },
  base: near,
  radius: 200_000,
  speed: 20,
  notice: 24 * 60,
  fees: { currency: "USD", perVisit: 40_000, perExtraCar: 20_000, perMile: 50 },
  skills: ["body", "engine"],
  ...more,
});

/** An inspector of the firm, admitted. */
export async function admit(inspector: Person, operator: Person, more: object = {}): Promise<string> {
  const { id } = await inspector.does("calendars.create", { body: calendarBody(inspector, more) });
  const body = { decision: "admit", reason: "Papers seen." };
  await operator.does("admissions.decide", { path: { id }, revision: 1, body });
  return id;
}

export type BookingWorld = World & {
  site: string;
  calendar: string;
  vehicle: string;
  statement: string;
  report: string;
};

/** Sessions outlast whatever hour a test sets. */
export const lastingSessions = (service: Pick<Service, "databaseUrl">): Promise<object[]> =>
  query(service.databaseUrl, "UPDATE session SET expires_at = '2100-01-01'");

/** A published car at a site with one lift, and one inspector who can come. */
export async function makeBookingWorld(service: Pick<Service, "url" | "databaseUrl">): Promise<BookingWorld> {
  const world = await makeWorld(service);
  await lastingSessions(service);
  const { id: site } = await world.dealer.does("sites.create", { body: siteBody(world.dealer) });
  const calendar = await admit(world.inspector, world.operator);
  const { vehicle, statement, report } = await publish(world.dealer);
  return { ...world, site, calendar, vehicle, statement, report };
}

export const findOffers = (
  buyer: Person,
  vehicle: string,
  asked: Record<string, string> = {},
): Promise<Offers> => buyer.does("offers.list", { path: { id: vehicle }, query: asked });

/** What is sent of an offer. */
export const choose = ({ inspector, start, bays, cost }: Offers["offers"][number]): ChosenOffer => ({
  inspector,
  start,
  bays: bays.map(({ bay }) => ({ bay })),
  total: cost.total,
});

export async function firstOffer(
  buyer: Person,
  vehicle: string,
  asked: Record<string, string> = {},
): Promise<ChosenOffer> {
  const [offer] = (await findOffers(buyer, vehicle, asked)).offers;
  assert.ok(offer, "nothing is offered");
  return choose(offer);
}

export async function hold(buyer: Person, vehicle: string, offer?: ChosenOffer): Promise<string> {
  const body = { vehicles: [vehicle], offer: offer ?? (await firstOffer(buyer, vehicle)) };
  return (await buyer.does("appointments.hold", { body })).id;
}

type Move =
  | "appointments.request"
  | "appointments.accept"
  | "appointments.decline"
  | "appointments.confirm"
  | "appointments.reschedule"
  | "appointments.cancel"
  | "appointments.start"
  | "appointments.takeToRoad"
  | "appointments.miss"
  | "appointments.report"
  | "appointments.proposeBrief"
  | "appointments.answerBrief";

export const revisionOf = async (service: Service, id: string): Promise<number> =>
  (
    await query<{ revision: number }>(service.databaseUrl, "SELECT revision FROM appointment WHERE id = $1", [
      id,
    ])
  )[0]?.revision ?? 0;

/** Makes a move at whatever revision it is at. */
export async function move(
  service: Service,
  person: Person,
  route: Move,
  id: string,
  body: object = {},
): Promise<void> {
  await person.does(route, { path: { id }, revision: await revisionOf(service, id), body });
}
export async function moveRefused(
  service: Service,
  person: Person,
  route: Move,
  id: string,
  body: object = {},
) {
  return person.isRefused(route, { path: { id }, revision: await revisionOf(service, id), body });
}

export async function request(
  service: Service,
  { buyer, vehicle }: BookingWorld,
  offer?: ChosenOffer,
): Promise<string> {
  const id = await hold(buyer, vehicle, offer);
  const { terms } = await buyer.does("appointments.get", { path: { id } });
  await move(service, buyer, "appointments.request", id, { terms: terms.version });
  return id;
}
export async function accept(service: Service, world: BookingWorld, offer?: ChosenOffer): Promise<string> {
  const id = await request(service, world, offer);
  await move(service, world.inspector, "appointments.accept", id, { independent: true });
  return id;
}
export async function confirm(service: Service, world: BookingWorld, offer?: ChosenOffer): Promise<string> {
  const id = await accept(service, world, offer);
  const { plan } = await world.dealer.does("appointments.get", { path: { id } });
  const permissions = plan.toAllow.map((each) => ({ ...each, allowed: true }));
  await move(service, world.dealer, "appointments.confirm", id, { access: true, permissions });
  return id;
}
