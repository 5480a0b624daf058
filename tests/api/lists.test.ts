import { v7 } from "uuid";
import { beforeEach, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { car, makeVehicle, publish } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

/** Listed cars past the service, the newest last. */
async function fill(count: number): Promise<string[]> {
  const ids = Array.from({ length: count }, () => v7());
  await query(
    service().databaseUrl,
    `INSERT INTO vehicle (id, organization_id, make, model, model_year, identification, document, listed, revision,
       search, created_at, updated_at)
     SELECT id, $1, 'Ildmere', 'Sovrano', 1984, 'D' || n, $2, true, 1, lower('ildmere sovrano 1984 d' || n), now(), now()
     FROM unnest($3::uuid[]) WITH ORDINALITY AS t (id, n)`,
    [world.dealer.organization, car, ids],
  );
  return ids;
}

async function allPages(person: Person, limit: number, q?: string): Promise<string[][]> {
  const pages: string[][] = [];
  let after: string | null = null;
  do {
    const asked: Record<string, string> = { limit: String(limit) };
    if (after !== null) asked["after"] = after;
    if (q !== undefined) asked["q"] = q;
    const page = await person.does("vehicles.list", { query: asked });
    pages.push(page.items.map(({ id }) => id));
    after = page.next;
  } while (after !== null);
  return pages;
}

test("pages hold every row once, the newest first, and say where the next begins", async () => {
  const ids = await fill(23);
  const pages = await allPages(world.buyer, 10);
  expect(pages.map((page) => page.length)).toEqual([10, 10, 3]);
  expect(pages.flat()).toEqual(ids.toReversed());
});

test("a page that ends with the last row has no next", async () => {
  await fill(20);
  expect((await allPages(world.buyer, 10)).map((page) => page.length)).toEqual([10, 10]);
});

test("a car listed meanwhile does not shift the pages after", async () => {
  const ids = await fill(15);
  const first = await world.buyer.does("vehicles.list", { query: { limit: "10" } });
  await fill(5);
  const second = await world.buyer.does("vehicles.list", { query: { limit: "10", after: first.next ?? "" } });
  expect(second.items.map(({ id }) => id)).toEqual(ids.slice(0, 5).toReversed());
});

test("words find make, model, year and identification, in any order and part", async () => {
  await fill(3);
  const { vehicle } = await publish(world.dealer);
  for (const q of ["alder", "1958 uthwick", "a7k2148", "ALDER uthw"])
    expect(await allPages(world.buyer, 10, q)).toEqual([[vehicle]]);
  expect(await allPages(world.buyer, 10, "ildmere uthwick")).toEqual([[]]);
});

test.each(["%", "_", "\\", "d%1", "'; DROP TABLE vehicle; --"])("in a search %s means itself", async (q) => {
  await fill(3);
  expect(await allPages(world.buyer, 10, q)).toEqual([[]]);
});

test("a dealer's list is their own cars, listed or not; others see what is listed", async () => {
  const own = await makeVehicle(world.dealer);
  const { vehicle } = await publish(world.otherDealer);
  expect((await allPages(world.dealer, 10)).flat()).toEqual([own]);
  for (const person of [world.buyer, world.inspector, world.operator])
    expect((await allPages(person, 10)).flat()).toEqual([vehicle]);
});

test("a withdrawn car stays with those who have work on it", async () => {
  const { vehicle, statement } = await publish(world.dealer);
  const body = { inspector: world.inspector.organization, statement };
  await world.buyer.does("orders.create", { path: { id: vehicle }, body });
  const { revision } = await world.dealer.does("vehicles.get", { path: { id: vehicle } });
  await world.dealer.does("vehicles.change", { path: { id: vehicle }, revision, body: { listed: false } });
  for (const person of [world.buyer, world.inspector])
    expect((await allPages(person, 10)).flat()).toEqual([vehicle]);
  for (const person of [world.otherBuyer, world.otherInspector])
    expect((await allPages(person, 10)).flat()).toEqual([]);
});

test("orders are listed to both parties, by state and by car", async () => {
  const { vehicle, statement } = await publish(world.dealer);
  const body = { inspector: world.inspector.organization, statement };
  const { id } = await world.buyer.does("orders.create", { path: { id: vehicle }, body });
  for (const person of [world.buyer, world.inspector]) {
    expect(
      (await person.does("orders.list", { query: { state: "ordered", vehicle } })).items.map(
        (each) => each.id,
      ),
    ).toEqual([id]);
    expect((await person.does("orders.list", { query: { state: "accepted" } })).items).toEqual([]);
  }
  expect((await world.otherBuyer.does("orders.list")).items).toEqual([]);
});

test("an order against an older statement, a second one, and one on a withdrawn car are refused", async () => {
  const { vehicle, statement } = await publish(world.dealer);
  const asked = { path: { id: vehicle }, body: { inspector: world.inspector.organization, statement } };
  const older = { ...asked, body: { ...asked.body, statement: v7() } };
  expect(await world.buyer.isRefused("orders.create", older)).toMatchObject({
    code: "statement-superseded",
    statement,
  });
  await world.buyer.does("orders.create", asked);
  expect((await world.buyer.isRefused("orders.create", asked)).code).toBe("order-exists");
  await query(service().databaseUrl, "UPDATE vehicle SET listed = false");
  expect((await world.buyer.isRefused("orders.create", asked)).code).toBe("vehicle-not-listed");
});
