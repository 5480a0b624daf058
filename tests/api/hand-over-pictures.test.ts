import sharp from "sharp";
import { beforeAll, expect, test } from "vitest";
import { Arrivals } from "../../apps/api/src/capabilities/evidence/arrivals.ts";
import { EvidenceSweep } from "../../apps/api/src/capabilities/evidence/evidence-sweep.ts";
import { query } from "./setup/database.ts";
import { hashOf } from "./setup/evidence-story.ts";
import {
  carTo,
  collected,
  delivered,
  invite,
  sendPicture,
  signing,
  soundFindings,
  takesPicture,
} from "./setup/hand-over-story.ts";
import { photograph } from "./setup/pictures.ts";
import { useService } from "./setup/service.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService({ emptyBetween: false });
const door = { item: "body.faults", position: "left-front-door" };
let world: World;
let [id, token] = ["", ""];
let photo: Uint8Array<ArrayBuffer>;

beforeAll(async () => {
  world = await makeWorld(service());
  ({ id, token } = await invite(world, (await carTo(world, "bought")).caseId));
  photo = Uint8Array.from(await photograph());
});

const on = <R extends object>(text: string, values: unknown[] = []) =>
  query<R>(service().databaseUrl, text, values);

/** A worker makes the copies of what was put in line. */
async function work(picture: string): Promise<void> {
  const [row] = await on<{ file: string }>("SELECT file_id AS file FROM hand_over_picture WHERE id = $1", [
    picture,
  ]);
  await service()
    .app.get(Arrivals, { strict: false })
    .take(row?.file ?? "");
}

const dented = {
  ...door,
  answer: {
    kind: "faults" as const,
    found: [{ kind: "dent", extent: { value: 80, unit: "mm" as const } }],
    denied: [],
  },
};
const sign = async (report: ReturnType<typeof collected>, paper: "noted" | "nothing") => {
  const body = { ...(await signing(world, token, report)), paper };
  return world.nobody.does("carriedHandOvers.sign", { path: { token }, body });
};

test("the carrier's link takes a photograph at a place, once however often it is sent", async () => {
  const one = await takesPicture(world, token, { stage: "collection", ...door }, photo);
  expect(one).toMatchObject({
    stage: "collection",
    ...door,
    place: "panel damage, left front door",
    sha256: hashOf(photo),
    state: "checked",
    refused: null,
  });
  expect((await takesPicture(world, token, { stage: "collection", ...door }, photo)).id).toBe(one.id);
  const whole = await takesPicture(world, token, { stage: "collection" }, photo);
  expect(whole).toMatchObject({ item: "", position: "", place: "", sha256: one.sha256 });
  expect((await world.nobody.ask("carriedHandOvers.picture", { path: { token, id: one.id } })).status).toBe(
    404,
  );
  await work(one.id);
  const { body, headers } = await world.nobody.ask("carriedHandOvers.picture", {
    path: { token, id: one.id },
  });
  expect(headers["content-type"]).toBe("image/webp");
  expect(body.includes("EXIF") || body.includes("Ostra")).toBe(false);
  expect(await sharp(body).metadata()).toMatchObject({ format: "webp", width: 1280 });
  const { pictures } = await world.nobody.does("carriedHandOvers.get", { path: { token } });
  expect(pictures.map((each) => [each.id, each.state])).toEqual([
    [one.id, "ready"],
    [whole.id, "ready"],
  ]);
});

test("until it is signed it can be taken away, and whoever looked before signs another document", async () => {
  const other = Uint8Array.from(await photograph(90));
  const added = await takesPicture(world, token, { stage: "collection", ...door }, other);
  const body = await signing(world, token, collected(soundFindings()));
  await world.nobody.does("carriedHandOvers.removePicture", { path: { token, id: added.id } });
  const refused = await world.nobody.isRefused("carriedHandOvers.sign", { path: { token }, body });
  expect(refused.code).toBe("hand-over-hash");
  const gone = await world.nobody.isRefused("carriedHandOvers.removePicture", {
    path: { token, id: added.id },
  });
  expect(gone.code).toBe("not-found");
});

test("what is signed names every photograph by place and hash; from then on none comes and none goes", async () => {
  const { report } = await sign(collected(soundFindings()), "nothing");
  const [stored] = await on<{ document: string }>(
    "SELECT convert_from(document, 'UTF8') AS document FROM hand_over_report WHERE hand_over_id = $1",
    [id],
  );
  const sha256 = hashOf(photo);
  expect(JSON.parse(stored?.document ?? "").pictures).toEqual([
    { ...door, sha256 },
    { item: "", position: "", sha256 },
  ]);
  expect(hashOf(Buffer.from(stored?.document ?? "", "utf8"))).toBe(report.seal);
  expect(await sendPicture(world, token, { stage: "collection", ...door }, photo)).toMatchObject({
    status: 409,
    body: { state: "collected" },
  });
  const { pictures } = await world.nobody.does("carriedHandOvers.get", { path: { token } });
  const removing = { path: { token, id: pictures[0]?.id ?? "" } };
  expect((await world.nobody.isRefused("carriedHandOvers.removePicture", removing)).code).toBe(
    "hand-over-state",
  );
});

test("the claim has both pictures of the place; the dealer sees what left and not what arrived", async () => {
  const at = Uint8Array.from(await photograph(60));
  const arrived = await takesPicture(world, token, { stage: "delivery", ...door }, at);
  await sign(delivered(soundFindings(dented)), "noted");
  await work(arrived.id);
  const seen = await world.buyer.does("handOvers.get", { path: { id } });
  const line = seen.compared?.discrepancies.find(({ kind }) => kind === "new");
  expect(line).toMatchObject({ ...door, pictured: true });
  const here = seen.pictures.filter(
    ({ item, position }) => item === line?.item && position === line.position,
  );
  expect(here.map(({ stage }) => stage)).toEqual(["collection", "delivery"]);
  for (const picture of here) {
    const { body } = await world.buyer.ask("handOverPictures.large", { path: { id: picture.id } });
    expect(await sharp(body).metadata()).toMatchObject({ format: "webp" });
  }
  const { body: original } = await world.buyer.ask("handOverPictures.original", { path: { id: arrived.id } });
  expect(hashOf(original)).toBe(arrived.sha256);
  const dealers = await world.dealer.does("handOvers.get", { path: { id } });
  expect(new Set(dealers.pictures.map(({ stage }) => stage))).toEqual(new Set(["collection"]));
  const [buyers, sellers] = await Promise.all(
    [world.buyer, world.dealer].map(async (who) =>
      (await who.does("exports.get", { path: { id: who.organization } })).handOvers.find(
        (one) => one["id"] === id,
      ),
    ),
  );
  expect([buyers?.["pictures"], sellers?.["pictures"]]).toMatchObject([{ length: 3 }, { length: 2 }]);
});

test("what a hand-over shows is not swept away", async () => {
  await on("UPDATE evidence_file SET created_at = now() - interval '40 days'");
  await service().app.get(EvidenceSweep, { strict: false }).sweep();
  const { pictures } = await world.buyer.does("handOvers.get", { path: { id } });
  expect(pictures).toHaveLength(3);
  for (const picture of pictures)
    expect((await world.buyer.ask("handOverPictures.small", { path: { id: picture.id } })).status).toBe(200);
});
