import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, expect, test } from "vitest";
import { choose, findOffers, makeBookingWorld } from "../api/setup/booking-story.ts";
import { query, workerDatabase } from "../api/setup/database.ts";
import { type PlainProcess, startProcess } from "../api/setup/plain-process.ts";
import { unlimited } from "../api/setup/service.ts";
import { header, inspect, makeVehicle } from "../api/setup/story.ts";
import { killServer, makeDurable, startServer } from "./setup/database-kill.ts";
import { type Scene, startWriting, type Writing } from "./setup/writers.ts";

/** Short in every run; at full length by `npm run test:faults`. */
const full = process.env["FAULTS"] === "full";
const serviceKills = full ? 200 : 2;
const databaseKills = full ? 50 : 2;
/** After the database answers again, everybody has had something acknowledged within so long. */
const recoversWithinMs = 5_000;

const mailFolder = mkdtempSync(join(tmpdir(), "evenhand-kills-"));
const running: { service?: PlainProcess; writing?: Writing } = {};
let [url, port, databaseUrl] = ["", "0", ""];
let databaseFolder = "";
let scene: Scene;

const on = <R extends object>(text: string, values: unknown[] = []) => query<R>(databaseUrl, text, values);

async function startService(): Promise<void> {
  const service = startProcess(["node", "apps/api/dist/main.js", "serve"], {
    DATABASE_URL: databaseUrl,
    PORT: port,
    JOBS: "on",
    MAIL_FOLDER: mailFolder,
    LOG_LEVEL: "silent",
    ...unlimited,
  });
  running.service = service;
  const [, address = ""] = await service.says(/answers at (\S+)/);
  url = address.replace("[::1]", "127.0.0.1");
}

beforeAll(async () => {
  databaseFolder = await makeDurable();
  databaseUrl = await workerDatabase();
  await startService();
  port = new URL(url).port;
  const where = { url, databaseUrl };
  const world = await makeBookingWorld(where);
  const { offers } = await findOffers(world.buyer, world.vehicle, { limit: "20" });
  const { comparison } = await inspect(world);
  const path = { id: await makeVehicle(world.dealer) };
  const draft = await world.dealer.does("reports.state", { path, body: header });
  scene = { ...world, draft: draft.id, offers: offers.map(choose), comparison };
  running.writing = startWriting(scene);
}, 300_000);

afterAll(async () => {
  await running.service?.stop("SIGKILL");
  rmSync(mailFolder, { recursive: true, force: true });
});

const writing = (): Writing => {
  if (running.writing === undefined) throw new Error("nobody writes yet");
  return running.writing;
};

/** Whoever writes goes on, unless the service that they write to has ended by itself: then nobody waits any longer. */
async function whileItRuns(work: Promise<void>): Promise<void> {
  const ended = running.service?.ended.then((code) => {
    throw new Error(`The service ended by itself, with ${String(code)}: ${running.service?.said() ?? ""}`);
  });
  await Promise.race([work, ended ?? work]);
}
const goesOn = (): Promise<void> => whileItRuns(writing().goesOn());

test(
  `the service is killed ${String(serviceKills)} times at random moments while findings, holds and decisions are written`,
  async () => {
    for (let kill = 0; kill < serviceKills; kill += 1) {
      await goesOn();
      await wait(Math.random() * 200);
      await running.service?.stop("SIGKILL");
      await startService();
    }
    await goesOn();
    // Each round waited for something new from each of the three.
    expect(writing().kept.decisions.length).toBeGreaterThan(serviceKills);
  },
  full ? 3_600_000 : 300_000,
);

test(
  `the database is killed ${String(databaseKills)} times at random moments under the same load, and the service recovers by itself`,
  async () => {
    const tookMs: number[] = [];
    for (let kill = 0; kill < databaseKills; kill += 1) {
      await goesOn();
      await wait(Math.random() * 200);
      killServer(databaseFolder);
      await startServer(databaseFolder);
      const answered = performance.now();
      await goesOn();
      tookMs.push(Math.round(performance.now() - answered));
    }
    if (full) console.log("recovered within", tookMs.toSorted((a, b) => a - b).join(", "), "ms");
    // It is the very process that lost its database: had it ended, nobody would have gone on.
    expect(tookMs.filter((took) => took > recoversWithinMs)).toEqual([]);
  },
  full ? 3_600_000 : 300_000,
);

const ids = (rows: readonly { id: string }[]): string[] => rows.map(({ id }) => id).toSorted();

test("after all that, every acknowledged write is there, and none is there twice", async () => {
  const { kept, stop } = writing();
  await whileItRuns(stop());
  if (full)
    console.log(
      `acknowledged: ${kept.operations.length} findings, ${kept.holds.length} holds, ${kept.summaries.length} summaries, ${kept.decisions.length} decisions`,
    );
  const [finding] = await on<{ revision: number }>(
    "SELECT revision FROM report_finding WHERE report_id = $1 AND item = 'electrics.horn'",
    [scene.draft],
  );
  const operations = await on<{ id: string }>("SELECT id FROM report_operation WHERE report_id = $1", [
    scene.draft,
  ]);
  expect(ids(operations)).toEqual(kept.operations.toSorted());
  expect([finding?.revision, kept.findingRevision]).toEqual([kept.operations.length, kept.operations.length]);
  const holds = await on<{ id: string; state: string }>("SELECT id, state FROM appointment");
  expect(ids(holds)).toEqual(kept.holds.toSorted());
  expect(holds.filter(({ state }) => state !== "cancelled")).toEqual([]);
  expect(ids(await on<{ id: string }>("SELECT id FROM summary"))).toEqual(kept.summaries.toSorted());
  expect(ids(await on<{ id: string }>("SELECT id FROM decision"))).toEqual(kept.decisions.toSorted());
});
