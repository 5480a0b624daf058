import { v7 } from "uuid";
import { beforeEach, describe, expect, test } from "vitest";
import {
  type BookingWorld,
  admit,
  hold,
  makeBookingWorld,
  monday,
  newClock,
  request,
} from "../setup/booking-story.ts";
import { query } from "../setup/database.ts";
import { caseOn, home, standingOn } from "../setup/homes.ts";
import { useService } from "../setup/service.ts";
import {
  acceptOrder,
  draftStatement,
  header,
  inspected,
  makeVehicle,
  order,
  seal,
  write,
} from "../setup/story.ts";

const clock = newClock();
const service = useService({ clock });
let world: BookingWorld;
beforeEach(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
});

describe("a visit without an hour", () => {
  test("is ordered, taken on and reported, and the dealer hears of none of it", async () => {
    const { buyer, dealer, inspector, vehicle, statement } = world;
    const standings = () => Promise.all([buyer, inspector, dealer].map((who) => standingOn(who, vehicle)));
    const id = await order(buyer, inspector, vehicle, statement);
    expect(await standings()).toEqual([
      "others: book, accept-visit of the inspector",
      "yours: book, accept-visit of the inspector",
      "none",
    ]);
    expect((await caseOn(inspector, vehicle))?.buyer).toBeNull();
    await acceptOrder(inspector, id);
    expect((await caseOn(inspector, vehicle))?.buyer?.name).toBe("Bea's firm");
    expect(await standings()).toEqual([
      "others: look, inspect-any-hour of the inspector",
      "yours: look, inspect-any-hour of the inspector",
      "none",
    ]);
    const { id: report } = await inspector.does("reports.inspect", { path: { id }, body: header });
    await seal(inspector, report, await write(inspector, report, inspected));
    expect(await standings()).toEqual(["yours: read, read of the buyer", "rest: read", "none"]);
  });

  test("is at rest with the inspector once declined, and the buyer books anew", async () => {
    const { buyer, inspector, vehicle, statement } = world;
    const id = await order(buyer, inspector, vehicle, statement);
    await inspector.does("orders.decline", {
      path: { id },
      revision: 1,
      body: { reason: "No lift is free." },
    });
    expect(await standingOn(buyer, vehicle)).toBe("yours: book, choose-brief of the buyer");
    expect(await standingOn(inspector, vehicle)).toBe("rest: book");
  });

  test("that got an hour is one visit, not two", async () => {
    const appointment = await request(service(), world);
    const { id = "" } = (await caseOn(world.buyer, world.vehicle)) ?? {};
    const { parts } = await world.buyer.does("cases.get", { path: { id } });
    expect(parts.visits.map((visit) => [visit.appointment, visit.state])).toEqual([
      [appointment, "requested"],
    ]);
  });
});

test("a case is nobody's but its parties', in no list and by no address", async () => {
  const { buyer, inspector, vehicle, statement, otherBuyer, otherInspector, otherDealer, dealer } = world;
  await order(buyer, inspector, vehicle, statement);
  const { id = "" } = (await caseOn(buyer, vehicle)) ?? {};
  for (const other of [otherBuyer, otherInspector, otherDealer, dealer]) {
    expect(await standingOn(other, vehicle)).toBe("none");
    expect(await other.isRefused("cases.get", { path: { id } })).toMatchObject({ code: "not-found" });
  }
});

test("an inspector gets no price, none of the dealer's words and nothing of questions, and a dealer no buyer's name", async () => {
  const { buyer, dealer, inspector, vehicle, statement } = world;
  await query(
    service().databaseUrl,
    "UPDATE vehicle SET words = 'As fine as zebrawood.', asking_minor = 7125313, asking_currency = 'USD' WHERE id = $1",
    [vehicle],
  );
  const body = { item: "electrics.horn", text: "Does it sound like zebrawood?", send: true };
  await buyer.does("questions.create", { path: { id: vehicle }, body });
  await order(buyer, inspector, vehicle, statement);
  const { id = "" } = (await caseOn(inspector, vehicle)) ?? {};
  const told = JSON.stringify([await home(inspector), await inspector.does("cases.get", { path: { id } })]);
  expect(told).not.toMatch(/zebrawood|7125313|electrics\.horn|Bea/);
  const dealt = JSON.stringify([await home(dealer), await dealer.does("cases.get", { path: { id } })]);
  expect(dealt).toContain("zebrawood?");
  expect(dealt).not.toMatch(new RegExp(`Bea|${buyer.organization}|${inspector.organization}`));
});

const sentQuestion = async (buyer: BookingWorld["buyer"], vehicle: string, text: string): Promise<string> => {
  const body = { item: "electrics.horn", text, send: true };
  return (await buyer.does("questions.create", { path: { id: vehicle }, body })).id;
};

const caseAndText = async (who: BookingWorld["buyer"], vehicle: string) => {
  const { id = "" } = (await caseOn(who, vehicle)) ?? {};
  return { id, text: JSON.stringify([await home(who), await who.does("cases.get", { path: { id } })]) };
};

test("two buyers of one car have a row each, in which nothing is of the other, and the dealer one for each without a name", async () => {
  const { buyer, otherBuyer, dealer, inspector, vehicle, statement } = world;
  await sentQuestion(buyer, vehicle, "Does it sound like zebrawood?");
  await sentQuestion(otherBuyer, vehicle, "Does it sound like alabaster?");
  await order(buyer, inspector, vehicle, statement);
  const [one, other] = [await caseAndText(buyer, vehicle), await caseAndText(otherBuyer, vehicle)];
  expect(one.text).not.toMatch(new RegExp(`alabaster|${other.id}|${otherBuyer.organization}`));
  expect(other.text).not.toMatch(
    new RegExp(`zebrawood|${one.id}|${buyer.organization}|${inspector.organization}|accept-visit`),
  );
  const { yours } = await home(dealer);
  expect(yours.map(({ id, buyer: name, standing }) => [id, name, standing.waits.length])).toEqual([
    [one.id, null, 1],
    [other.id, null, 1],
  ]);
  expect(JSON.stringify(yours)).not.toMatch(
    new RegExp(`${buyer.organization}|${otherBuyer.organization}|${inspector.organization}`),
  );
});

const leads = async (who: BookingWorld["buyer"], part: string) => {
  const { items } = await who.does("cases.ofPart", { path: { id: part } });
  return items.map(({ id, as, car }) => [id, as, car.id]);
};

test("a part leads to its case, each party to their own, and nobody else anywhere", async () => {
  const { buyer, otherBuyer, dealer, inspector, vehicle, statement } = world;
  const question = await sentQuestion(buyer, vehicle, "Does the horn sound?");
  const ordered = await order(buyer, inspector, vehicle, statement);
  const own = await caseOn(buyer, vehicle);
  expect(await leads(buyer, question)).toEqual([[own?.id, "buyer", vehicle]]);
  expect(await leads(dealer, question)).toEqual([[own?.id, "dealer", vehicle]]);
  expect(await leads(inspector, ordered)).toEqual([[own?.id, "inspector", vehicle]]);
  for (const [who, part] of [
    [inspector, question],
    [dealer, ordered],
    [otherBuyer, question],
    [otherBuyer, ordered],
    [buyer, v7()],
  ] as const)
    expect(await who.isRefused("cases.ofPart", { path: { id: part } })).toMatchObject({ code: "not-found" });
});

test("an hour that is only held is the buyer's alone", async () => {
  await hold(world.buyer, world.vehicle);
  expect(await standingOn(world.buyer, world.vehicle)).toBe("yours: book, request-hour of the buyer");
  expect(await standingOn(world.inspector, world.vehicle)).toBe("none");
  expect(await standingOn(world.dealer, world.vehicle)).toBe("none");
});

/** So many cars of the dealer's about each of which the buyer asked something and took it back, past the service. */
async function addClosed(count: number): Promise<string[]> {
  const cases = Array.from({ length: count }, () => [v7(), v7()] as const);
  const { dealer, buyer } = world;
  await query(
    service().databaseUrl,
    `WITH added AS (INSERT INTO vehicle (id, organization_id, make, model, model_year, identification, document, listed,
        revision, search, created_at, updated_at)
      SELECT car, $1, 'Ildmere', 'Sovrano', 1984, 'D', '{}', true, 1, 'd', now(), now() FROM unnest($3::uuid[]) car),
    asked AS (INSERT INTO question (id, vehicle_id, buyer_id, dealer_id, item, position, text, state, revision, created_by,
        created_at, asked_at)
      SELECT gen_random_uuid(), car, $2, $1, 'electrics.horn', '', 'Does it sound?', 'withdrawn', 1, $2, now(), now()
      FROM unnest($3::uuid[]) car)
    INSERT INTO buyer_case SELECT id, car, $2, $1, now() FROM unnest($4::uuid[], $3::uuid[]) AS t (id, car)`,
    [dealer.organization, buyer.organization, cases.map(([, car]) => car), cases.map(([id]) => id)],
  );
  return cases.map(([id]) => id);
}

test("what is at rest comes in pages, each case once and the newest first; what is open stands on the first alone", async () => {
  const ids = await addClosed(12);
  const body = { item: "electrics.horn", text: "Does it sound?", send: true };
  await world.buyer.does("questions.create", { path: { id: world.vehicle }, body });
  const seen: string[] = [];
  const open: number[] = [];
  let after: string | null = null;
  do {
    const page = await home(world.dealer, { limit: "5", ...(after === null ? {} : { after }) });
    seen.push(...page.rest.map(({ id }) => id));
    open.push(page.yours.length + page.others.length);
    after = page.next;
  } while (after !== null);
  expect(seen).toEqual(ids.toReversed());
  expect(open).toEqual([1, 0, 0]);
});

test("a statement begun and not sealed is its dealer's to do and nobody else's; sealed, it is gone until it is opened again", async () => {
  const { buyer, inspector, otherDealer, dealer } = world;
  const vehicle = await makeVehicle(dealer);
  const { id, revision } = await draftStatement(dealer, vehicle);
  const drafts = async (who = dealer) =>
    (await home(who)).drafts.map((draft) => [draft.id, draft.car.id, draft.version, draft.kind]);
  expect(await drafts()).toEqual([[id, vehicle, null, "statement"]]);
  expect((await home(dealer)).drafting).toBe(1);
  for (const other of [buyer, inspector, otherDealer]) expect(await drafts(other)).toEqual([]);
  expect((await home(dealer, { after: v7() })).drafts).toEqual([]);
  await seal(dealer, id, revision);
  expect(await drafts()).toEqual([]);
  await dealer.does("reports.revise", { path: { id } });
  expect(await drafts()).toEqual([[id, vehicle, 1, "statement"]]);
});

test("an operator has what waits and how many, and no contents", async () => {
  const { buyer, operator, otherInspector, otherBuyer } = world;
  const complaint = { kind: "other", id: null };
  const body = { organization: buyer.organization, about: complaint, text: "Nobody came, says zebrawood." };
  const { id } = await buyer.does("complaints.create", { body });
  const calendar = await admit(otherInspector, operator).then(() =>
    otherInspector.does("calendars.list").then(({ items }) => items[0]?.id ?? ""),
  );
  await query(service().databaseUrl, "UPDATE inspector_calendar SET admission = 'applied' WHERE id = $1", [
    calendar,
  ]);
  await request(service(), world);
  const { desk } = await home(operator);
  expect(desk).toMatchObject({
    tasks: expect.arrayContaining([
      expect.objectContaining({ kind: "answer-complaint", id, state: "received", name: null }),
      expect.objectContaining({ kind: "decide-admission", id: calendar, state: null }),
    ]),
    waiting: 2,
    owed: [{ state: "requested", of: "inspector", count: 1 }],
    rest: [],
  });
  expect(JSON.stringify(await home(operator))).not.toMatch(/zebrawood|Bea/);
  expect((await home(otherBuyer)).desk).toBeNull();
});

test("two at once begin one case", async () => {
  const path = { id: world.vehicle };
  const body = { item: "electrics.horn", text: "Does it sound?", send: true };
  await Promise.all([1, 2, 3, 4].map(() => world.buyer.does("questions.create", { path, body })));
  const { yours } = await home(world.dealer);
  expect(yours).toHaveLength(1);
  expect(yours[0]?.standing.next).toMatchObject({ step: "answer-question", count: 4 });
});
