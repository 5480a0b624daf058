import type { CostTable } from "@evenhand/shared/cost-table";
import { beforeEach, expect, test } from "vitest";
import { useService } from "./setup/service.ts";
import { inspect } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

const table = (name: string, likely: number): CostTable => ({
  format: "evenhand-cost-table",
  version: 1,
  name,
  currency: "USD",
  correlationWithinSection: 0,
  rows: [{ row: "tires", per: "place", words: "a tire", low: 9_000, likely, high: 30_000, occurs: {} }],
});

test("what was saved before can be read again, with who saved it and what changed", async () => {
  await world.buyer.does("costTable.put", { revision: 0, body: table("First", 12_000) });
  await world.buyer.does("costTable.put", { revision: 1, body: table("Second", 14_000) });
  const { items } = await world.buyer.does("costTable.history");
  expect(items.map(({ revision, name, savedBy }) => [revision, name, savedBy])).toEqual([
    [2, "Second", "Bea"],
    [1, "First", "Bea"],
  ]);
  expect(
    items.map(({ changes }) => changes.map(({ before, after }) => [before?.likely, after?.likely])),
  ).toEqual([[[12_000, 14_000]], [[undefined, 12_000]]]);
});

test("a firm's table is offered to the buyer it reported to, and to nobody else", async () => {
  await world.inspector.does("costTable.put", { revision: 0, body: table("The firm's", 12_000) });
  expect(await world.buyer.does("costTable.offered")).toEqual({ items: [] });
  await inspect(world);
  expect(await world.buyer.does("costTable.offered")).toEqual({
    items: [
      {
        firm: { id: world.inspector.organization, name: expect.any(String) },
        table: table("The firm's", 12_000),
      },
    ],
  });
  expect(await world.otherBuyer.does("costTable.offered")).toEqual({ items: [] });
  await world.dealer.isRefused("costTable.get");
});

test("a buyer's table is the buyer's alone", async () => {
  await world.buyer.does("costTable.put", { revision: 0, body: table("Mine", 12_000) });
  for (const other of [world.otherBuyer, world.inspector])
    expect(await other.does("costTable.get")).toEqual({ revision: 0, table: null });
  expect(await world.inspector.does("costTable.history")).toEqual({ items: [] });
});
