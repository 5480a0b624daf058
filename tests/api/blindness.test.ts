import { beforeEach, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  headliner,
  header,
  horn,
  inspect,
  inspected,
  order,
  publish,
  reseal,
  seal,
  setOperation,
  treadDepth,
  write,
} from "./setup/story.ts";
import { joinPerson, makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

/** Answers that occur nowhere else, so that one byte of them would be seen. */
const secretNote = "zebrawood-77";
const telling = [
  { ...treadDepth("left-front", 7.125, 7.125, 7.125), note: `${secretNote} tires` },
  { ...horn("intermittent"), note: secretNote, firmness: "hedged" as const },
  { ...headliner("heavy-wear"), note: secretNote },
];
const telltale = /zebrawood|7\.125|intermittent|heavy-wear|hedged/;

/** Everything this person can read about the car, as it comes over the wire. */
async function everythingReadable(
  person: Person,
  vehicle: string,
  versions: readonly string[],
): Promise<string> {
  const detail = await person.ask("vehicles.get", { path: { id: vehicle } });
  const texts = [detail.text];
  for (const id of versions) {
    texts.push((await person.ask("reportVersions.get", { path: { id } })).text);
    texts.push((await person.ask("reportVersions.document", { path: { id } })).text);
  }
  for (const list of ["vehicles.list", "comparisons.list", "orders.list", "notices.list"] as const)
    texts.push((await person.ask(list)).text);
  for (const { id } of detail.body.comparisons ?? [])
    texts.push((await person.ask("comparisons.document", { path: { id } })).text);
  return texts.join("\n");
}

async function accepted(): Promise<{ vehicle: string; statement: string; report: string; order: string }> {
  const published = await publish(world.dealer, telling);
  const id = await order(world.buyer, world.inspector, published.vehicle, published.statement);
  await acceptOrder(world.inspector, id);
  return { ...published, order: id };
}

const begin = async (orderId: string): Promise<string> =>
  (await world.inspector.does("reports.inspect", { path: { id: orderId }, body: header })).id;

const document = (person: Person, id: string) => person.does("reportVersions.document", { path: { id } });

test("from acceptance on not one byte of an answer reaches the firm, by whichever of its accounts", async () => {
  const { vehicle, statement } = await accepted();
  const colleague = await joinPerson(service(), world.inspector.organization, "Colin");
  for (const person of [world.inspector, colleague])
    expect(await everythingReadable(person, vehicle, [statement])).not.toMatch(telltale);
});

test("while everybody else reads the statement", async () => {
  const { vehicle, statement } = await accepted();
  for (const person of [world.buyer, world.otherBuyer, world.otherInspector, world.otherDealer])
    expect(await everythingReadable(person, vehicle, [statement])).toMatch(telltale);
});

test("what the statement speaks of is told, without what it says", async () => {
  const { statement } = await accepted();
  const seen = await document(world.inspector, statement);
  expect(seen).toMatchObject({ format: "evenhand-report-withheld", findings: [] });
  expect(seen).toHaveProperty("withheld", expect.arrayContaining([{ item: "electrics.horn", position: "" }]));
  expect((await world.inspector.does("reportVersions.get", { path: { id: statement } })).withheld).toBe(true);
});

test("an answer is shown only once the same item and position are committed", async () => {
  const { vehicle, statement, order: id } = await accepted();
  const report = await begin(id);
  await write(world.inspector, report, [treadDepth("right-front", 5, 5, 5)]);
  expect(await everythingReadable(world.inspector, vehicle, [statement])).not.toMatch(telltale);
  await write(world.inspector, report, [horn("no")]);
  const seen = await document(world.inspector, statement);
  expect(seen.findings.map(({ item }) => item)).toEqual(["electrics.horn"]);
  expect(JSON.stringify(seen)).not.toMatch(/7\.125|heavy-wear/);
});

test("removing the finding again hides the answer again", async () => {
  const { statement, order: id } = await accepted();
  const report = await begin(id);
  await write(world.inspector, report, [horn("no")]);
  const remove = {
    ...setOperation(horn("no")),
    op: "remove",
    item: "electrics.horn",
    base: 1,
    finding: undefined,
  };
  await world.inspector.does("reports.operate", { path: { id: report }, body: { operations: [remove] } });
  expect(JSON.stringify(await document(world.inspector, statement))).not.toMatch(telltale);
});

test("an earlier or later version of the statement is withheld as well", async () => {
  const { vehicle, statement, report } = await accepted();
  const later = await reseal(world.dealer, report, { ...headliner("spent"), note: `${secretNote} again` });
  expect(await everythingReadable(world.inspector, vehicle, [statement, later.id])).not.toMatch(
    /zebrawood|spent/,
  );
});

test("a comparison of the car's statements is withheld, and none can be asked for", async () => {
  const { vehicle, statement, report } = await accepted();
  const later = await reseal(world.dealer, report, headliner("spent"));
  const pair = { path: { id: vehicle }, body: { a: statement, b: later.id } };
  const { id } = await world.buyer.does("comparisons.create", pair);
  expect((await world.inspector.isRefused("comparisons.get", { path: { id } })).code).toBe("not-found");
  expect((await world.inspector.isRefused("comparisons.document", { path: { id } })).code).toBe("not-found");
  expect((await world.inspector.isRefused("comparisons.create", pair)).code).toBe("not-found");
});

test("a firm that was asked and has not answered yet is blind already", async () => {
  const { vehicle, statement } = await publish(world.dealer, telling);
  await order(world.buyer, world.inspector, vehicle, statement);
  expect(await everythingReadable(world.inspector, vehicle, [statement])).not.toMatch(telltale);
});

test("after sealing, after declining and after cancelling, the firm reads it like everybody", async () => {
  const { statement, order: id } = await accepted();
  const report = await begin(id);
  await seal(world.inspector, report, await write(world.inspector, report, inspected));
  expect(await document(world.inspector, statement)).toMatchObject({ format: "evenhand-report" });
  const second = await accepted();
  await world.inspector.does("orders.decline", {
    path: { id: second.order },
    revision: 2,
    body: { reason: "No lift." },
  });
  expect(await document(world.inspector, second.statement)).toMatchObject({ format: "evenhand-report" });
});

test("each finding records whether it was blind, whatever the device claims", async () => {
  const { statement, order: id } = await accepted();
  const report = await begin(id);
  await write(world.inspector, report, [{ ...horn("no"), blind: false }, headliner("even-wear")]);
  await document(world.inspector, statement);
  await world.inspector.does("reports.operate", {
    path: { id: report },
    body: {
      operations: [
        setOperation({ ...horn("intermittent"), blind: true }, 1),
        setOperation(treadDepth("left-front", 3)),
      ],
    },
  });
  const { findings } = (await world.inspector.does("reports.get", { path: { id: report } })).report;
  expect(Object.fromEntries(findings.map(({ item, blind }) => [item, blind]))).toEqual({
    "electrics.horn": false,
    "interior.headliner": true,
    "wheels.tread-depth": true,
  });
});

test("whoever read the statement before being asked finds nothing blind", async () => {
  const { vehicle, statement } = await publish(world.dealer, telling);
  await document(world.inspector, statement);
  const id = await order(world.buyer, world.inspector, vehicle, statement);
  await acceptOrder(world.inspector, id);
  const report = await begin(id);
  await write(world.inspector, report, [horn("no")]);
  const { findings } = (await world.inspector.does("reports.get", { path: { id: report } })).report;
  expect(findings[0]?.blind).toBe(false);
});

test("the inspector's findings reach nobody before they are sealed", async () => {
  const { vehicle, order: id } = await accepted();
  const report = await begin(id);
  await write(world.inspector, report, [{ ...horn("no"), note: "mahogany-31" }]);
  for (const person of [world.dealer, world.buyer, world.otherBuyer, world.otherInspector, world.operator]) {
    const draft = await person.ask("reports.get", { path: { id: report } });
    const seen = await person.ask("orders.get", { path: { id } });
    const car = await person.ask("vehicles.get", { path: { id: vehicle } });
    expect([draft.text, seen.text, car.text].join()).not.toContain("mahogany-31");
  }
});

test("the dealer reads nothing of the inspection but what was released", async () => {
  const way = await inspect(world, [{ ...horn("no"), note: "mahogany-31" }, headliner("spent")]);
  expect(await everythingReadable(world.dealer, way.vehicle, [way.inspection])).not.toMatch(
    /mahogany-31|spent/,
  );
  const comparison = await world.dealer.ask("comparisons.document", { path: { id: way.comparison } });
  expect(comparison.status).toBe(404);
});

test("a firm that shares people with the dealer, or with the buyer, cannot accept", async () => {
  const { vehicle, statement } = await publish(world.dealer);
  const id = await order(world.buyer, world.inspector, vehicle, statement);
  await query(service().databaseUrl, "INSERT INTO membership VALUES ($1, $2, 'member', now())", [
    world.dealer.account,
    world.inspector.organization,
  ]);
  const problem = await world.inspector.isRefused("orders.accept", {
    path: { id },
    revision: 1,
    body: { independent: true },
  });
  expect(problem).toMatchObject({ code: "not-independent", status: 409 });
});

test("the buyer's name is not the inspector's to see before accepting", async () => {
  const { vehicle, statement } = await publish(world.dealer);
  const id = await order(world.buyer, world.inspector, vehicle, statement);
  expect((await world.inspector.does("orders.get", { path: { id } })).buyer).toBeNull();
  await acceptOrder(world.inspector, id);
  expect((await world.inspector.does("orders.get", { path: { id } })).buyer?.id).toBe(
    world.buyer.organization,
  );
});
