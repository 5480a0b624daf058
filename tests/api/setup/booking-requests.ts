import type { RouteId } from "@evenhand/shared/access";
import { admit, choose, findOffers, move, revisionOf, siteBody, weekdays } from "./booking-story.ts";
import { query } from "./database.ts";
import type { Asked, Person } from "./person.ts";
import type { Variant, Who } from "./requests.ts";
import { header, type Scene } from "./scene.ts";
import { publish, write } from "./story.ts";

const everyDay = { ...weekdays("00:00", "24:00"), rrule: "FREQ=DAILY" };
const hours = { zone: "America/Chicago", open: [everyDay] };

type Place = { site: string; calendar: string };
const places = new WeakMap<Scene, Promise<Place>>();

/** A yard open at all hours with enough lifts, and inspectors enough for every request. */
function placeOf(scene: Scene): Promise<Place> {
  const found = places.get(scene) ?? makePlace(scene);
  places.set(scene, found);
  return found;
}
async function makePlace({ world: { dealer, inspector, operator } }: Scene): Promise<Place> {
  const bays = ["One", "Two", "Three", "Four"];
  const { id: site } = await dealer.does("sites.create", { body: siteBody(dealer, { hours, bays }) });
  const [calendar] = [
    await admit(inspector, operator, { hours }),
    await admit(inspector, operator, { hours }),
    await admit(inspector, operator, { hours }),
  ];
  return { site, calendar };
}

/** A published car that stands at the yard. */
async function newCar(scene: Scene): Promise<string> {
  const { site } = await placeOf(scene);
  const { vehicle } = await publish(scene.world.dealer);
  await scene.world.dealer.does("carPlace.put", { path: { id: vehicle }, body: { site } });
  return vehicle;
}

let searches = 0;
/** Each time on another day of the month ahead: with hundreds of visits booked, a search over all its days takes a second. */
async function offered(scene: Scene, buyer: Person) {
  const vehicle = await newCar(scene);
  searches += 1;
  const day = new Date(Date.now() + (3 + (searches % 25)) * 86_400_000).toISOString().slice(0, 10);
  const [offer] = (await findOffers(buyer, vehicle, { limit: "1", from: day, until: day })).offers;
  if (offer === undefined) throw new Error("nothing is offered");
  return { vehicles: [vehicle], offer: choose(offer) };
}

type State = "held" | "requested" | "accepted" | "confirmed";

/** A new appointment of the buyer, brought so far. */
async function bring(scene: Scene, to: State): Promise<string> {
  const { buyer, inspector, dealer } = scene.world;
  const { service } = scene;
  const { id } = await buyer.does("appointments.hold", { body: await offered(scene, buyer) });
  if (to === "held") return id;
  await move(service, buyer, "appointments.request", id, { terms: "2026-11" });
  if (to === "requested") return id;
  await move(service, inspector, "appointments.accept", id, { independent: true });
  if (to === "accepted") return id;
  await move(service, dealer, "appointments.confirm", id, await confirmation(dealer, id));
  return id;
}

async function confirmation(dealer: Person, id: string) {
  const { plan } = await dealer.does("appointments.get", { path: { id } });
  return { access: true, permissions: plan.toAllow.map((item) => ({ ...item, allowed: true })) };
}

let days = 0;
/** Puts an appointment where the present is: so many minutes ago, each on a day of its own unless it must be now. */
async function shift(
  { databaseUrl }: Scene["service"],
  id: string,
  state: string,
  now: boolean,
): Promise<void> {
  days += now ? 0 : 1;
  const begun = new Date(Date.now() - 90 * 60_000 - (now ? 0 : days) * 86_400_000);
  if (now)
    await query(
      databaseUrl,
      "UPDATE appointment SET state = 'cancelled' WHERE starts_at < now() + interval '1 hour' AND ends_at > now()",
    );
  const [row] = await query<{ by: number }>(
    databaseUrl,
    "SELECT extract(epoch FROM $2::timestamptz - starts_at)::float8 AS by FROM appointment WHERE id = $1",
    [id, begun],
  );
  const moved =
    "starts_at = starts_at + $2 * interval '1 second', ends_at = ends_at + $2 * interval '1 second'";
  for (const part of ["appointment_bay", "appointment_car"])
    await query(databaseUrl, `UPDATE ${part} SET ${moved} WHERE appointment_id = $1`, [id, row?.by]);
  await query(databaseUrl, `UPDATE appointment SET ${moved}, state = $3 WHERE id = $1`, [id, row?.by, state]);
}

const nothing = () => ({});
const asked = async (scene: Scene, id: string, body: object = {}): Promise<Asked> => ({
  path: { id },
  revision: await revisionOf(scene.service, id),
  body,
});
const kept = new WeakMap<Scene, Map<string, Promise<string>>>();
/** One for everybody who is refused; a new one for each who is not. */
function forEach(
  scene: Scene,
  person: Person,
  open: readonly Who[],
  key: string,
  make: () => Promise<string>,
) {
  if (open.some((who) => scene.world[who] === person)) return make();
  const known = kept.get(scene) ?? new Map<string, Promise<string>>();
  kept.set(scene, known);
  const found = known.get(key) ?? make();
  known.set(key, found);
  return found;
}

const one = (about: string, open: readonly Who[], ask: Variant["ask"]): Variant[] => [{ about, open, ask }];
const everybody: readonly Who[] = [
  "dealer",
  "otherDealer",
  "buyer",
  "otherBuyer",
  "inspector",
  "otherInspector",
  "operator",
];
const dealers: readonly Who[] = ["dealer", "otherDealer"];
const buyers: readonly Who[] = ["buyer", "otherBuyer"];
const inspectors: readonly Who[] = ["inspector", "otherInspector"];
const parties: readonly Who[] = ["buyer", "inspector", "dealer", "operator"];

/** A move asked of an appointment brought so far. */
const moveOf = (
  state: State,
  open: readonly Who[],
  body: (scene: Scene, id: string, person: Person) => Promise<object> | object = nothing,
): Variant[] =>
  one(`a visit that is ${state}`, open, async (scene, person) => {
    const key = `${state} ${open.join()} ${body.toString()}`;
    const id = await forEach(scene, person, open, key, () => bring(scene, state));
    return asked(scene, id, await body(scene, id, person));
  });

const shifted = (
  state: string,
  open: readonly Who[],
  now: boolean,
  prepare = async (_scene: Scene, _id: string) => {},
) =>
  one(`a visit that is ${state}`, open, async (scene, person) => {
    const id = await forEach(
      scene,
      person,
      open,
      `${state} ${open.join()} ${prepare.toString()}`,
      async () => {
        const made = await bring(scene, "confirmed");
        await shift(scene.service, made, state, now);
        await prepare(scene, made);
        return made;
      },
    );
    return asked(scene, id);
  });

const calendarAsked =
  (body: object, more: Partial<Asked> = {}) =>
  async (scene: Scene) => ({
    path: { id: (await placeOf(scene)).calendar },
    body,
    ...more,
  });
const dayQuery = { query: { from: "2027-05-03", until: "2027-05-09" } };
const interest = (scene: Scene) => ({
  kind: "supplies",
  dealer: scene.world.otherDealer.organization,
  holder: "inspector",
  since: "2020-01-01T00:00:00Z",
});

/** An item that half a day does not ask. */
const furtherItem = "doors.jambs";

/** The brief becomes one item that speaks to the gate, and the inspector finds it sound. */
async function seeGate({ service, world: { inspector } }: Scene, id: string): Promise<void> {
  const brief = JSON.stringify([{ item: "underbody.lift-points", core: true, minutes: 5, needs: ["lift"] }]);
  const [row] = await query<{ order: string }>(
    service.databaseUrl,
    `UPDATE appointment_car SET brief = $2 WHERE appointment_id = $1 RETURNING order_id AS order`,
    [id, brief],
  );
  const order = row?.order ?? "";
  const { id: report } = await inspector.does("reports.inspect", { path: { id: order }, body: header });
  await write(inspector, report, liftPointsSound);
}
const liftPointsSound = ["left-front", "left-rear", "right-rear", "right-front"].map((position) => ({
  item: "underbody.lift-points",
  position,
  answer: { kind: "choice" as const, option: "sound" },
}));
const markReported = async ({ service }: Scene, id: string): Promise<void> => {
  await query(
    service.databaseUrl,
    `UPDATE inspection_order SET state = 'reported' WHERE id IN (SELECT order_id FROM appointment_car WHERE appointment_id = $1)`,
    [id],
  );
};
const road = {
  consent: { by: "Delia", signedAt: "2026-01-01T00:00:00Z" },
  insurance: { reference: "P-1", validUntil: null },
  plates: { reference: "D-1", validUntil: null },
  damageBorneBy: "insurer",
};

const link = () => ({ name: "Bea's brother", expires: new Date(Date.now() + 86_400_000).toISOString() });
const complaint = (person: Person) => ({
  organization: person.organization,
  about: { kind: "other" },
  text: "Nobody came.",
});
/** The only complaint there is, since nobody sends as many a day as there are questions about one. */
async function complain({ service }: Scene, person: Person): Promise<string> {
  await query(service.databaseUrl, "TRUNCATE complaint CASCADE");
  return (await person.does("complaints.create", { body: complaint(person) })).id;
}
async function question(scene: Scene, send: boolean): Promise<string> {
  const { vehicle } = await publish(scene.world.dealer);
  const asking = { path: { id: vehicle }, body: { item: "electrics.horn", text: "Does it sound?", send } };
  return (await scene.world.buyer.does("questions.create", asking)).id;
}

/** Calendars, sites, offers and appointments: for each route, whom it is open to, object by object. */
export const bookingVariants: Readonly<Partial<Record<RouteId, readonly Variant[]>>> = {
  "calendars.create": one("the inspector's firm", ["inspector"], ({ world }) => ({
    body: {
      organization: world.inspector.organization,
      name: "New",
      hours,
      base: { latitude: 41, longitude: -88 },
      radius: 100_000,
      speed: 20,
      notice: 60,
      fees: { currency: "USD", perVisit: 1, perExtraCar: 1, perMile: 1 },
      skills: [],
    },
  })),
  "calendars.list": one("one's own", [...inspectors, "operator"], nothing),
  "calendars.get": one("an inspector of the firm", ["inspector", "operator"], async (scene) => ({
    path: { id: (await placeOf(scene)).calendar },
  })),
  "calendars.change": one(
    "an inspector of the firm",
    ["inspector"],
    calendarAsked({ radius: 150_000 }, { revision: 1 }),
  ),
  "calendars.days": one("an inspector of the firm", ["inspector"], async (scene) => ({
    path: { id: (await placeOf(scene)).calendar },
    ...dayQuery,
  })),
  "calendars.layOut": one("any hours", [...inspectors, ...dealers], () => ({
    body: { hours, from: "2027-05-03", until: "2027-05-09" },
  })),
  "interests.declare": one("an inspector of the firm", ["inspector"], async (scene) => ({
    path: { id: (await placeOf(scene)).calendar },
    body: interest(scene),
  })),
  "interests.end": one("an interest of an inspector", ["inspector"], async (scene) => {
    const path = { id: (await placeOf(scene)).calendar };
    const { id } = await scene.world.inspector.does("interests.declare", { path, body: interest(scene) });
    return { path: { id }, body: { endedAt: "2021-01-01T00:00:00Z" } };
  }),
  "dealings.declare": one("an inspector of the firm", ["inspector"], async (scene) => ({
    path: { id: (await placeOf(scene)).calendar },
    body: { vehicle: scene.listed.vehicle, dealing: "repaired" },
  })),
  "sites.create": one("the dealer's firm", ["dealer"], ({ world }) => ({ body: siteBody(world.dealer) })),
  "sites.list": one("one's own", dealers, nothing),
  "sites.get": one("the dealer's yard", ["dealer"], async (scene) => ({
    path: { id: (await placeOf(scene)).site },
  })),
  "sites.change": one("the dealer's yard", ["dealer"], async (scene) => ({
    path: { id: (await placeOf(scene)).site },
    revision: 1,
    body: { name: "Yard" },
  })),
  "sites.days": one("the dealer's yard", ["dealer"], async (scene) => ({
    path: { id: (await placeOf(scene)).site },
    ...dayQuery,
  })),
  "carPlace.get": one("a listed car", everybody, ({ listed }) => ({ path: { id: listed.vehicle } })),
  "carPlace.put": one("the dealer's car", ["dealer"], async (scene) => ({
    path: { id: scene.listed.vehicle },
    body: { site: (await placeOf(scene)).site },
  })),
  "admissions.list": one("the list", [...inspectors, "operator"], nothing),
  "admissions.decide": one("an inspection firm", ["operator"], ({ world }) => ({
    path: { id: world.otherInspector.organization },
    revision: 0,
    body: { decision: "admit", reason: "Papers seen." },
  })),
  "calendarFeeds.create": one("one's own", [...buyers, ...inspectors, ...dealers], (_scene, person) => ({
    body: { organization: person.organization, name: "Telephone" },
  })),
  "calendarFeeds.list": one("one's own", [...buyers, ...inspectors, ...dealers], nothing),
  "calendarFeeds.revoke": [
    ...one("one's own", [...buyers, ...inspectors, ...dealers], async ({ world }, person) => {
      const owner = person === world.operator ? world.buyer : person;
      const body = { organization: owner.organization, name: "Telephone" };
      return { path: { id: (await owner.does("calendarFeeds.create", { body })).id } };
    }),
    ...one("another's", [], async ({ world }, person) => {
      const owner = person === world.buyer ? world.dealer : world.buyer;
      const body = { organization: owner.organization, name: "Telephone" };
      return { path: { id: (await owner.does("calendarFeeds.create", { body })).id } };
    }),
  ],
  "brief.get": one("a listed car", buyers, ({ listed }) => ({ path: { id: listed.vehicle } })),
  "brief.put": one("a listed car", buyers, ({ listed }) => ({
    path: { id: listed.vehicle },
    revision: 0,
    body: { items: [] },
  })),
  "offers.list": one("a car at the yard", buyers, async (scene) => ({ path: { id: await newCar(scene) } })),
  "offers.explain": one("a car at the yard", buyers, async (scene) => ({
    path: { id: await newCar(scene) },
    query: { date: "2027-05-03" },
  })),
  "bookingTerms.get": one("the terms", everybody, nothing),
  "bookingTerms.put": one("the terms", ["operator"], () => ({
    revision: 0,
    body: {
      version: "2026-11",
      buyerWithdraws: [{ atLeast: 0, share: 0 }],
      dealerFails: [{ atLeast: 0, share: 0 }],
      weatherTravel: 0,
      safetyLeast: 0,
      missedSite: 0,
    },
  })),
  "appointments.hold": one("an hour that is free", buyers, async (scene, person) => ({
    body: await offered(scene, person === scene.world.otherBuyer ? person : scene.world.buyer),
  })),
  "appointments.list": one("one's own", everybody, nothing),
  "appointments.counts": one("all", ["operator"], nothing),
  "appointments.get": one("a visit that is accepted", parties, async (scene, person) => ({
    path: { id: await forEach(scene, person, [], "get", () => bring(scene, "accepted")) },
  })),
  "appointments.request": moveOf("held", ["buyer"], () => ({ terms: "2026-11" })),
  "appointments.accept": moveOf("requested", ["inspector"], () => ({ independent: true })),
  "appointments.decline": one(
    "a visit that waits for one's answer",
    ["inspector", "dealer"],
    async (scene, person) => {
      const state = person === scene.world.inspector ? "requested" : "accepted";
      const id = await forEach(scene, person, ["inspector", "dealer"], "decline", () => bring(scene, state));
      return asked(scene, id, person === scene.world.dealer ? { cause: "car-sold" } : {});
    },
  ),
  "appointments.confirm": moveOf("accepted", ["dealer"], (scene, id) => confirmation(scene.world.dealer, id)),
  "appointments.reschedule": moveOf("requested", ["buyer"], async (scene, id) => {
    const { cars } = await scene.world.buyer.does("appointments.get", { path: { id } });
    const { offers } = await findOffers(scene.world.buyer, cars[0]?.id ?? "", { moving: id });
    const other = offers.at(-1);
    return other === undefined ? {} : { offer: choose(other) };
  }),
  "appointments.cancel": moveOf("accepted", parties, ({ world }, _id, person) => {
    if (person === world.inspector) return { cause: "inspector-unavailable" };
    return { cause: person === world.dealer ? "car-sold" : "buyer-withdrew" };
  }),
  "appointments.start": shifted("confirmed", ["inspector"], true),
  "appointments.takeToRoad": one("a visit that is under way", ["inspector"], async (scene, person) => {
    const id = await forEach(scene, person, ["inspector"], "road", async () => {
      const made = await bring(scene, "confirmed");
      await shift(scene.service, made, "under-way", false);
      await seeGate(scene, made);
      return made;
    });
    return asked(scene, id, road);
  }),
  "appointments.miss": shifted("confirmed", ["buyer", "dealer", "operator"], false),
  "appointments.report": shifted("under-way", ["inspector"], false, markReported),
  "appointments.proposeBrief": moveOf("accepted", ["buyer"], async (scene, id) => {
    const { visits } = await scene.world.buyer.does("appointments.get", { path: { id } });
    return { vehicle: visits[0]?.vehicle, items: [furtherItem] };
  }),
  "appointments.answerBrief": one(
    "a change that is proposed",
    ["buyer", "inspector"],
    async (scene, person) => {
      const { buyer, inspector } = scene.world;
      let vehicle = "";
      const id = await forEach(scene, person, ["buyer", "inspector"], "answer", async () => {
        const made = await bring(scene, "accepted");
        const { cars } = await buyer.does("appointments.get", { path: { id: made } });
        vehicle = cars[0]?.id ?? "";
        await move(scene.service, buyer, "appointments.proposeBrief", made, {
          vehicle,
          items: [furtherItem],
        });
        return made;
      });
      const answer = person === inspector ? "refuse" : "withdraw";
      return asked(scene, id, { vehicle: vehicle === "" ? scene.listed.vehicle : vehicle, answer });
    },
  ),
  "listing.get": one("a listed car", everybody, ({ listed }) => ({ path: { id: listed.vehicle } })),
  "listing.publish": one("a car of the dealer's", ["dealer"], async (scene) => {
    const id = await newCar(scene);
    const { revision } = await scene.world.dealer.does("listing.get", { path: { id } });
    return { path: { id }, revision, body: {} };
  }),
  "listing.withdraw": one("a car of the dealer's", ["dealer"], async (scene) => {
    const id = await newCar(scene);
    const { revision } = await scene.world.dealer.does("listing.get", { path: { id } });
    return { path: { id }, revision, body: { reason: "In the paint shop." } };
  }),
  "shareLinks.create": one("a car of the dealer's", ["dealer"], ({ listed }) => ({
    path: { id: listed.vehicle },
    body: link(),
  })),
  "shareLinks.list": one("a car of the dealer's", ["dealer"], ({ listed }) => ({
    path: { id: listed.vehicle },
  })),
  "shareLinks.revoke": one("a link of the dealer's", ["dealer"], async ({ listed, world }) => {
    const made = { path: { id: listed.vehicle }, body: link() };
    return { path: { id: (await world.dealer.does("shareLinks.create", made)).id } };
  }),
  "questions.create": one("a listed car", buyers, ({ listed }) => ({
    path: { id: listed.vehicle },
    body: { item: "electrics.horn", text: "Does it sound?" },
  })),
  "questions.list": one("one's own", [...buyers, ...dealers], nothing),
  "questions.get": [
    ...one("a question that is asked", ["buyer", "dealer"], async (scene) => ({
      path: { id: await question(scene, true) },
    })),
    ...one("a question in draft", ["buyer"], async (scene) => ({
      path: { id: await question(scene, false) },
    })),
  ],
  "questions.change": one("a question in draft", ["buyer"], async (scene) => ({
    path: { id: await question(scene, false) },
    revision: 1,
    body: { move: "send" },
  })),
  "questions.answer": one("a question that is asked", ["dealer"], async (scene) => ({
    path: { id: await question(scene, true) },
    revision: 1,
    body: { finding: { answer: { kind: "working", value: "no" } }, base: 1 },
  })),
  "complaints.create": one("one's own", everybody, (_scene, person) => ({ body: complaint(person) })),
  "complaints.list": one("one's own", everybody, nothing),
  "complaints.counts": one("all", ["operator"], nothing),
  "complaints.get": [
    ...one("the buyer's", ["buyer", "operator"], async (scene) => ({
      path: { id: await complain(scene, scene.world.buyer) },
    })),
    ...one("one's own", everybody, async (scene, person) => ({
      path: { id: await complain(scene, person) },
    })),
  ],
  "complaints.open": one("the buyer's", ["operator"], async (scene) => ({
    path: { id: await complain(scene, scene.world.buyer) },
    body: { reason: "To find out what went wrong." },
  })),
  "complaints.answer": one("the buyer's, opened", ["operator"], async (scene) => {
    const id = await complain(scene, scene.world.buyer);
    const opening = { path: { id }, body: { reason: "To find out what went wrong." } };
    const { revision } = await scene.world.operator.does("complaints.open", opening);
    return { path: { id }, revision, body: { text: "We are sorry." } };
  }),
};
