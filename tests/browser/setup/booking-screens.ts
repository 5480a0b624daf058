import type { Page } from "playwright-core";
import type { Person } from "../../api/setup/person.ts";
import type { BookingScene } from "./booking-scene.ts";
import type { Screen } from "./screens.ts";

type Revisions = { readonly id: string };

/** Asks for the first hour on offer, as the buyer's page would. */
export async function requestHour({ buyer, vehicle }: BookingScene, at = 0): Promise<string> {
  const { offers } = await buyer.does("offers.list", { path: { id: vehicle } });
  const offer = offers[at];
  if (offer === undefined) throw new Error("No hour is offered.");
  const { inspector, start, bays, cost } = offer;
  const body = {
    vehicles: [vehicle],
    offer: { inspector, start, bays: bays.map(({ bay }) => ({ bay })), total: cost.total },
  };
  return (await buyer.does("appointments.hold", { body })).id;
}

const current = (person: Person, { id }: Revisions) => person.does("appointments.get", { path: { id } });

export async function takeRequested(scene: BookingScene, id: string): Promise<void> {
  const { revision, terms } = await current(scene.buyer, { id });
  await scene.buyer.does("appointments.request", { path: { id }, revision, body: { terms: terms.version } });
}

export async function takeAccepted(scene: BookingScene, id: string): Promise<void> {
  const { revision } = await current(scene.inspector, { id });
  const body = { independent: true };
  await scene.inspector.does("appointments.accept", { path: { id }, revision, body });
}

/** Everything that must be allowed is. */
export async function takeConfirmed(scene: BookingScene, id: string): Promise<void> {
  const { revision, plan } = await current(scene.dealer, { id });
  const permissions = plan.toAllow.map((one) => ({ ...one, allowed: true }));
  await scene.dealer.does("appointments.confirm", {
    path: { id },
    revision,
    body: { access: true, permissions },
  });
}

const openFirstHour = async (page: Page): Promise<void> => {
  await page
    .getByRole("button", { name: /Varga-Reyes, \$/ })
    .first()
    .click();
  await page.getByRole("button", { name: "Hold this hour for 10 minutes" }).waitFor();
};
const explainDay = async (page: Page): Promise<void> => {
  await page
    .getByRole("button", { name: /^Why not another hour on/ })
    .first()
    .click();
  await page.getByText("The site is not open for the whole visit").first().waitFor();
};

/** The screens on which nothing is booked yet. */
export const screensBefore = (scene: BookingScene, week: string): readonly Screen[] => {
  const { buyer, dealer, inspector, operator, vehicle } = scene;
  return [
    { name: "booking-brief", by: buyer, address: `/cars/${vehicle}/brief` },
    { name: "booking-list", by: buyer, address: `/cars/${vehicle}/hours`, before: openFirstHour },
    {
      name: "booking-week",
      by: buyer,
      address: `/cars/${vehicle}/hours?view=week&from=${week}`,
      before: explainDay,
    },
    { name: "booking-car", by: buyer, address: `/cars/${vehicle}` },
    { name: "booking-none", by: buyer, address: "/appointments" },
    { name: "booking-calendars", by: inspector, address: "/calendars" },
    { name: "booking-new-calendar", by: inspector, address: "/calendars/new" },
    { name: "booking-calendar", by: inspector, address: `/calendars/${scene.calendar}` },
    { name: "booking-sites", by: dealer, address: "/sites" },
    { name: "booking-new-site", by: dealer, address: "/sites/new" },
    { name: "booking-site", by: dealer, address: `/sites/${scene.site}` },
    { name: "booking-admissions", by: operator, address: "/admissions" },
  ];
};

/** One visit at one moment, as each of the three sees it, with the lists it stands in. */
export const screensOf = (scene: BookingScene, state: string, id: string): readonly Screen[] =>
  (["buyer", "inspector", "dealer"] as const).map((who) => ({
    name: `booking-${state}-${who}`,
    by: scene[who],
    address: `/appointments/${id}`,
  }));
