import { createHash } from "node:crypto";
import { beforeEach, describe, expect, test } from "vitest";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { answer } from "@evenhand/matters/answer";
import { matters } from "@evenhand/matters/matters";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Report } from "@evenhand/shared/report";
import { query } from "./setup/database.ts";
import { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { acceptOrder, inspect, type Inspected, order, readComparison } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
let way: Inspected;
beforeEach(async () => {
  world = await makeWorld(service());
  way = await inspect(world);
});

const path = () => ({ path: { id: way.comparison } });

async function report(id: string): Promise<Report> {
  const document = await world.buyer.does("reportVersions.document", { path: { id } });
  if (document.format !== "evenhand-report") throw new Error("It is no report.");
  return document;
}

describe("page one of a comparison", () => {
  test("is stored with it, is what the libraries make of the two reports, and is served by its hash", async () => {
    const { text, headers } = await world.buyer.ask("comparisons.answer", {
      ...path(),
      headers: { "accept-encoding": "identity" },
    });
    const comparison = await readComparison(world.buyer, way.comparison);
    const [a, b] = [await report(way.statement), await report(way.inspection)];
    const reports = { a, b, sheet: compileSheet(sheetVersion1) };
    const page = answer({ comparison, matters: matters(comparison, reports), reports });
    expect(text).toBe(canonicalJson(page));
    expect(headers["etag"]).toBe(`"${createHash("sha256").update(text).digest("hex")}"`);
    const [row] = await query<{ stored: string }>(
      service().databaseUrl,
      "SELECT convert_from(answer, 'UTF8') AS stored FROM comparison WHERE id = $1",
      [way.comparison],
    );
    expect(row?.stored).toBe(text);
  });

  test("is for whoever may see the comparison, and for nobody else", async () => {
    expect((await world.inspector.does("comparisons.answer", path())).matters.length).toBeGreaterThan(0);
    for (const stranger of [world.otherBuyer, world.dealer])
      expect((await stranger.isRefused("comparisons.answer", path())).status).toBe(404);
  });

  test("of a comparison made before there was one is made once, and then stays as it is", async () => {
    const before = (await world.buyer.ask("comparisons.answer", path())).text;
    const url = service().databaseUrl;
    const change = (set: string) =>
      query(url, `UPDATE comparison SET ${set} WHERE id = $1`, [way.comparison]);
    await expect(change("answer = NULL, answer_hash = NULL")).rejects.toThrow("never changed");
    await query(url, "ALTER TABLE comparison DISABLE TRIGGER comparison_sealed");
    await change("answer = NULL, answer_hash = NULL");
    await query(url, "ALTER TABLE comparison ENABLE TRIGGER comparison_sealed");
    const asked = await Promise.all([1, 2, 3].map(() => world.buyer.ask("comparisons.answer", path())));
    expect(asked.map(({ text }) => text)).toEqual([before, before, before]);
    const [row] = await query<{ kept: boolean }>(
      url,
      "SELECT answer IS NOT NULL AS kept FROM comparison WHERE id = $1",
      [way.comparison],
    );
    expect(row?.kept).toBe(true);
  });
});

describe("what it may cost", () => {
  const table = {
    format: "evenhand-cost-table",
    version: 1,
    name: "Bea's own",
    currency: "USD",
    rows: [
      { row: "tire", words: "a tire", low: 10_100, likely: 16_300, high: 30_700, occurs: { differ: 0.9 } },
    ],
  };

  test("is said of no table as nothing, and of one's own to two figures, by matter, beside what is asked", async () => {
    expect(await world.buyer.does("comparisons.cost", path())).toEqual({ asking: null, cost: null });
    await query(
      service().databaseUrl,
      "UPDATE vehicle SET asking_minor = 3150000, asking_currency = 'USD' WHERE id = $1",
      [way.vehicle],
    );
    await world.buyer.does("costTable.put", { revision: 0, body: table });
    const { asking, cost } = await world.buyer.does("comparisons.cost", path());
    expect(asking).toEqual({ minor: 3_150_000, currency: "USD" });
    expect(cost).toMatchObject({ currency: "USD", table: "Bea's own" });
    expect(cost?.byMatter[0]?.matter).toBe("tires");
    for (const amount of [...Object.values(cost?.total ?? {}), cost?.byMatter[0]?.likely ?? 0])
      expect(String(amount)).toMatch(/^\d{1,2}0*$/);

    // Another table, other figures at once, whatever was shown before.
    const rows = table.rows.map((row) => ({ ...row, low: 101_000, likely: 163_000, high: 307_000 }));
    await world.buyer.does("costTable.put", { revision: 1, body: { ...table, rows } });
    const { cost: dearer } = await world.buyer.does("comparisons.cost", path());
    expect(dearer?.total.likely).toBeGreaterThan(5 * (cost?.total.likely ?? Number.NaN));
    await world.buyer.does("costTable.put", { revision: 2, body: table });
    expect(await world.buyer.does("comparisons.cost", path())).toEqual({ asking, cost });
  });

  test("is the buyer's alone, and hidden from one who must be blind to the car", async () => {
    expect((await world.inspector.isRefused("comparisons.cost", path())).status).toBe(403);
    expect((await world.otherBuyer.isRefused("comparisons.cost", path())).status).toBe(404);
    // The same person comes to work for a firm that is to look at this car again.
    await query(
      service().databaseUrl,
      `INSERT INTO membership (account_id, organization_id, role, created_at)
       SELECT m.account_id, $2, 'member', now() FROM membership m WHERE m.organization_id = $1`,
      [world.buyer.organization, world.inspector.organization],
    );
    const again = await order(world.otherBuyer, world.inspector, way.vehicle, way.statement);
    await acceptOrder(world.inspector, again);
    const body = { name: "a", scopes: ["read"], expires: new Date(Date.now() + 3_600_000).toISOString() };
    const { token } = await world.buyer.does("tokens.create", { body });
    const blind = new Person(service().url, { token, account: world.buyer.account });
    expect((await blind.isRefused("comparisons.cost", path())).status).toBe(404);
    expect((await blind.isRefused("comparisons.answer", path())).status).toBe(404);
  });
});
