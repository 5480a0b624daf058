import { createHash } from "node:crypto";
import { setTimeout as pause } from "node:timers/promises";
import { afterAll, expect, test } from "vitest";
import type { PictureSize } from "@evenhand/shared/evidence";
import { copyKey } from "../../apps/api/src/capabilities/evidence/keys.ts";
import { Storage } from "../../apps/api/src/platform/storage/storage.ts";
import { query } from "../api/setup/database.ts";
import { hashOf, send } from "../api/setup/evidence-story.ts";
import type { Person } from "../api/setup/person.ts";
import { photograph } from "../api/setup/pictures.ts";
import { type PlainProcess, startProcess } from "../api/setup/plain-process.ts";
import { useService } from "../api/setup/service.ts";
import { draftStatement, makeVehicle } from "../api/setup/story.ts";
import { until } from "../api/setup/until.ts";
import { makeWorld } from "../api/setup/world.ts";
import { type DeadWorkers, deadWorkers } from "./setup/dead-workers.ts";

/** Short in every run; at full length by `npm run test:faults`. */
const full = process.env["FAULTS"] === "full";
const kills = full ? 100 : 2;
/** The longest wait before a kill: several photographs are made in it. */
const longestMs = 1_200;

const service = useService({ emptyBetween: false, alone: true });
const on = <R extends object>(text: string) => query<R>(service().databaseUrl, text);
let working: PlainProcess | undefined;
let dead: DeadWorkers | undefined;
afterAll(async () => {
  await working?.stop("SIGKILL");
  await dead?.stop();
});

async function startWorker(): Promise<void> {
  working = startProcess(["node", "apps/api/dist/main.js", "work"], {
    DATABASE_URL: service().databaseUrl,
    STORAGE_FOLDER: service().filesFolder,
    MAIL_FOLDER: service().mailFolder,
    LOG_LEVEL: "silent",
  });
  await working.says(/works/);
}

const undecided = `SELECT e.id FROM evidence e LEFT JOIN evidence_file f ON f.id = e.file_id
  WHERE coalesce(f.state, e.state) NOT IN ('ready', 'refused')`;
const active = "SELECT 1 FROM pgboss.job WHERE name = 'evidence' AND state = 'active'";
/** A worker has begun with a photograph and is not done with it. */
const isAtWork = async (): Promise<boolean> =>
  (await on(active)).length > 0 && (await on(undecided)).length > 0;

/** A number below the bound that hangs on the words alone. */
const drawn = (words: string, bound: number): number =>
  createHash("sha256").update(words).digest().readUInt32BE() % bound;

/** To a kill three photographs, and one that ends before it should, which is found in the midst of reading it. */
async function sendFour(dealer: Person, round: number): Promise<void> {
  const { id: report } = await draftStatement(dealer, await makeVehicle(dealer));
  const picture = await photograph(90 + (round % 60));
  const cut = Buffer.concat([picture.subarray(0, picture.length / 2), Buffer.from([0xff, 0xd9])]);
  for (const [at, bytes] of [picture, picture, picture, cut].entries())
    // Padding behind the picture, as cameras leave it, makes each a file of its own.
    await send(dealer, report, Buffer.concat([bytes, Buffer.alloc(1 + 4 * round + at)]));
}

type Made = {
  id: string;
  state: string;
  why: string | null;
  copies: { size: PictureSize; sha256: string }[];
  prints: number;
};

/** Of every file its end, its copies, and how often its fingerprint was noted. */
const made = `SELECT f.id, f.state, f.refused ->> 'reason' AS why, f.copies,
    (SELECT count(*)::int FROM picture_print p WHERE p.file_id = f.id) AS prints
  FROM evidence_file f`;

/** What is called ready has three copies in the storage, each the bytes it is noted with, and is known by one fingerprint. */
async function expectWhole({ id, copies, prints }: Made): Promise<void> {
  expect(copies).toHaveLength(3);
  expect(prints).toBe(1);
  for (const { size, sha256 } of copies) {
    const bytes = await service().app.get(Storage, { strict: false }).read(copyKey(id, size));
    expect(hashOf(bytes ?? Buffer.alloc(0))).toBe(sha256);
  }
}

/** A worker that is killed so long after it began. @returns whether that was in the midst of a photograph */
async function killInTheMidst(afterMs: number): Promise<boolean> {
  await startWorker();
  await until(isAtWork);
  await pause(afterMs);
  await working?.stop("SIGKILL");
  return isAtWork();
}

const limit = full ? { timeout: 3_600_000 } : {};
test(
  `a worker is killed ${String(kills)} times in the midst of a photograph: every one ends ready or refused, once`,
  limit,
  async () => {
    const { dealer } = await makeWorld(service());
    const looking = await deadWorkers(service().databaseUrl, "evidence");
    dead = looking;
    let [hit, rounds] = [0, 0];
    for (; hit < kills; rounds += 1) {
      await sendFour(dealer, rounds);
      if (await killInTheMidst(drawn(`kill ${String(rounds)}`, longestMs))) hit += 1;
      await looking.makeSilent();
      await looking.lookForThem();
    }
    await startWorker();
    // Each has its minute, however many stand before it.
    for (let left = 4 * rounds; left > 0; left = (await on(undecided)).length)
      await until(async () => {
        await looking.lookForThem();
        return (await on(undecided)).length < left;
      });
    const files = await on<Made>(made);
    expect(files).toHaveLength(4 * rounds);
    for (const file of files) if (file.state === "ready") await expectWhole(file);
    const refused = files.filter(({ state }) => state === "refused");
    expect(refused.map(({ why }) => why)).toEqual(Array.from({ length: rounds }, () => "cut-short"));
    if (full)
      console.log(
        `${String(rounds)} workers killed, ${String(hit)} in the midst of a photograph, ${String(files.length)} photographs`,
      );
  },
);
