import { readdirSync } from "node:fs";
import { MOST_BYTES, MOST_FILES } from "@evenhand/evidence/evidence-limits";
import { HandOverPicture } from "@evenhand/shared/http/hand-overs";
import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import { Problem } from "@evenhand/shared/problem";
import { beforeAll, describe, expect, test } from "vitest";
import { Arrivals } from "../../apps/api/src/capabilities/evidence/arrivals.ts";
import { query } from "../api/setup/database.ts";
import { carTo, invite, sendPicture, takesPicture } from "../api/setup/hand-over-story.ts";
import { hostile, photograph } from "../api/setup/pictures.ts";
import { useService } from "../api/setup/service.ts";
import { makeWorld, type World } from "../api/setup/world.ts";

const service = useService({ emptyBetween: false });
const collection = { stage: "collection" } as const;
let world: World;
let [own, other] = ["", ""];
let photo: Uint8Array<ArrayBuffer>;
let picture = "";

beforeAll(async () => {
  world = await makeWorld(service());
  own = (await invite(world, (await carTo(world, "bought")).caseId)).token;
  other = (await invite(world, (await carTo(world, "bought")).caseId)).token;
  photo = Uint8Array.from(await photograph());
  picture = (await takesPicture(world, own, collection, photo)).id;
});

const filesNow = (): number =>
  readdirSync(service().filesFolder, { recursive: true, withFileTypes: true }).filter((each) => each.isFile())
    .length;

const shot = async (seed: number) => Uint8Array.from(await photograph(seed));

/** How the sentence of each reason begins. */
const refusalBegins: Readonly<Record<string, string>> = {
  unknown: "By its bytes this is no photograph",
  "two-in-one": "The file is two kinds of file at once",
  markup: "This is a drawing or page in markup",
  "cut-short": "The file ends before it should",
  metadata: "The file carries more than 4 MiB",
  moving: "This picture moves",
  heic: "This is a HEIC photograph",
  pixels: "The picture claims 900 million pixels",
  tiny: "The picture is 1 by 1 pixels",
  deep: "The picture has 16 bits a channel",
  print: "The picture is in printing colors",
  unreadable: "The picture cannot be read to its end",
};

/** Why a worker does not take it, and that it is taken away then. */
async function workedOn(id: string) {
  const [row] = await query<{ file: string }>(
    service().databaseUrl,
    "SELECT file_id AS file FROM hand_over_picture WHERE id = $1",
    [id],
  );
  await service()
    .app.get(Arrivals, { strict: false })
    .take(row?.file ?? "");
  const { pictures } = await world.nobody.does("carriedHandOvers.get", { path: { token: own } });
  await world.nobody.does("carriedHandOvers.removePicture", { path: { token: own, id } });
  return pictures.find((each) => each.id === id)?.refused;
}

/** Sends it; nothing may be kept of it. */
async function refusalOf(
  token: string,
  at: Parameters<typeof sendPicture>[2],
  bytes: Uint8Array<ArrayBuffer>,
) {
  const before = filesNow();
  const { status, body } = await sendPicture(world, token, at, bytes);
  const problem = Problem.parse(body);
  expect([problem.status, filesNow()]).toEqual([status, before]);
  return {
    status,
    code: problemCodeOf(problem.type),
    detail: problem.detail ?? "",
    problems: problem.problems,
  };
}

test("without a link that holds, nothing is taken, shown or taken away", async () => {
  for (const token of ["wrong", `${own}x`]) {
    const at = { path: { token, id: picture } };
    expect((await refusalOf(token, collection, photo)).code).toBe("hand-over-link-spent");
    const codes = [
      (await world.nobody.isRefused("carriedHandOvers.picture", at)).code,
      (await world.nobody.isRefused("carriedHandOvers.removePicture", at)).code,
    ];
    expect(codes.every((code) => code === "hand-over-link-spent" || code === "not-found")).toBe(true);
  }
});

test("a link reaches the photographs of its own hand-over and of no other", async () => {
  await query(service().databaseUrl, "UPDATE evidence_file SET state = 'ready'");
  const at = { path: { token: other, id: picture } };
  expect((await world.nobody.isRefused("carriedHandOvers.picture", at)).code).toBe("not-found");
  expect((await world.nobody.isRefused("carriedHandOvers.removePicture", at)).code).toBe("not-found");
  expect((await world.nobody.does("carriedHandOvers.get", { path: { token: other } })).pictures).toEqual([]);
  expect((await world.nobody.does("carriedHandOvers.get", { path: { token: own } })).pictures).toHaveLength(
    1,
  );
});

test("nor does it reach what inspector or dealer photographed", async () => {
  const [row] = await query<{ id: string }>(service().databaseUrl, "SELECT id FROM evidence LIMIT 1");
  for (const id of [row?.id ?? picture.replace(/^./, "f")]) {
    const at = { path: { token: own, id } };
    expect((await world.nobody.isRefused("carriedHandOvers.picture", at)).code).toBe("not-found");
  }
});

describe("a file that is no photograph", () => {
  test("by its bytes, whatever it is called: at once, or once it was read to its end; nothing of it stays", async () => {
    const before = filesNow();
    for (const [name, reason, bytes] of await hostile()) {
      const { status, body } = await sendPicture(world, own, collection, Uint8Array.from(bytes));
      const said =
        status === 422 ? Problem.parse(body).detail : (await workedOn(HandOverPicture.parse(body).id))?.words;
      const first = refusalBegins[reason];
      expect([name, first !== undefined && said?.startsWith(first), filesNow()]).toEqual([
        name,
        true,
        before,
      ]);
    }
  });

  test("larger than a camera writes", async () => {
    const large = new Uint8Array(MOST_BYTES.jpeg + 1);
    expect(await refusalOf(own, collection, large)).toMatchObject({ status: 413, code: "body-too-large" });
  });

  test("sent as JSON", async () => {
    const asked = { path: { token: own }, query: collection, body: { a: 1 } };
    const refused = await world.nobody.isRefused("carriedHandOvers.addPicture", asked);
    expect(refused).toMatchObject({ code: "malformed-request", problems: [{ at: "header/content-type" }] });
  });
});

test("a place that is none of this car, or the report that is not next", async () => {
  const wrong = [
    { stage: "collection", item: "engine.oil-level" },
    { stage: "collection", item: "body.faults", position: "nowhere" },
    { stage: "collection", item: "body.faults" },
    { stage: "collection", item: "../../etc", position: "" },
  ] as const;
  for (const at of wrong) {
    const { status, code, problems } = await refusalOf(own, at, photo);
    expect([status, code, problems?.length]).toEqual([422, "invalid-fields", 1]);
  }
  expect((await refusalOf(own, { stage: "delivery" }, photo)).code).toBe("hand-over-state");
});

test("a place takes so many, and says which way out", async () => {
  const at = { ...collection, item: "body.faults", position: "hood" };
  for (let seed = 1; seed <= MOST_FILES.carrier.place; seed += 1)
    await takesPicture(world, own, at, await shot(seed));
  const { status, body } = await sendPicture(world, own, at, await shot(99));
  expect([status, Problem.parse(body).detail]).toEqual([409, expect.stringMatching(/Take one away/)]);
});
