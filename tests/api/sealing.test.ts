import { createHash } from "node:crypto";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { beforeEach, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  draftStatement,
  header,
  horn,
  inspect,
  inspected,
  makeVehicle,
  order,
  publish,
  reseal,
  seal,
  setOperation,
  stated,
  write,
} from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

test("the seal is the hash of the bytes that are passed on, and the bytes are canonical", async () => {
  const { statement } = await publish(world.dealer);
  const meta = await world.buyer.does("reportVersions.get", { path: { id: statement } });
  const { text, headers } = await world.buyer.ask("reportVersions.document", {
    path: { id: statement },
    headers: { "accept-encoding": "identity" },
  });
  expect(createHash("sha256").update(text).digest("hex")).toBe(meta.seal);
  expect(canonicalJson(JSON.parse(text))).toBe(text);
  expect(headers["etag"]).toBe(`"${meta.seal}"`);
});

test("sealing the first statement lists the car", async () => {
  const vehicle = await makeVehicle(world.dealer);
  const draft = await draftStatement(world.dealer, vehicle);
  expect((await world.buyer.ask("vehicles.get", { path: { id: vehicle } })).status).toBe(404);
  await seal(world.dealer, draft.id, draft.revision);
  expect((await world.buyer.does("vehicles.get", { path: { id: vehicle } })).listed).toBe(true);
});

test("a sealed report takes no change until a new version is begun", async () => {
  const { report } = await publish(world.dealer);
  const path = { id: report };
  const { revision } = await world.dealer.does("reports.get", { path });
  const operations = [setOperation(horn("no"), 1)];
  for (const refused of [
    await world.dealer.isRefused("reports.operate", { path, body: { operations } }),
    await world.dealer.isRefused("reports.change", { path, revision, body: { terms: "Other." } }),
    await world.dealer.isRefused("reports.seal", { path, revision }),
  ])
    expect(refused).toMatchObject({ code: "report-sealed", status: 409 });
  await world.dealer.does("reports.revise", { path });
  await world.dealer.does("reports.operate", { path, body: { operations } });
});

test("a new version leaves the one before as it was", async () => {
  const { report, statement } = await publish(world.dealer);
  const before = await world.buyer.ask("reportVersions.document", { path: { id: statement } });
  const { id, version } = await reseal(world.dealer, report, horn("no"));
  expect(version).toBe(2);
  const after = await world.buyer.ask("reportVersions.document", { path: { id: statement } });
  expect(after.text).toBe(before.text);
  expect((await world.buyer.ask("reportVersions.document", { path: { id } })).text).not.toBe(before.text);
});

test.each([
  "UPDATE report_version SET seal = seal",
  "DELETE FROM comparison",
  "UPDATE summary SET hash = hash",
])("not even the database does %s", async (statement) => {
  const { comparison } = await inspect(world);
  await world.buyer.does("summaries.create", { path: { id: comparison }, body: {} });
  await expect(query(service().databaseUrl, statement)).rejects.toThrow("never changed");
});

test("an empty report is not sealed", async () => {
  const vehicle = await makeVehicle(world.dealer);
  const { id, revision } = await world.dealer.does("reports.state", { path: { id: vehicle }, body: header });
  const problem = await world.dealer.isRefused("reports.seal", { path: { id }, revision });
  expect(problem).toMatchObject({ code: "report-incomplete", problems: [{ at: "/findings" }] });
});

test("findings that no longer hold, after an instrument was taken out, keep a report from being sealed", async () => {
  const draft = await draftStatement(world.dealer, await makeVehicle(world.dealer));
  const path = { id: draft.id };
  const { revision } = await world.dealer.does("reports.change", {
    path,
    revision: draft.revision,
    body: { instruments: [] },
  });
  const problem = await world.dealer.isRefused("reports.seal", { path, revision });
  expect(problem.code).toBe("report-incomplete");
  expect(problem.problems?.map(({ item }) => item)).toContain("wheels.tread-depth");
});

test("the statement compared is the one frozen with the order, whatever was sealed since", async () => {
  const { vehicle, statement, report } = await publish(world.dealer);
  const body = { inspector: world.inspector.organization, statement };
  const { id: ordered } = await world.buyer.does("orders.create", { path: { id: vehicle }, body });
  await world.inspector.does("orders.accept", {
    path: { id: ordered },
    revision: 1,
    body: { independent: true },
  });
  const later = await reseal(world.dealer, report, horn("no"));
  const { id } = await world.inspector.does("reports.inspect", { path: { id: ordered }, body: header });
  const { revision } = await world.inspector.does("reports.operate", {
    path: { id },
    body: { operations: [setOperation(horn("no"))] },
  });
  const sealed = await seal(world.inspector, id, revision);
  const comparison = await world.buyer.does("comparisons.get", { path: { id: sealed.comparison ?? "" } });
  expect(comparison.a).toBe(statement);
  expect(comparison.a).not.toBe(later.id);
});

test("sealing an inspection and making its comparison happen together or not at all", async () => {
  const { vehicle, statement } = await publish(world.dealer);
  const body = { inspector: world.inspector.organization, statement };
  const { id: ordered } = await world.buyer.does("orders.create", { path: { id: vehicle }, body });
  await world.inspector.does("orders.accept", {
    path: { id: ordered },
    revision: 1,
    body: { independent: true },
  });
  const { id } = await world.inspector.does("reports.inspect", { path: { id: ordered }, body: header });
  const { revision } = await world.inspector.does("reports.operate", {
    path: { id },
    body: { operations: [setOperation(horn("no"))] },
  });
  await query(service().databaseUrl, "ALTER TABLE comparison ADD CONSTRAINT never CHECK (engine = '')");
  expect((await world.inspector.ask("reports.seal", { path: { id }, revision })).status).toBe(500);
  await query(service().databaseUrl, "ALTER TABLE comparison DROP CONSTRAINT never");
  expect(await world.inspector.does("reports.get", { path: { id } })).toMatchObject({
    drafting: true,
    versions: [],
  });
  await seal(world.inspector, id, revision);
});

test("a second statement on one car is refused with the one there is", async () => {
  const { vehicle, report } = await publish(world.dealer);
  const problem = await world.dealer.isRefused("reports.state", { path: { id: vehicle }, body: header });
  expect(problem).toMatchObject({ code: "report-exists", report });
});

/** An inspection of a published car, ready to be sealed. */
async function readyToSeal(statedOfIt = stated) {
  const { vehicle, statement } = await publish(world.dealer, statedOfIt);
  const id = await order(world.buyer, world.inspector, vehicle, statement);
  await acceptOrder(world.inspector, id);
  const { id: report } = await world.inspector.does("reports.inspect", { path: { id }, body: header });
  return { vehicle, statement, report, revision: await write(world.inspector, report, inspected) };
}

test("a stored report that is not what was sealed any more is neither shown nor compared", async () => {
  // A statement nobody has read yet: what was read is kept by its seal, and holds.
  const { statement, report, revision } = await readyToSeal([horn("intermittent")]);
  // Whoever reaches the database itself gets past what forbids a change.
  await query(
    service().databaseUrl,
    `BEGIN; SET LOCAL session_replication_role = replica;
     UPDATE report_version SET document = document || ' '::bytea WHERE id = '${statement}'; COMMIT`,
  );
  const path = { id: statement };
  expect((await world.dealer.ask("reportVersions.document", { path })).status).toBe(500);
  const sealed = await world.inspector.ask("reports.seal", { path: { id: report }, revision });
  expect(sealed.status).toBe(500);
  expect(await query(service().databaseUrl, "SELECT 1 FROM comparison")).toEqual([]);
});

test("an inspection that is sealed lists no car: one that was withdrawn meanwhile stays so", async () => {
  const { vehicle, report, revision } = await readyToSeal();
  const listing = () =>
    query(service().databaseUrl, "SELECT listed, revision FROM vehicle WHERE id = $1", [vehicle]);
  await query(service().databaseUrl, "UPDATE vehicle SET listed = false WHERE id = $1", [vehicle]);
  const before = await listing();
  expect(before).toMatchObject([{ listed: false }]);
  await seal(world.inspector, report, revision);
  expect(await listing()).toEqual(before);
});
