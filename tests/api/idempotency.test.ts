import { randomUUID } from "node:crypto";
import { beforeEach, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import { useService } from "./setup/service.ts";
import { car, publish } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

const body = () => ({ organization: world.dealer.organization, vehicle: car });
const countCars = async (): Promise<number> => {
  const [row] = await query<{ count: number }>(
    service().databaseUrl,
    "SELECT count(*)::int AS count FROM vehicle",
  );
  return row?.count ?? -1;
};

test("a repeat gets the first answer and does nothing", async () => {
  const key = randomUUID();
  const [first, second] = [
    await world.dealer.ask("vehicles.create", { key, body: body() }),
    await world.dealer.ask("vehicles.create", { key, body: body() }),
  ];
  expect(second.body).toEqual(first.body);
  expect(second.headers["etag"]).toBe(first.headers["etag"]);
  expect([first.headers["idempotency-replayed"], second.headers["idempotency-replayed"]]).toEqual([
    undefined,
    "true",
  ]);
  expect(await countCars()).toBe(1);
});

test("without a key the request is refused, and the field named", async () => {
  const problem = await world.dealer.isRefused("vehicles.create", {
    body: body(),
    headers: { "idempotency-key": "" },
  });
  expect(problem).toMatchObject({
    code: "idempotency-key-missing",
    status: 400,
    problems: [{ at: "header/idempotency-key" }],
  });
});

test("another body with the same key is refused", async () => {
  const key = randomUUID();
  await world.dealer.does("vehicles.create", { key, body: body() });
  const other = { ...body(), words: "Another car." };
  expect(await world.dealer.isRefused("vehicles.create", { key, body: other })).toMatchObject({
    code: "idempotency-key-reused",
    status: 422,
  });
});

test("another revision or another object with the same key is another request", async () => {
  const { vehicle, report } = await publish(world.dealer);
  const key = randomUUID();
  await world.dealer.does("reports.revise", { key, path: { id: report } });
  const problem = await world.dealer.isRefused("reports.revise", { key, path: { id: vehicle } });
  expect(problem.code).toBe("idempotency-key-reused");
});

test("the same key of somebody else, or at another route, is another key", async () => {
  const key = randomUUID();
  await world.dealer.does("vehicles.create", { key, body: body() });
  const others = { organization: world.otherDealer.organization, vehicle: car };
  await world.otherDealer.does("vehicles.create", { key, body: others });
  expect(await countCars()).toBe(2);
});

test("of many at once, one does it; the others get its answer or are told to wait", async () => {
  const key = randomUUID();
  const answers = await Promise.all(
    Array.from({ length: 12 }, () => world.dealer.ask("vehicles.create", { key, body: body() })),
  );
  const statuses = new Set(answers.map(({ status }) => status));
  expect([...statuses].every((status) => status === 201 || status === 409)).toBe(true);
  const ids = new Set(answers.filter(({ status }) => status === 201).map((answer) => answer.body.id));
  expect([ids.size, await countCars()]).toEqual([1, 1]);
});

test("a refusal is not kept: the same request may succeed later", async () => {
  const { vehicle, statement } = await publish(world.dealer);
  const key = randomUUID();
  const asked = {
    key,
    path: { id: vehicle },
    body: { inspector: world.inspector.organization, statement },
  };
  await query(service().databaseUrl, "UPDATE vehicle SET listed = false");
  expect((await world.buyer.ask("orders.create", asked)).status).toBe(404);
  await query(service().databaseUrl, "UPDATE vehicle SET listed = true");
  await world.buyer.does("orders.create", asked);
});

test("a repeat is allowed anew: whoever left the organization gets nothing", async () => {
  const key = randomUUID();
  await world.dealer.does("vehicles.create", { key, body: body() });
  await query(service().databaseUrl, "UPDATE membership SET organization_id = $1 WHERE account_id = $2", [
    world.otherDealer.organization,
    world.dealer.account,
  ]);
  expect((await world.dealer.isRefused("vehicles.create", { key, body: body() })).code).toBe("not-permitted");
});

test("after a day the key is free again", async () => {
  const key = randomUUID();
  await world.dealer.does("vehicles.create", { key, body: body() });
  await query(service().databaseUrl, "UPDATE idempotency SET created_at = now() - interval '25 hours'");
  await world.dealer.does("vehicles.create", { key, body: body() });
  expect(await countCars()).toBe(2);
});
