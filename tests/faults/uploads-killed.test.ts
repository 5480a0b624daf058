import { createHash } from "node:crypto";
import { afterAll, expect, test } from "vitest";
import { query } from "../api/setup/database.ts";
import { announce, hashOf, sendPart, whereIs } from "../api/setup/evidence-story.ts";
import { Person } from "../api/setup/person.ts";
import { photograph } from "../api/setup/pictures.ts";
import { type PlainProcess, startProcess } from "../api/setup/plain-process.ts";
import { recordKeys, unlimited, useService } from "../api/setup/service.ts";
import { draftStatement, makeVehicle } from "../api/setup/story.ts";
import { until } from "../api/setup/until.ts";
import { makeWorld } from "../api/setup/world.ts";
import { deadWorkers } from "./setup/dead-workers.ts";

/** Short in every run; at full length two hundred uploads and ten kills. */
const full = process.env["FAULTS"] === "full";
const [uploads, kills] = full ? [200, 10] : [3, 1];

const service = useService({ emptyBetween: false, alone: true });
const on = <R extends object>(text: string) => query<R>(service().databaseUrl, text);
let serving: PlainProcess | undefined;
afterAll(async () => serving?.stop("SIGKILL"));

/** Serves and works, on the storage that stays when it is killed. */
async function serve(): Promise<string> {
  serving = startProcess(["node", "apps/api/dist/main.js", "serve"], {
    DATABASE_URL: service().databaseUrl,
    STORAGE_FOLDER: service().filesFolder,
    MAIL_FOLDER: service().mailFolder,
    RECORD_KEYS: recordKeys,
    PORT: "0",
    LOG_LEVEL: "silent",
    ...unlimited,
  });
  const [, url] = await serving.says(/answers at (http:\S+)/);
  return url ?? "";
}

/** A number below the bound that hangs on the words alone. */
const drawn = (words: string, bound: number): number =>
  createHash("sha256").update(words).digest().readUInt32BE() % bound;

const limit = full ? { timeout: 3_600_000 } : {};
test(
  "uploads that are cut at any byte, by a service that is killed again and again, arrive whole, once",
  limit,
  async () => {
    const { dealer } = await makeWorld(service());
    const { id: report } = await draftStatement(dealer, await makeVehicle(dealer));
    const cookie = dealer.credentials["cookie"]?.split("=")[1] ?? "";
    const reached = async () => new Person(await serve(), { account: dealer.account, cookie });
    const picture = await photograph();
    const killAfter = new Set(
      Array.from({ length: kills }, (_, at) => Math.floor((uploads * (at + 1)) / (kills + 1))),
    );
    const dead = await deadWorkers(service().databaseUrl, "evidence");
    let person = await reached();
    const sent: string[] = [];
    for (let at = 0; at < uploads; at += 1) {
      // Padding behind the picture, as cameras leave it, makes each a file of its own.
      const bytes = Buffer.concat([picture, Buffer.alloc(at + 1)]);
      const id = await announce(person, report, bytes, { position: `place-${at}` });
      const cutAfter = drawn(`cut ${at}`, bytes.length);
      await sendPart(person, id, { bytes, from: await whereIs(person, id), cutAfter });
      if (killAfter.has(at)) {
        const cut = sendPart(person, id, { bytes, from: await whereIs(person, id), cutAfter: bytes.length });
        await serving?.stop("SIGKILL");
        await cut;
        await dead.makeSilent();
        person = await reached();
      }
      await until(async () => {
        const from = await whereIs(person, id);
        return from === bytes.length || (await sendPart(person, id, { bytes, from })) === 204;
      });
      sent.push(hashOf(bytes));
    }
    // Each has its minute, however many stand before it.
    for (let at = 1; at <= uploads; at += 1)
      await until(async () => {
        const ready = await on("SELECT 1 FROM evidence_file WHERE state = 'ready'");
        if (ready.length < at) await dead.lookForThem();
        return ready.length >= at;
      });
    await dead.stop();
    const { items } = await dealer.does("evidence.ofReport", { path: { id: report } });
    expect(items.map(({ sha256 }) => sha256).toSorted()).toEqual(sent.toSorted());
    for (const { id, sha256 } of items) {
      const { body } = await dealer.ask("evidence.original", { path: { id } });
      expect(hashOf(body)).toBe(sha256);
    }
  },
);
