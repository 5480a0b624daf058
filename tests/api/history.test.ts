import { analyze } from "@evenhand/comparison/analyze";
import { Report } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { beforeAll, expect, test } from "vitest";
import { HistoryService } from "../../apps/api/src/capabilities/history/history.service.ts";
import { query } from "./setup/database.ts";
import { alike, type Documents, insertInspected } from "./setup/inspected-cars.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { car, entryAt, header, inspect, readComparison, treadDepth } from "./setup/story.ts";
import { joinPerson, makeWorld, type World } from "./setup/world.ts";

const sheet = compileSheet(sheetVersion1);
const service = useService({ emptyBetween: false });
let world: World;
beforeAll(async () => {
  world = await makeWorld(service());
});

const learn = () => service().app.get(HistoryService).learn();
const historyOf = (firm: Person, by: Person = firm) =>
  by.does("firmHistory.get", { path: { id: firm.organization } });

const common = { format: "evenhand-report", version: 1, sheet: { id: "evenhand", version: 1 }, vehicle: car };
const reportBy = (kind: "statement" | "inspection", depth: number) =>
  Report.parse({
    ...common,
    ...header,
    kind,
    author: { organization: kind, role: kind === "statement" ? "dealer" : "inspector" },
    findings: ["left-front", "right-front"].map((corner) => ({
      ...treadDepth(corner, depth, depth, depth),
      blind: true,
    })),
  });

/** A car whose gauge read so much more than was said. */
const past = (more: number): Documents => {
  const [a, b] = [reportBy("statement", 8), reportBy("inspection", 8 + more)];
  const comparison = analyze(a, b, sheet);
  return {
    statement: JSON.stringify(a),
    inspection: JSON.stringify(b),
    comparison: JSON.stringify(comparison),
  };
};

/** Past pairs of one inspector whose gauge reads so high, give or take a tenth. */
const insertPast = (inspector: Person, count: number, high: number) => {
  const documents = Array.from({ length: count }, (_, index) => past(high + ((index % 3) - 1) / 10));
  const { dealer, buyer } = world;
  return insertInspected(
    { databaseUrl: service().databaseUrl, dealer, buyer, inspector },
    alike(count, {}),
    documents,
  );
};

const found = [treadDepth("left-front", 8, 8, 8), treadDepth("right-front", 5, 5, 5)];
const leftFront = async (comparison: string) => {
  const document = await readComparison(world.buyer, comparison);
  return { document, line: document.entries[entryAt(document, "wheels.tread-depth", "left-front")] };
};

test("twenty past pairs of two inspectors correct what is compared afterwards, and nothing that was before", async () => {
  const before = await inspect(world, found);
  const first = await leftFront(before.comparison);
  expect(first.document.history).toBeUndefined();

  await insertPast(world.inspector, 20, 0.8);
  await insertPast(world.otherInspector, 21, 0);
  expect(await historyOf(world.inspector)).toEqual({ hash: null, madeAt: null, leans: [], gauges: [] });
  expect(await learn()).toBe(2);
  // Told the same again, it makes nothing.
  expect(await learn()).toBe(0);

  const seen = await historyOf(world.inspector);
  const [lean] = seen.leans;
  expect(seen.gauges).toMatchObject([{ gauge: "tread-gauge", kind: "tread depth gauge", unit: "1/32in" }]);
  expect((lean?.effect ?? 0) + (seen.gauges[0]?.effect ?? 0)).toBeGreaterThan(0.2);
  expect(lean?.pairs).toBeGreaterThanOrEqual(20);

  const after = await inspect(world, found);
  const { document, line } = await leftFront(after.comparison);
  expect(document.history).toEqual({ b: seen.hash });
  expect(line?.corrections?.b?.parts.map(({ of }) => of)).toEqual(["inspector", "gauge"]);
  expect(line?.figures).toMatchObject({ b: { mean: 8 }, difference: 0 });
  expect(line?.corrections?.b?.effect).toBeGreaterThan(0.2);
  expect(await leftFront(before.comparison)).toEqual(first);
});

test("an inspector sees their own hand and the firm's gauges; nobody sees another's", async () => {
  const colleague = await joinPerson(service(), world.inspector.organization, "Colleague");
  const [own, theirs] = [await historyOf(world.inspector), await historyOf(world.inspector, colleague)];
  expect([own.leans.length, theirs.leans.length]).toEqual([1, 0]);
  expect(theirs.gauges).toEqual(own.gauges);
  for (const person of [world.otherInspector]) {
    const refused = await person.isRefused("firmHistory.get", { path: { id: world.inspector.organization } });
    expect(refused.code).toBe("not-found");
  }
});

test("what is stored is what was sealed, and nothing of a dealer is in it", async () => {
  const rows = await query<{ text: string; holds: boolean; firm: string }>(
    service().databaseUrl,
    `SELECT convert_from(document, 'UTF8') AS text, encode(sha256(document), 'hex') = hash AS holds,
       organization_id AS firm FROM history_table`,
  );
  expect(rows.map(({ holds }) => holds)).toEqual([true, true]);
  for (const { text, firm } of rows) {
    expect([world.inspector.organization, world.otherInspector.organization]).toContain(firm);
    expect(text).not.toContain(world.dealer.organization);
    expect(text).not.toContain(world.dealer.account);
  }
});
