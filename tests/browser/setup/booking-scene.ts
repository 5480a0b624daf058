import type { Person } from "../../api/setup/person.ts";
import type { Service } from "../../api/setup/service.ts";
import { makePerson } from "../../api/setup/world.ts";
import { demoPeople, stateDemoCar, type DemoPeople } from "./demo-car.ts";

const weekdays = (opens: string, closes: string) => ({
  opens: `2026-01-05T${opens}:00`,
  closes,
  rrule: "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR",
});
const zone = "America/Denver";

/** An invented yard on the plains, and bases an hour and two from it. */
const yard = { latitude: 40.12, longitude: -104.71 };
const bases = [
  { latitude: 40.39, longitude: -105.02 },
  { latitude: 39.64, longitude: -104.98 },
] as const;

const siteBody = (organization: string) => ({
  organization,
  name: "Saltgrass Yard",
  address: "14 Saltgrass Road",
  place: yard,
  hours: { zone, open: [weekdays("08:00", "17:30")] },
  closures: [],
  bays: ["North lift", "South lift"],
  fees: { currency: "USD", perVisit: 2_500, perLiftSpell: 1_500 },
});

const calendarBody = (person: Person, name: string, at: 0 | 1) => ({
  organization: person.organization,
  account: person.account,
  name,
  hours: {
    zone,
    open: [weekdays("06:30", "19:00")],
    away: [{ opens: "2026-01-07T12:00:00", closes: "13:00", rrule: "FREQ=WEEKLY;BYDAY=WE" }],
  },
  base: bases[at],
  radius: 200_000,
  speed: 20,
  notice: 24 * 60,
  fees: { currency: "USD", perVisit: 42_000 + at * 3_000, perExtraCar: 20_000, perMile: 65 },
  skills: at === 0 ? ["body", "engine"] : ["structure", "welding"],
});

export type BookingScene = DemoPeople & {
  readonly otherInspector: Person;
  readonly operator: Person;
  readonly vehicle: string;
  readonly statement: string;
  readonly site: string;
  readonly calendar: string;
  readonly otherCalendar: string;
};

/** A published car at a site with two lifts, and two admitted inspectors; one had to do with the dealer years ago. */
export async function bookingScene(service: Service): Promise<BookingScene> {
  const people = await demoPeople(service);
  const otherInspector = await makePerson(service, "inspector", "Casimir Holt-Adeyemi");
  const operator = await makePerson(service, "operator", "Perpetua Lindqvist-Rao");
  const { dealer, inspector } = people;
  const { id: site } = await dealer.does("sites.create", { body: siteBody(dealer.organization) });
  const enter = async (person: Person, name: string, at: 0 | 1): Promise<string> => {
    const { id } = await person.does("calendars.create", { body: calendarBody(person, name, at) });
    const body = { decision: "admit", reason: "Identity, insurance and qualification seen." };
    await operator.does("admissions.decide", { path: { id }, revision: 1, body });
    return id;
  };
  const calendar = await enter(inspector, "Ottoline Varga-Reyes", 0);
  const otherCalendar = await enter(otherInspector, "Casimir Holt-Adeyemi", 1);
  await otherInspector.does("interests.declare", {
    path: { id: otherCalendar },
    body: {
      kind: "supplies",
      dealer: dealer.organization,
      holder: "firm",
      since: "2021-03-01T00:00:00Z",
      endedAt: "2023-06-30T00:00:00Z",
      note: "Supplied paint gauges.",
    },
  });
  const { vehicle, statement } = await stateDemoCar(people, "larksong");
  return { ...people, otherInspector, operator, vehicle, statement, site, calendar, otherCalendar };
}
