import type { LandedCostEntries } from "@evenhand/shared/landed-cost";
import { beforeAll, describe, expect, test } from "vitest";
import { caseOn } from "./setup/homes.ts";
import { useService } from "./setup/service.ts";
import { inspect, type Inspected } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService({ emptyBetween: false });
let world: World;
let way: Inspected;
let path: { id: string };
beforeAll(async () => {
  world = await makeWorld(service());
  way = await inspect(world);
  path = { id: (await caseOn(world.buyer, way.vehicle))?.id ?? "" };
});

const nothing: LandedCostEntries = { lines: {}, trip: null, currency: null, rates: [], limit: null };
const usd = (minor: number) => ({ minor, currency: "USD" });

describe("landed cost", () => {
  test("before anything is entered every line says unset, and no total stands for it", async () => {
    const seen = await world.buyer.does("landedCost.get", { path });
    expect(seen).toMatchObject({ revision: 0, savedAt: null, entries: nothing, cost: { totals: [] } });
    expect(seen.cost.without).toContain("sales-tax");
    expect(seen.cost.lines.find(({ line }) => line === "put-right")).toEqual({
      line: "put-right",
      unset: "no-cost-table",
    });
  });

  test("is reckoned from entries, the buyer's own tables and the record, each line with its source", async () => {
    const tires = { row: "tire", per: "place", words: "a tire", low: 9_000, likely: 16_000, high: 30_000 };
    await world.buyer.does("costTable.put", {
      revision: 0,
      body: {
        format: "evenhand-cost-table",
        version: 1,
        name: "Bea's own",
        currency: "USD",
        rows: [{ ...tires, occurs: { differ: 1 } }],
      },
    });
    const bands = [{ upTo: 800, open: 110, enclosed: null }];
    await world.buyer.does("transportRates.put", {
      revision: 0,
      body: { currency: "USD", unit: "mi", per: "distance", bands, source: "two carriers' quotes" },
    });
    const entries: LandedCostEntries = {
      ...nothing,
      lines: { price: { amount: usd(2_000_000), source: "agreed by telephone" } },
      trip: { distance: 500, unit: "mi", carrier: "open" },
    };
    const { revision, cost } = await world.buyer.does("landedCost.put", { path, revision: 0, body: entries });
    expect(revision).toBe(1);
    expect(cost.lines.map((line) => ("amount" in line ? [line.line, line.source.of] : line.unset))).toEqual([
      ["price", "entry"],
      ["put-right", "cost-table"],
      "not-entered",
      ["transport", "rates"],
      "not-entered",
      "not-entered",
      "not-entered",
      "not-entered",
    ]);
    const page = await world.buyer.does("comparisons.cost", { path: { id: way.comparison } });
    const likely = page.cost?.total.likely ?? 0;
    expect(likely).toBeGreaterThan(0);
    expect(cost.totals.map(({ amount }) => amount.likely)).toEqual([2_000_000 + likely + 55_000]);
  });

  test("what another saved meanwhile is not written over, and nobody else reads it", async () => {
    const stale = { path, revision: 0, body: nothing };
    expect(await world.buyer.isRefused("landedCost.put", stale)).toMatchObject({ code: "revision-moved" });
    expect((await world.otherBuyer.isRefused("landedCost.get", { path })).status).toBe(404);
    for (const other of [world.dealer, world.inspector])
      expect((await other.isRefused("landedCost.get", { path })).status).toBe(403);
    expect(await world.otherBuyer.does("transportRates.get")).toMatchObject({ revision: 0, rates: null });
  });
});
