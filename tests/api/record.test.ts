import { verifyChain } from "@evenhand/record/verify-chain";
import { beforeAll, expect, test } from "vitest";
import { Database } from "../../apps/api/src/platform/database/database.ts";
import { sha256Bytes } from "../../apps/api/src/platform/record/hash.ts";
import { readEntries } from "../../apps/api/src/platform/record/read-chain.ts";
import { query } from "./setup/database.ts";
import { useService } from "./setup/service.ts";
import {
  acknowledgeAll,
  entryAt,
  inspect,
  type Inspected,
  readComparison,
  summarize,
} from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService({ emptyBetween: false });
let world: World;
let way: Inspected;
beforeAll(async () => {
  world = await makeWorld(service());
  way = await inspect(world);
});

const entriesOf = (organization: string) => readEntries(service().app.get(Database), organization);
const kindsOf = async (organization: string) => (await entriesOf(organization)).map(({ kind }) => kind);

test("each change stands in the record of everybody it concerns, in its order, and nobody else's", async () => {
  const { dealer, buyer, inspector, otherBuyer } = world;
  const horn = entryAt(await readComparison(buyer, way.comparison), "electrics.horn");
  const { items } = await buyer.does("releases.create", {
    path: { id: way.comparison },
    body: { entries: [horn] },
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

test.each(["UPDATE record_entry SET kind = 'x.y'", "DELETE FROM record_entry", "DELETE FROM record_chain"])(
  "the database refuses: %s",
  async (statement) => {
    await expect(query(service().databaseUrl, statement)).rejects.toThrow(/are never changed/);
  },
);
