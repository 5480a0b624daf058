import { beforeEach, expect, test } from "vitest";
import { useService } from "./setup/service.ts";
import { draftStatement, makeVehicle, publish } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

test("reading gives the revision as an entity tag, and a change from it is done", async () => {
  const id = await makeVehicle(world.dealer);
  const { headers } = await world.dealer.ask("vehicles.get", { path: { id } });
  expect(headers["etag"]).toBe('"1"');
  const answer = await world.dealer.ask("vehicles.change", {
    path: { id },
    revision: 1,
    body: { words: "Dry stored." },
  });
  expect(answer.headers["etag"]).toBe('"2"');
});

test("without a revision the change is refused, and told what to send", async () => {
  const id = await makeVehicle(world.dealer);
  const problem = await world.dealer.isRefused("vehicles.change", {
    path: { id },
    body: { words: "Dry stored." },
  });
  expect(problem).toMatchObject({ code: "if-match-missing", status: 428 });
});

test.each(["7", "*", 'W/"1"', '"1", "2"', '"-1"'])("If-Match %s is no revision", async (header) => {
  const id = await makeVehicle(world.dealer);
  const problem = await world.dealer.isRefused("vehicles.change", {
    path: { id },
    body: { words: "x" },
    headers: { "if-match": header },
  });
  expect(problem).toMatchObject({ code: "malformed-request", problems: [{ at: "header/if-match" }] });
});

test("of many changes from one revision exactly one is done; the others learn the revision there is", async () => {
  const id = await makeVehicle(world.dealer);
  const answers = await Promise.all(
    Array.from({ length: 10 }, (_, index) =>
      world.dealer.ask("vehicles.change", { path: { id }, revision: 1, body: { words: `word ${index}` } }),
    ),
  );
  expect(answers.filter(({ status }) => status === 200)).toHaveLength(1);
  const lost = answers.filter(({ status }) => status === 412);
  expect(lost).toHaveLength(9);
  expect(lost.every((answer) => answer.body.revision === 2)).toBe(true);
});

test("a report is sealed as it was seen, or not at all", async () => {
  const draft = await draftStatement(world.dealer, await makeVehicle(world.dealer));
  const path = { id: draft.id };
  await world.dealer.does("reports.change", { path, revision: draft.revision, body: { terms: "As seen." } });
  const problem = await world.dealer.isRefused("reports.seal", { path, revision: draft.revision });
  expect(problem).toMatchObject({ code: "revision-moved", status: 412, revision: draft.revision + 1 });
});

test("of two seals at once, one is the version", async () => {
  const draft = await draftStatement(world.dealer, await makeVehicle(world.dealer));
  const ask = () => world.dealer.ask("reports.seal", { path: { id: draft.id }, revision: draft.revision });
  const statuses = (await Promise.all([ask(), ask(), ask()])).map(({ status }) => status);
  expect(statuses.toSorted((a, b) => a - b)).toEqual([201, 412, 412]);
});

test("of an acceptance and a cancellation at once, one is done", async () => {
  const { vehicle, statement } = await publish(world.dealer);
  const body = { inspector: world.inspector.organization, statement };
  const { id } = await world.buyer.does("orders.create", { path: { id: vehicle }, body });
  const [accepted, cancelled] = await Promise.all([
    world.inspector.ask("orders.accept", { path: { id }, revision: 1, body: { independent: true } }),
    world.buyer.ask("orders.cancel", { path: { id }, revision: 1, body: { reason: "Sold." } }),
  ]);
  expect([accepted.status, cancelled.status].toSorted((a, b) => a - b)).toEqual([201, 412]);
});
