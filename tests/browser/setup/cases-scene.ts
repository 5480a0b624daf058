import {
  accept,
  type BookingWorld,
  confirm,
  hold,
  makeBookingWorld,
  request,
} from "../../api/setup/booking-story.ts";
import { caseOn } from "../../api/setup/homes.ts";
import type { Person } from "../../api/setup/person.ts";
import type { Service } from "../../api/setup/service.ts";
import {
  acceptOrder,
  car,
  draftStatement,
  entryAt,
  header,
  inspected,
  makeVehicle,
  order,
  readComparison,
  seal,
  summarize,
  write,
} from "../../api/setup/story.ts";

/** Invented cars, one for each way a case can stand. */
const cars = {
  held: ["Uthwick", "Alder", 1958],
  asked: ["Uthwick", "Rowan", 1961],
  accepted: ["Corvane", "Tern", 1967],
  confirmed: ["Corvane", "Heron", 1971],
  ordered: ["Ildmere", "Sovrano", 1984],
  compared: ["Ildmere", "Contralto", 1969],
  released: ["Pellham", "Gannet", 1955],
  approved: ["Pellham", "Osprey", 1963],
  answered: ["Brackwater", "Six", 1949],
  drafted: ["Brackwater", "Nine", 1952],
} as const;
type Name = keyof typeof cars;
/** What a buyer has begun something about. */
type Begun = Exclude<Name, "drafted">;

async function publishCar(world: BookingWorld, name: Name): Promise<BookingWorld> {
  const [make, model, modelYear] = cars[name];
  const identification = `${make.slice(0, 2).toUpperCase()}${modelYear}214${model.length}83`;
  const vehicle = await makeVehicle(world.dealer, { ...car, make, model, modelYear, identification });
  const { id, revision } = await draftStatement(world.dealer, vehicle);
  const sealed = await seal(world.dealer, id, revision);
  return { ...world, vehicle, statement: sealed.id, report: id };
}

/** A statement begun and not sealed. */
async function begin(dealer: Person, [make, model, modelYear]: (typeof cars)[Name]): Promise<void> {
  const identification = `BR${modelYear}214983`;
  await draftStatement(dealer, await makeVehicle(dealer, { ...car, make, model, modelYear, identification }));
}

/** Inspected without an hour, and compared. */
async function compare(world: BookingWorld): Promise<string> {
  const { buyer, inspector, vehicle, statement } = world;
  const id = await order(buyer, inspector, vehicle, statement);
  await acceptOrder(inspector, id);
  const begun = await inspector.does("reports.inspect", { path: { id }, body: header });
  return (await seal(inspector, begun.id, await write(inspector, begun.id, inspected))).comparison ?? "";
}

async function ask({ buyer, vehicle }: BookingWorld, text: string): Promise<string> {
  const body = { item: "electrics.horn", text, send: true };
  return (await buyer.does("questions.create", { path: { id: vehicle }, body })).id;
}

async function release({ buyer }: BookingWorld, comparison: string): Promise<void> {
  const entry = entryAt(await readComparison(buyer, comparison), "electrics.horn");
  await buyer.does("releases.create", { path: { id: comparison }, body: { entries: [entry] } });
}

async function counter({ buyer, dealer }: BookingWorld, comparison: string): Promise<void> {
  const { id, hash } = await summarize(buyer, comparison);
  const body = { decision: "counter", hash, conditions: "A horn that sounds." };
  const made = await buyer.does("summaries.decide", { path: { id }, body });
  await dealer.does("decisions.answer", {
    path: { id: made.id },
    revision: 1,
    body: { answer: "accept", note: "It will sound." },
  });
}

/** What waits for an operator: a complaint, and an inspector who asks to be admitted. */
async function fillDesk({ buyer, otherInspector }: BookingWorld): Promise<void> {
  const body = {
    organization: buyer.organization,
    about: { kind: "other", id: null },
    text: "Nobody came to the yard.",
  };
  await buyer.does("complaints.create", { body });
  await otherInspector.does("calendars.create", {
    body: {
      organization: otherInspector.organization,
      name: "Otto Fennimore",
      account: otherInspector.account,
      hours: { zone: "America/Chicago", open: [] },
      base: { latitude: 41.6, longitude: -88.1 },
      radius: 100_000,
      speed: 20,
      notice: 24 * 60,
      fees: { currency: "USD", perVisit: 40_000, perExtraCar: 20_000, perMile: 50 },
      skills: [],
    },
  });
}

/** One buyer's cases with one dealer and one inspector, one for each way a case can stand, and something for the operator. */
export async function casesScene(service: Service): Promise<BookingWorld & { cases: Record<Begun, string> }> {
  const world = await makeBookingWorld(service);
  const on = (name: Name) => publishCar(world, name);
  const [held, asked, accepted, confirmed] = [
    await on("held"),
    await on("asked"),
    await on("accepted"),
    await on("confirmed"),
  ];
  await confirm(service, confirmed);
  await accept(service, accepted);
  await request(service, asked);
  await hold(held.buyer, held.vehicle);
  await ask(asked, "Does the horn sound, and at both buttons?");
  const [ordered, compared, released, approved, answered] = [
    await on("ordered"),
    await on("compared"),
    await on("released"),
    await on("approved"),
    await on("answered"),
  ];
  await order(ordered.buyer, ordered.inspector, ordered.vehicle, ordered.statement);
  await compare(compared);
  await release(released, await compare(released));
  await counter(approved, await compare(approved));
  const question = await ask(answered, "Does the horn sound?");
  await world.dealer.does("questions.answer", {
    path: { id: question },
    revision: 1,
    body: { finding: { answer: { kind: "working", value: "yes" } }, seal: true },
  });
  await fillDesk(world);
  await begin(world.dealer, cars.drafted);
  await begin(world.otherDealer, cars.drafted);
  const worlds = { held, asked, accepted, confirmed, ordered, compared, released, approved, answered };
  const ids = await Promise.all(
    Object.entries(worlds).map(async ([name, { buyer, vehicle }]) => [
      name,
      (await caseOn(buyer, vehicle))?.id,
    ]),
  );
  return { ...world, cases: Object.fromEntries(ids) };
}
