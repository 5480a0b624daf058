import type { Release, ReleasePicture } from "@evenhand/shared/http/releases";
import type { Evidence } from "@evenhand/shared/settlement";
import sharp from "sharp";
import { beforeAll, expect, test } from "vitest";
import { Arrivals } from "../../apps/api/src/capabilities/evidence/arrivals.ts";
import { sweepTables } from "../../apps/api/src/platform/database/sweep.ts";
import { Database } from "../../apps/api/src/platform/database/database.ts";
import { query } from "./setup/database.ts";
import { hashOf } from "./setup/evidence-story.ts";
import type { Person } from "./setup/person.ts";
import { photograph } from "./setup/pictures.ts";
import { useService } from "./setup/service.ts";
import { entryAt, inspect, readComparison } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

/** Photographs that go with an answer about one line. The steps follow one another. */
const service = useService({ emptyBetween: false });
let world: World;
let line = "";
let photo: Buffer;

beforeAll(async () => {
  world = await makeWorld(service());
  const { comparison } = await inspect(world);
  const entry = entryAt(await readComparison(world.buyer, comparison), "electrics.horn");
  const { items } = await world.buyer.does("releases.create", {
    path: { id: comparison },
    body: { entries: [entry] },
  });
  line = items[0]?.id ?? "";
  photo = await photograph();
});

/** Small, and each its own. */
const another = (turned: number): Promise<Buffer> =>
  sharp(photo).resize(320).rotate(turned).jpeg().toBuffer();

const add = (who: Person, bytes: Uint8Array): Promise<ReleasePicture> =>
  who.does("releasePictures.add", { path: { id: line }, bytes });
const list = async (who: Person) => (await who.does("releasePictures.list", { path: { id: line } })).items;
const see = (who: Person): Promise<Release> => who.does("releases.get", { path: { id: line } });
const named = ({ id, sha256 }: Pick<ReleasePicture, "id" | "sha256">): Evidence => ({
  kind: "photograph",
  id,
  sha256,
});
const contest = async (evidence: readonly Evidence[]) => {
  const { revision } = await see(world.dealer);
  return { body: { lines: [{ id: line, revision }], move: "contest", words: "It sounds.", evidence } };
};
const problemsOf = async (evidence: readonly Evidence[]) =>
  (await world.dealer.isRefused("releases.move", await contest(evidence)))["problems"];

/** A worker looks at what arrived. */
async function work({ id }: ReleasePicture): Promise<void> {
  const [row] = await query<{ file: string }>(
    service().databaseUrl,
    "SELECT file_id AS file FROM release_picture WHERE id = $1",
    [id],
  );
  await service()
    .app.get(Arrivals, { strict: false })
    .take(row?.file ?? "");
}
const photographsOf = async (who: Person) =>
  (await who.does("exports.get", { path: { id: who.organization } })).releases.map(
    (each) => each["photographs"],
  );
const inDays = (days: number) => new Date(Date.now() + days * 24 * 60 * 60_000);
let picture: ReleasePicture;

test("a photograph of a line is kept once however often it is sent, and is its sender's alone", async () => {
  picture = await add(world.dealer, photo);
  expect(picture).toMatchObject({
    sha256: hashOf(photo),
    bytes: photo.length,
    state: "checked",
    refused: null,
  });
  expect((await add(world.dealer, photo)).id).toBe(picture.id);
  expect(await list(world.buyer)).toEqual([]);
  for (const who of [world.buyer, world.otherDealer, world.inspector])
    expect((await who.isRefused("releasePictures.small", { path: { id: picture.id } })).code).toBe(
      "not-found",
    );
});

test("it cannot be named before it was looked at, nor by another's id, nor by another hash", async () => {
  const [waits] = (await problemsOf([named(picture)])) ?? [];
  expect(waits).toMatchObject({ at: "/evidence/0", reason: expect.stringContaining("still looking at") });
  await work(picture);
  expect(await list(world.dealer)).toMatchObject([{ id: picture.id, state: "ready" }]);
  const ofBuyer = await add(world.buyer, await another(90));
  await work(ofBuyer);
  expect(await problemsOf([named(ofBuyer)])).toMatchObject([{ at: "/evidence/0" }]);
  expect(await problemsOf([named(picture), named({ id: picture.id, sha256: "0".repeat(64) })])).toMatchObject(
    [{ at: "/evidence/1", reason: expect.stringContaining("SHA-256") }],
  );
  expect((await see(world.buyer)).thread).toEqual([]);
  await world.buyer.does("releasePictures.remove", { path: { id: ofBuyer.id } });
  expect(await list(world.buyer)).toEqual([]);
});

test("what is no photograph is refused with its reason, and nothing is kept", async () => {
  const asked = { path: { id: line }, bytes: Buffer.from("<svg xmlns='http://www.w3.org/2000/svg'/>") };
  expect((await world.dealer.isRefused("releasePictures.add", asked)).code).toBe("picture-refused");
  const json = { path: { id: line }, body: { photograph: "here" } };
  expect((await world.dealer.isRefused("releasePictures.add", json)).code).toBe("malformed-request");
  expect(await list(world.dealer)).toHaveLength(1);
});

test("sent with an answer it stands in the thread, whoever reads that sees it, and only its sender has the bytes as sent", async () => {
  await world.dealer.does("releases.move", await contest([named(picture)]));
  expect((await see(world.buyer)).thread.at(-1)).toMatchObject({
    move: "contest",
    evidence: [named(picture)],
  });
  const { body, headers } = await world.buyer.ask("releasePictures.large", { path: { id: picture.id } });
  expect(headers["content-type"]).toBe("image/webp");
  expect((await sharp(body).metadata()).exif).toBeUndefined();
  const original = { path: { id: picture.id } };
  expect(hashOf((await world.dealer.ask("releasePictures.original", original)).body)).toBe(hashOf(photo));
  expect((await world.buyer.isRefused("releasePictures.original", original)).code).toBe("not-found");
  expect((await world.inspector.isRefused("releasePictures.small", original)).code).toBe("not-found");
  const { revision } = await see(world.buyer);
  await world.buyer.does("releases.move", { body: { lines: [{ id: line, revision }], move: "ask" } });
  expect((await world.inspector.ask("releasePictures.small", original)).status).toBe(200);
  expect(await list(world.dealer)).toEqual([]);
});

test("what was sent stays; the record names its bytes; what was never sent goes after a month", async () => {
  const gone = await world.dealer.isRefused("releasePictures.remove", { path: { id: picture.id } });
  expect(gone.code).toBe("release-state");
  const [entry] = await query<{ content: string }>(
    service().databaseUrl,
    "SELECT content_text AS content FROM record_entry WHERE subject = $1 AND content_text LIKE '%contest%' LIMIT 1",
    [line],
  );
  expect(entry?.content).toContain(picture.sha256);
  expect(await photographsOf(world.dealer)).toMatchObject([[{ id: picture.id, sha256: picture.sha256 }]]);
  expect(await photographsOf(world.buyer)).toEqual([[]]);
  const forgotten = await add(world.dealer, await another(110));
  const database = service().app.get(Database, { strict: false });
  await sweepTables(database, inDays(29));
  expect(await list(world.dealer)).toMatchObject([{ id: forgotten.id }]);
  await sweepTables(database, inDays(31));
  expect(await list(world.dealer)).toEqual([]);
  expect((await world.buyer.ask("releasePictures.small", { path: { id: picture.id } })).status).toBe(200);
});

test("one answer takes ten; a line that is settled takes none", async () => {
  for (let at = 0; at < 10; at += 1) await add(world.dealer, await another(at + 1));
  const asked = { path: { id: line }, bytes: await another(70) };
  expect((await world.dealer.isRefused("releasePictures.add", asked)).code).toBe("evidence-full");
  const { revision } = await see(world.buyer);
  await world.buyer.does("releases.move", { body: { lines: [{ id: line, revision }], move: "withdraw" } });
  expect((await world.dealer.isRefused("releasePictures.add", asked)).code).toBe("release-state");
});
