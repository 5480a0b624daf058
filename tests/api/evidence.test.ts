import { randomBytes } from "node:crypto";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import type { EvidenceOwned } from "@evenhand/shared/http/evidence";
import { Report } from "@evenhand/shared/report";
import sharp from "sharp";
import { beforeAll, expect, test } from "vitest";
import { Arrivals } from "../../apps/api/src/capabilities/evidence/arrivals.ts";
import { EvidenceSweep } from "../../apps/api/src/capabilities/evidence/evidence-sweep.ts";
import { query } from "./setup/database.ts";
import { announce, announcement, hashOf, send, sendPart, whereIs } from "./setup/evidence-story.ts";
import { caseOn } from "./setup/homes.ts";
import type { Person } from "./setup/person.ts";
import { heldAs, hostile, photograph } from "./setup/pictures.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  draftStatement,
  header,
  inspected,
  makeVehicle,
  order,
  seal,
  write,
} from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService({ emptyBetween: false });
const place = { item: "electrics.horn" };
let world: World;
let vehicle: string;
let report: string;
let revision: number;
let photo: Buffer;

beforeAll(async () => {
  world = await makeWorld(service());
  vehicle = await makeVehicle(world.dealer);
  ({ id: report, revision } = await draftStatement(world.dealer, vehicle));
  photo = await photograph();
});

/** A worker takes what has arrived. */
const work = (id: string): Promise<void> => service().app.get(Arrivals, { strict: false }).take(id);
const on = <R extends object>(text: string, values: unknown[] = []) =>
  query<R>(service().databaseUrl, text, values);

/** Every file in the storage. */
const storedFiles = (): string[] =>
  readdirSync(service().filesFolder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map(({ name }) => name)
    .toSorted();

async function ofReport(person: Person, id: string): Promise<EvidenceOwned[]> {
  return (await person.does("evidence.ofReport", { path: { id } })).items;
}

async function sendAndWork(bytes: Buffer, more = {}): Promise<EvidenceOwned> {
  const id = await send(world.dealer, report, bytes, { ...place, ...more });
  await work(id);
  const seen = (await ofReport(world.dealer, report)).find((each) => each.id === id);
  if (seen === undefined) throw new Error("What was sent is not in the list.");
  return seen;
}

const picture = async (person: Person, id: string, size: "small" | "medium" | "large" = "small") =>
  person.ask(`evidence.${size}`, { path: { id } });

test("a photograph is shown upright, small and without what the camera wrote; that and the original are its owner's", async () => {
  const kept = await sendAndWork(photo, { filename: "horn.jpg", caption: "The horn" });
  expect(kept).toMatchObject({
    state: "ready",
    kind: "jpeg",
    width: 1600,
    height: 1200,
    caption: "The horn",
  });
  expect(kept.capture).toEqual({
    taken: "2026-05-04T09:10:11",
    offset: "-05:00",
    changed: null,
    camera: "Ostra Field 7",
    software: "7.1",
    place: { latitude: 41.51, longitude: -81.25 },
  });
  const original = await world.dealer.ask("evidence.original", { path: { id: kept.id } });
  expect(hashOf(original.body)).toBe(hashOf(photo));
  for (const [size, side] of [
    ["small", 400],
    ["medium", 1280],
    ["large", 1600],
  ] as const) {
    const { body, headers } = await picture(world.dealer, kept.id, size);
    expect(headers).toMatchObject({
      "content-type": "image/webp",
      "x-content-type-options": "nosniff",
      "content-security-policy": "sandbox; default-src 'none'",
      "cache-control": "private, no-cache",
    });
    expect(body.includes("EXIF") || body.includes("Ostra") || body.includes("XMP ")).toBe(false);
    expect(await sharp(body).metadata()).toMatchObject({ format: "webp", width: side });
    expect(kept.copies.find((copy) => copy.size === size)?.sha256).toBe(hashOf(body));
  }
  expect(kept.placeholder).toMatch(/^data:image\/webp;base64,/);
});

test("the same file again is one: at its place it is the same upload, elsewhere it need not be sent", async () => {
  expect(await announce(world.dealer, report, photo, place)).toBe(
    (await ofReport(world.dealer, report))[0]?.id,
  );
  const id = await announce(world.dealer, report, photo, { item: "" });
  expect(await whereIs(world.dealer, id)).toBe(photo.length);
  expect(await on("SELECT 1 FROM evidence_file WHERE sha256 = $1", [hashOf(photo)])).toHaveLength(1);
});

test("an upload that is cut again and again goes on where it stands, and arrives whole, once", async () => {
  const bytes = Buffer.concat([Buffer.from("%PDF-1.7\n"), randomBytes(3_000_000), Buffer.from("\n%%EOF\n")]);
  const id = await announce(world.dealer, report, bytes, { ...place, filename: "title.pdf" });
  for (const cutAfter of [0, 1, 70_000, 1_400_000]) {
    const from = await whereIs(world.dealer, id);
    await sendPart(world.dealer, id, { bytes, from, cutAfter });
  }
  expect(await sendPart(world.dealer, id, { bytes, from: 2_999_999 })).toBe(409);
  await expect
    .poll(async () => {
      const from = await whereIs(world.dealer, id);
      return from === bytes.length ? 204 : sendPart(world.dealer, id, { bytes, from });
    })
    .toBe(204);
  const progress = await world.dealer.does("uploads.get", { path: { id } });
  expect(progress).toMatchObject({ received: bytes.length, state: "pending" });
  expect(
    await on("SELECT 1 FROM pgboss.job WHERE name = 'evidence' AND data->>'id' = $1", [id]),
  ).toHaveLength(1);
  await work(id);
  const { body } = await world.dealer.ask("evidence.original", { path: { id } });
  expect(hashOf(body)).toBe(hashOf(bytes));
});

test("what is not what was announced is refused, and its place is free for the right one", async () => {
  const wrong = await send(world.dealer, report, Buffer.from("%PDF-1.7 %%EOF"), {
    ...place,
    sha256: "0".repeat(64),
  });
  await work(wrong);
  expect(await world.dealer.does("uploads.get", { path: { id: wrong } })).toMatchObject({
    state: "refused",
    refused: { reason: "altered" },
  });
  expect(
    await announce(world.dealer, report, Buffer.from("%PDF-1.7 %%EOF"), { ...place, sha256: "0".repeat(64) }),
  ).not.toBe(wrong);
});

test("of what is hostile nothing is kept, and each is told why", async () => {
  const before = storedFiles();
  for (const [name, reason, bytes] of await hostile()) {
    const { state, refused } = await sendAndWork(bytes, { item: "", filename: name });
    expect([name, state, refused?.reason]).toEqual([name, "refused", reason]);
  }
  expect(storedFiles()).toEqual(before);
  expect(await on("SELECT 1 FROM evidence_file WHERE state = 'refused' AND copies <> '[]'")).toEqual([]);
});

test.each(["../../etc/passwd", "..", "a/b.jpg", "a\\b.jpg", "a\u202Egpj.exe", ""])(
  "a file called %j is not taken by that name",
  async (filename) => {
    const refused = await world.dealer.isRefused("uploads.create", announcement(report, photo, { filename }));
    expect([refused.code, refused.problems?.[0]?.at]).toEqual(["invalid-fields", "/filename"]);
  },
);

test("what is larger than anything may be is refused before a byte is sent", async () => {
  const asked = announcement(report, photo);
  const refused = await world.dealer.isRefused("uploads.create", {
    ...asked,
    headers: { ...asked.headers, "upload-length": "900000000" },
  });
  expect(refused.problems?.[0]).toMatchObject({ at: "header/upload-length" });
  const { "tus-resumable": _, ...without } = asked.headers ?? {};
  const { status } = await world.dealer.ask("uploads.create", { ...asked, headers: without });
  expect(status).toBe(412);
});

test.each([1, 2, 3, 4, 5, 6, 7, 8])(
  "held as EXIF's orientation %i, it comes out upright",
  async (orientation) => {
    const { id, width, height } = await sendAndWork(await heldAs(orientation), {
      position: `way-${orientation}`,
    });
    expect([width, height]).toEqual([640, 400]);
    const { body } = await picture(world.dealer, id);
    const { data, info } = await sharp(body).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    const colorAt = (x: number, y: number): string => {
      const at = (Math.round(y * info.height) * info.width + Math.round(x * info.width)) * info.channels;
      return [0, 1, 2].map((channel) => ((data[at + channel] ?? 0) > 128 ? "1" : "0")).join("");
    };
    expect([colorAt(0.2, 0.2), colorAt(0.8, 0.2), colorAt(0.2, 0.8), colorAt(0.8, 0.8)]).toEqual([
      "100",
      "010",
      "001",
      "111",
    ]);
  },
);

test("a seal waits for what is on its way; taken away and put back, then sealed by its hashes, a file stays", async () => {
  const sealing = () => world.dealer.ask("reports.seal", { path: { id: report }, revision });
  const late = await announce(world.dealer, report, randomBytes(100), { item: "", filename: "late.jpg" });
  const refused = await sealing();
  expect(refused.status).toBe(409);
  expect(refused.text).toContain("late.jpg");
  await on("UPDATE evidence SET removed_at = now() WHERE state = 'arriving'");
  await world.dealer.does("evidence.remove", { path: { id: late } });
  const [first] = (await ofReport(world.dealer, report)).filter(({ sha256 }) => sha256 === hashOf(photo));
  await world.dealer.does("evidence.remove", { path: { id: first?.id ?? "" } });
  expect((await picture(world.dealer, first?.id ?? "")).status).toBe(404);
  await world.dealer.does("evidence.restore", { path: { id: first?.id ?? "" } });
  const { id: version } = await seal(world.dealer, report, revision);

  const { body } = await world.buyer.ask("reportVersions.document", { path: { id: version } });
  const sealed = Report.parse(body).evidence?.filter(({ sha256 }) => sha256 === hashOf(photo));
  expect(sealed?.map(({ item, copies }) => [item, copies.length])).toEqual([
    ["", 3],
    ["electrics.horn", 3],
  ]);
  expect((await world.dealer.isRefused("evidence.remove", { path: { id: first?.id ?? "" } })).code).toBe(
    "report-sealed",
  );
});

test("a buyer sees a listed statement's pictures and no more; whoever must be blind sees none, and later is noted", async () => {
  const { buyer, inspector } = world;
  const { statements } = await buyer.does("vehicles.get", { path: { id: vehicle } });
  const path = { id: statements[0]?.id ?? "" };
  const { items } = await buyer.does("evidence.ofVersion", { path });
  const id = items.find(({ sha256, item }) => sha256 === hashOf(photo) && item === place.item)?.id ?? "";
  expect(JSON.stringify(items)).not.toMatch(/latitude|Ostra|2026-05-04/);
  expect((await picture(buyer, id)).status).toBe(200);
  expect((await buyer.ask("evidence.original", { path: { id } })).status).toBe(403);

  const ordered = await order(buyer, inspector, vehicle, path.id);
  await acceptOrder(inspector, ordered);
  for (const route of ["evidence.small", "evidence.medium", "evidence.large"] as const)
    expect((await inspector.ask(route, { path: { id } })).status).toBe(404);
  expect((await inspector.ask("evidence.ofVersion", { path })).status).toBe(404);
  const shown = () =>
    on("SELECT item FROM statement_exposure WHERE organization_id = $1 AND item = $2", [
      inspector.organization,
      place.item,
    ]);
  expect(await shown()).toEqual([]);
  const begun = await inspector.does("reports.inspect", { path: { id: ordered }, body: header });
  const own = await send(inspector, begun.id, photo, place);
  await work(own);
  expect((await on("SELECT 1 FROM evidence_file WHERE sha256 = $1", [hashOf(photo)])).length).toBe(2);
  await seal(inspector, begun.id, await write(inspector, begun.id, inspected));
  expect((await picture(inspector, id)).status).toBe(200);
  expect(await shown()).toHaveLength(1);
  expect((await picture(buyer, own)).status).toBe(200);
  expect((await picture(world.dealer, own)).status).toBe(404);
});

test("what both sides sealed of a car is one list, as far as each may see it", async () => {
  const { buyer, inspector, dealer } = world;
  const sides = async (person: Person) =>
    (await person.does("evidence.ofVehicle", { path: { id: vehicle } })).items
      .filter(({ item }) => item === place.item)
      .map(({ side, version }) => `${side} ${version === null ? "laid" : "sealed"}`);
  const both = ["statement sealed", "inspection sealed"];
  expect(new Set(await sides(buyer))).toEqual(new Set(both));
  expect(new Set(await sides(inspector))).toEqual(new Set(both));
  expect(new Set(await sides(dealer))).toEqual(new Set(["statement sealed"]));
  const ofCase = await buyer.does("cases.evidence", {
    path: { id: (await caseOn(buyer, vehicle))?.id ?? "" },
  });
  const ofCar = await buyer.does("evidence.ofVehicle", { path: { id: vehicle } });
  expect(ofCase.items.map(({ id }) => id)).toEqual(ofCar.items.map(({ id }) => id));
});

test("a sealed photograph of the whole car stands for it in lists and cases, to nobody who may have to be blind", async () => {
  const { dealer, buyer, inspector } = world;
  const car = await makeVehicle(dealer);
  const draft = await draftStatement(dealer, car);
  const shots = await Promise.all([60, 70].map((seed) => photograph(seed)));
  const ids: string[] = [];
  for (const [at, bytes] of shots.entries()) {
    const id = await send(dealer, draft.id, bytes, { item: at === 0 ? place.item : "" });
    await work(id);
    ids.push(id);
  }
  const coverIn = async (person: Person) =>
    (await person.does("vehicles.list")).items.find(({ id }) => id === car)?.cover;
  expect(await coverIn(dealer)).toBeNull();
  const { id: statement } = await seal(dealer, draft.id, draft.revision);
  expect(await coverIn(dealer)).toBe(ids[1]);
  expect(await coverIn(buyer)).toBe(ids[1]);
  expect(await coverIn(inspector)).toBeNull();
  await acceptOrder(inspector, await order(buyer, inspector, car, statement));
  const own = async (person: Person) => {
    const { yours, others } = await person.does("cases.list");
    return [...(yours ?? []), ...(others ?? [])].find((row) => row.car.id === car)?.cover;
  };
  expect(await own(buyer)).toBe(ids[1]);
  expect(await own(inspector)).toBeNull();
});

test("what its author draws over a picture lies beside it, is sealed with it, and stays", async () => {
  // Of its own: one that the firm has already need not be sent.
  const own = await photograph(77);
  const car = await makeVehicle(world.dealer);
  const draft = await draftStatement(world.dealer, car);
  const id = await send(world.dealer, draft.id, own, place);
  await work(id);
  const marks = [
    { kind: "circle", x: 0.4, y: 0.6, radius: 0.1 },
    { kind: "text", x: 0.1, y: 0.1, words: "bracket bent" },
  ];
  const path = { id };
  await world.dealer.does("evidence.mark", { path, body: { marks: marks.slice(0, 1) } });
  await world.dealer.does("evidence.mark", { path, body: { marks } });
  expect(await ofReport(world.dealer, draft.id)).toMatchObject([{ marks, sha256: hashOf(own) }]);
  const outside = { marks: [{ kind: "circle", x: 1.2, y: 0.6, radius: 0.1 }] };
  expect((await world.dealer.ask("evidence.mark", { path, body: outside })).status).toBe(422);
  const { id: version } = await seal(world.dealer, draft.id, draft.revision);
  const document = await world.dealer.does("reportVersions.document", { path: { id: version } });
  expect(Report.parse(document).evidence).toMatchObject([{ sha256: hashOf(own), marks }]);
  const after = await world.dealer.isRefused("evidence.mark", { path, body: { marks: [] } });
  expect(after.code).toBe("report-sealed");
});

test("what is abandoned is swept from tables and storage, and what is sealed stays", async () => {
  await on(
    "UPDATE evidence SET expires_at = now() - interval '1 day', removed_at = removed_at - interval '8 days', created_at = created_at - interval '31 days'",
  );
  await on("UPDATE evidence_file SET created_at = created_at - interval '2 days'");
  await service().app.get(EvidenceSweep, { strict: false }).sweep();
  expect(await on("SELECT 1 FROM evidence WHERE state = 'arriving' OR removed_at IS NOT NULL")).toEqual([]);
  expect(
    await on(
      "SELECT 1 FROM evidence_file f WHERE NOT EXISTS (SELECT 1 FROM evidence e WHERE e.file_id = f.id)",
    ),
  ).toEqual([]);
  const left = readdirSync(join(service().filesFolder, "uploads"), {
    recursive: true,
    withFileTypes: true,
  });
  expect(left.filter((each) => each.isFile())).toEqual([]);
  expect((await on("SELECT 1 FROM evidence WHERE sealed_in IS NOT NULL")).length).toBeGreaterThan(8);
});
