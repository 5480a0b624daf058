import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { signedText } from "@evenhand/record/signed-root";
import { verifyChain } from "@evenhand/record/verify-chain";
import { afterAll, beforeAll, expect, test } from "vitest";
import { RootsService } from "../../apps/api/src/capabilities/chain/roots.service.ts";
import { verifyRecord } from "../../apps/api/src/commands/verify-record.ts";
import { Database } from "../../apps/api/src/platform/database/database.ts";
import { verifyText } from "../../apps/api/src/platform/record/ed25519.ts";
import { sha256Bytes } from "../../apps/api/src/platform/record/hash.ts";
import { readEntries } from "../../apps/api/src/platform/record/read-chain.ts";
import { checkCommand } from "../../apps/cli/src/check/index.ts";
import { plainStyle } from "../../apps/cli/src/terminal/style.ts";
import { query } from "./setup/database.ts";
import { caseOn } from "./setup/homes.ts";
import type { Person } from "./setup/person.ts";
import { startProcess } from "./setup/plain-process.ts";
import { recordKeys, testConfig, useService } from "./setup/service.ts";
import {
  acknowledgeAll,
  entryAt,
  horn,
  inspect,
  type Inspected,
  readComparison,
  reseal,
  summarize,
} from "./setup/story.ts";
import { emailOf, joinPerson, makeWorld, password, type World } from "./setup/world.ts";

const service = useService({ emptyBetween: false });
const folder = mkdtempSync(join(tmpdir(), "evenhand-record-"));
let world: World;
let way: Inspected;
beforeAll(async () => {
  world = await makeWorld(service());
  way = await inspect(world);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A file of somebody's own, away from the service. */
function keep(name: string, content: unknown): string {
  const file = join(folder, name);
  writeFileSync(file, typeof content === "string" ? content : JSON.stringify(content));
  return file;
}

/** Runs a command for real, to its end. */
async function says(...words: readonly string[]): Promise<{ code: number | null; said: string }> {
  const environment = { DATABASE_URL: service().databaseUrl, LOG_LEVEL: "silent", RECORD_KEYS: recordKeys };
  const running = startProcess(["node", ...words], environment);
  return { code: await running.ended, said: running.said() };
}

/** What the command finds, without a process of its own. */
const verify = (organization?: string, receiptFile?: string) =>
  verifyRecord(testConfig(service().databaseUrl), { organization, receiptFile });

/** What a version or summary is downloaded as. */
async function sealedFile(
  person: Person,
  route: "reportVersions.document" | "summaries.document",
  id: string,
) {
  const { text } = await person.ask(route, { path: { id }, headers: { "accept-encoding": "identity" } });
  const { items } = await world.nobody.does("recordKeys.list");
  const receipt = await person.does("receipts.get", { path: { id } });
  return { format: "evenhand-sealed-1", receipt, keys: items, document: text };
}

/** Changes what nobody may, as whoever runs the database could. */
const tamper = (statement: string) =>
  query(
    service().databaseUrl,
    `SET session_replication_role = replica; ${statement}; RESET session_replication_role`,
  );

const entriesOf = (organization: string) => readEntries(service().app.get(Database), organization);
const kindsOf = async (organization: string) => (await entriesOf(organization)).map(({ kind }) => kind);

test("each change stands in the record of everybody it concerns, in its order, and nobody else's", async () => {
  const { dealer, buyer, inspector, otherBuyer } = world;
  const disputed = entryAt(await readComparison(buyer, way.comparison), "electrics.horn");
  const { items } = await buyer.does("releases.create", {
    path: { id: way.comparison },
    body: { entries: [disputed] },
  });
  await dealer.does("releases.move", {
    body: { lines: items, move: "contest", words: "It sounded this morning." },
  });
  const { id: summary, hash, summary: read } = await summarize(buyer, way.comparison);
  await buyer.does("summaries.decide", {
    path: { id: summary },
    body: { decision: "approve", hash, acknowledgements: acknowledgeAll(read) },
  });
  expect(await kindsOf(dealer.organization)).toEqual([
    "report.sealed",
    "listing.published",
    "release.laid",
    "release.moved",
    "decision.made",
  ]);
  expect(await kindsOf(inspector.organization)).toEqual(["order.made", "order.moved", "report.sealed"]);
  expect(await kindsOf(buyer.organization)).toEqual([
    "order.made",
    "order.moved",
    "report.sealed",
    "release.laid",
    "release.moved",
    "summary.made",
    "decision.made",
  ]);
  expect(await kindsOf(otherBuyer.organization)).toEqual([]);
});

test("a record is whole, and no name and nobody's own words stand in an entry", async () => {
  const entries = await entriesOf(world.buyer.organization);
  expect(verifyChain(world.buyer.organization, entries, [], sha256Bytes)).toMatchObject({
    kind: "whole",
    size: 7,
    provenTo: 0,
  });
  const hashed = JSON.stringify(entries.map((entry) => ({ ...entry, openings: undefined })));
  expect(hashed).not.toMatch(/Bea|Delia|morning/);
  expect(entries.map(({ openings }) => openings.name?.text)).toContain('"Bea"');
  expect(JSON.stringify(entries)).not.toContain("morning");
});

test("not even the database changes or drops what is recorded", async () => {
  for (const statement of [
    "UPDATE record_entry SET kind = 'x.y'",
    "UPDATE record_entry SET name_salt = NULL, name_text = '\"Another\"'",
    "DELETE FROM record_entry",
    "DELETE FROM record_chain",
    "UPDATE seal_receipt SET seal = seal",
  ])
    await expect(query(service().databaseUrl, statement)).rejects.toThrow(/are never changed/);
});

test("who sealed has a receipt that the published key signed, over the record as it was with it", async () => {
  const sealed = await reseal(world.inspector, way.inspectionReport, horn("intermittent"));
  const { organization } = world.inspector;
  expect(sealed.receipt).toMatchObject({ what: "seal", organization, subject: sealed.id, seal: sealed.seal });
  const { items } = await world.nobody.does("recordKeys.list");
  expect(items).toMatchObject([{ id: sealed.receipt.key, until: null }]);
  const { publicKey = "" } = items[0] ?? {};
  expect(verifyText(signedText(sealed.receipt), sealed.receipt.signature, publicKey)).toBe(true);
  const entries = await entriesOf(organization);
  expect(verifyChain(organization, entries, [sealed.receipt], sha256Bytes)).toMatchObject({
    kind: "whole",
    size: 4,
    provenTo: 4,
  });
  expect(await world.buyer.does("receipts.get", { path: { id: sealed.id } })).toEqual(sealed.receipt);
});

test("of several changes at once each stands in the record once, and it is whole", async () => {
  const { buyer, dealer } = world;
  const before = (await entriesOf(buyer.organization)).length;
  const body = { item: "electrics.horn", position: "", text: "Which horn is it?", send: true };
  const path = { id: way.vehicle };
  await Promise.all([1, 2, 3, 4, 5].map(() => buyer.does("questions.create", { path, body })));
  const entries = await entriesOf(buyer.organization);
  expect(entries.length).toBe(before + 5);
  for (const { organization } of [buyer, dealer])
    expect(verifyChain(organization, await entriesOf(organization), [], sha256Bytes)).toMatchObject({
      kind: "whole",
    });
});

test("each night the root of a record that has grown is signed and mailed to its administrators, once", async () => {
  const { organization } = world.buyer;
  const roots = service().app.get(RootsService);
  await roots.signAll();
  await roots.signAll();
  const letters = await query<{ subject: string; body: string }>(
    service().databaseUrl,
    `SELECT subject, body FROM mail WHERE recipient = '${emailOf("Bea")}' AND body LIKE '%"what":"root"%'`,
  );
  expect(letters).toHaveLength(1);
  const proved = await verify(organization, keep("letter.txt", letters[0]?.body));
  expect(proved.isWhole).toBe(true);
  expect(proved.lines).toEqual([
    `Bea's firm (${organization})`,
    expect.stringMatching(/^ {2}Whole: \d+ entries\. Proved to its end by what you gave\.$/),
  ]);
  const all = await verify();
  expect(all).toMatchObject({ isWhole: true });
  expect(all.lines.filter((line) => line.includes("Tail not provable"))).toHaveLength(3);
});

test("a sealed report and a summary are checked away from the service", async () => {
  const report = await sealedFile(world.dealer, "reportVersions.document", way.statement);
  const keys = keep("keys.json", { items: report.keys });
  const heard: string[] = [];
  const hear = (text: string): void => void heard.push(text);
  const shell = { out: hear, error: hear, terminal: { width: 80, style: plainStyle } };
  expect(checkCommand([keep("report.json", report), "--keys", keys], shell)).toBe(0);
  expect(heard.join("\n")).toContain("The key is among those you gave.");
  const changed = { ...report, document: report.document.replace(/1958/, "1959") };
  expect(await says("apps/cli/src/main.ts", "check", keep("changed.json", changed), "--keys", keys)).toEqual({
    code: 1,
    said: "The document was changed: its SHA-256 is not the one that was sealed.\n",
  });
  expect(checkCommand([keep("none.json", { a: 1 })], shell)).toBe(2);
});

test("an approved summary is the same to the byte after both reports have moved on and a newer one was made", async () => {
  const { buyer, dealer, inspector } = world;
  const { id, hash, summary } = await summarize(buyer, way.comparison);
  await buyer.does("summaries.decide", {
    path: { id },
    body: { decision: "approve", hash, acknowledgements: acknowledgeAll(summary) },
  });
  const approved = await sealedFile(buyer, "summaries.document", id);
  await reseal(inspector, way.inspectionReport, horn("no"));
  await reseal(dealer, way.statementReport, horn("no"));
  await summarize(buyer, way.comparison);
  const after = await sealedFile(buyer, "summaries.document", id);
  expect(after).toEqual(approved);
  expect(after.receipt.seal).toBe(hash);
});

test("an export is its administrators' alone, and names nobody of another party's", async () => {
  const { buyer, dealer, operator } = world;
  const path = { id: buyer.organization };
  const member = await joinPerson(service(), buyer.organization, "Bert");
  for (const other of [member, dealer, operator])
    expect((await other.ask("exports.get", { path })).status).toBe(404);
  const all = await buyer.does("exports.get", { path });
  expect(all.members.map(({ name }) => name).toSorted()).toEqual(["Bea", "Bert"]);
  expect(all.documents.map(({ kind }) => kind)).toContain("summary");
  expect(all.drafts).toEqual([]);
  expect(all.record.length).toBeGreaterThan(10);
  expect(JSON.stringify(all)).not.toMatch(/Delia|Ines/);
  expect(verifyChain(buyer.organization, all.record, all.receipts, sha256Bytes)).toMatchObject({
    kind: "whole",
  });
});

const exported = async (who: Person) => who.does("exports.get", { path: { id: who.organization } });

test("an export holds drafts, what is reckoned with and hand-overs, each its own party's alone", async () => {
  const { buyer, dealer } = world;
  const ofCase = { id: (await caseOn(buyer, way.vehicle))?.id ?? "" };
  const price = { amount: { minor: 2_000_000, currency: "USD" }, source: "agreed by telephone" };
  const entries = { lines: { price }, trip: null, currency: null, rates: [], limit: null };
  await buyer.does("landedCost.put", { path: ofCase, revision: 0, body: entries });
  const bands = [{ upTo: 800, open: 110, enclosed: null }];
  const rates = { currency: "USD", unit: "mi", per: "distance", bands, source: "two carriers' quotes" };
  await buyer.does("transportRates.put", { revision: 0, body: rates });
  const { caseDocuments, transportRates, drafts } = await exported(buyer);
  expect(caseDocuments).toMatchObject([{ kind: "landed-cost", revision: 1, document: entries }]);
  expect(transportRates).toMatchObject([{ id: 1, document: rates }]);
  expect(drafts).toEqual([]);
  const dealers = await exported(dealer);
  expect(dealers.caseDocuments).toEqual([]);
  const statement = dealers.drafts.find(({ id }) => id === way.statementReport);
  expect(statement).toMatchObject({ kind: "statement", vehicle: way.vehicle });
  expect(JSON.stringify(statement)).toContain("electrics.horn");
});

test("an account that closes takes its name out of every record, and each is whole", async () => {
  const { buyer } = world;
  const leaver = await joinPerson(service(), buyer.organization, "Lena Upthorpe");
  const body = { item: "electrics.horn", position: "", text: "Does it sound?", send: true };
  await leaver.does("questions.create", { path: { id: way.vehicle }, body });
  const named = () =>
    query(service().databaseUrl, "SELECT 1 FROM record_entry WHERE name_text LIKE '%Lena%'");
  expect(await named()).toHaveLength(2);
  await leaver.does("account.close", { body: { password } });
  expect(await named()).toHaveLength(0);
  const entries = await entriesOf(buyer.organization);
  const left = entries.filter(({ actor }) => actor === leaver.account);
  expect(left).toMatchObject([{ name: expect.any(String), openings: { name: null } }]);
  expect(verifyChain(buyer.organization, entries, [], sha256Bytes)).toMatchObject({ kind: "whole" });
});

test("whoever changes an entry in the database is found out: the command names the first broken one", async () => {
  const { organization } = world.buyer;
  const receipt = keep("receipt.json", (await summarize(world.buyer, way.comparison)).receipt);
  const where = `WHERE organization_id = '${organization}' AND seq`;
  await tamper(`DELETE FROM record_entry ${where} > 9`);
  expect(await verify(undefined, receipt)).toMatchObject({
    isWhole: false,
    lines: [
      expect.any(String),
      expect.stringMatching(/BROKEN at one of the entries 10 to \d+: the end of the record is gone/),
    ],
  });
  await tamper(`UPDATE record_entry SET kind = 'release.moved' ${where} = 3`);
  expect(await says("apps/api/dist/main.js", "verify-record", "--organization", organization)).toMatchObject({
    code: 1,
    said: expect.stringContaining("BROKEN at entry 3: it is not what was written then."),
  });
});
