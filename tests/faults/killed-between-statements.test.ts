import assert from "node:assert/strict";
import { randomUUID } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { ReleasePicture } from "@evenhand/shared/http/releases";
import { PgBoss } from "pg-boss";
import { afterAll, beforeAll, expect, test } from "vitest";
import { verifyRecord } from "../../apps/api/src/commands/verify-record.ts";
import { makeBookingWorld } from "../api/setup/booking-story.ts";
import { query, workerDatabase } from "../api/setup/database.ts";
import { testConfig } from "../api/setup/service.ts";
import { until } from "../api/setup/until.ts";
import { type Killable, startKillable } from "./setup/killable.ts";
import type { ClockMove, Job, Move, Press, Step } from "./setup/moves.ts";
import { addedTo, type Rows, rowsOf } from "./setup/rows-of.ts";
import { saleMoves } from "./setup/sale-moves.ts";
import { settlementMoves } from "./setup/settlement-moves.ts";
import type { KillPoint } from "./setup/statement-gate.ts";

/** Every move between any two statements by `npm run test:faults`; a few of them, at a few, in every run. */
const full = process.env["FAULTS"] === "full";

const folder = mkdtempSync(join(tmpdir(), "evenhand-between-"));
let databaseUrl = "";
let killable: Killable;
const stories: Record<"settling" | "sale", readonly Step[]> = { settling: [], sale: [] };

/** A worker looks at the photograph. */
const untilReady = ({ sha256 }: Pick<ReleasePicture, "sha256">): Promise<void> =>
  killable.worksUntil(async () => {
    const ready = "SELECT 1 FROM evidence_file WHERE sha256 = $1 AND state = 'ready'";
    await until(async () => (await query(databaseUrl, ready, [sha256])).length > 0);
  });

beforeAll(async () => {
  databaseUrl = await workerDatabase();
  killable = await startKillable(databaseUrl, folder, full ? Infinity : 2);
  const world = await makeBookingWorld({ url: killable.url, databaseUrl });
  stories.settling = await settlementMoves(world, databaseUrl, untilReady);
  stories.sale = await saleMoves(world, databaseUrl);
});
afterAll(async () => {
  await killable.close();
  rmSync(folder, { recursive: true, force: true });
});

const ask = ({ who, route, asked }: Press) => who.ask(route, asked);

async function justAsk(name: string, press: Press): Promise<void> {
  const { status, text } = await ask(press);
  assert.equal(status, 201, `${name}: ${text}`);
}

type Read = () => Promise<Rows>;
const read: Read = () => rowsOf(databaseUrl);
/** What the job library does with its jobs is its own. */
const readBesideJobs: Read = async () => ({ ...(await read()), "job in line": { count: 0, hash: "" } });

/** Nothing of it is there: not a row of any table is another. */
async function expectNothing(before: Rows, where: string, now: Read = read): Promise<void> {
  await expectAdded(before, {}, where, now);
}

async function expectAdded(before: Rows, rows: Move["rows"], where: string, now: Read): Promise<void> {
  const after = await now();
  assert.deepEqual(addedTo(before, after), rows, `half-moved, killed ${where}`);
}

/** All of it is there, each row that belongs to it once. */
async function expectWhole(
  before: Rows,
  { name, rows, stands, leaves }: Step,
  now: Read = read,
): Promise<Rows> {
  const after = await now();
  expect([name, addedTo(before, after)]).toEqual([name, rows]);
  expect(await stands()).toBe(leaves);
  // To whom it was shown is noted with what they read.
  return now();
}

type Kill = (point: KillPoint) => Promise<number>;

/** Kills of everything so far. */
let kills = 0;

/** Kills before the end, which says how many statements there are, and then before each of the others. */
async function killBeforeEach(kill: Kill, name: string, before: Rows, now: Read = read): Promise<void> {
  const statements = await kill({ at: "commit" });
  // Before the end, before each statement, and after the end.
  kills += statements + 1;
  await expectNothing(before, `before the end of: ${name}`, now);
  for (let at = 1; at < statements; at += 1) {
    expect(await kill({ before: at })).toBe(at);
    await expectNothing(before, `before statement ${String(at)} of ${String(statements)}: ${name}`, now);
  }
}

/** In every run it is killed once, before the end or after it; at full length everywhere. A repeat does what was not done. */
async function tryMove(move: Move): Promise<void> {
  const made = await move.press();
  const press = { ...made, asked: { ...made.asked, key: randomUUID() } };
  const before = await read();
  const kill: Kill = (point) => killable.killedDuring(point, () => ask(press));
  if (full) await killBeforeEach(kill, move.name, before);
  const at = full ? "committed" : (move.short ?? "committed");
  await kill({ at });
  if (at === "commit") {
    await expectNothing(before, `before the end of: ${move.name}`);
    await justAsk(move.name, press);
  }
  const after = await expectWhole(before, move);
  const again = await ask(press);
  expect([move.name, again.status]).toEqual([move.name, move.repeat ?? 201]);
  await expectAdded(after, move.again ?? {}, `and asked again: ${move.name}`, read);
}

/** Puts the job in line as if it were the only one: what a killed worker had begun is given to another after half a minute. */
async function putInLine({ queue, id }: Job): Promise<void> {
  await query(databaseUrl, "DELETE FROM pgboss.job");
  const boss = new PgBoss({ connectionString: databaseUrl, supervise: false, schedule: false });
  await boss.start();
  await boss.send(queue, { id });
  await boss.stop({ graceful: false });
}

async function tryClock(move: ClockMove): Promise<void> {
  const job = await move.due();
  const before = await readBesideJobs();
  const kill: Kill = async (point) => {
    await putInLine(job);
    return killable.workerKilled(point, move.about);
  };
  await killBeforeEach(kill, move.name, before, readBesideJobs);
  await kill({ at: "committed" });
  const after = await expectWhole(before, move, readBesideJobs);
  await putInLine(job);
  await killable.worksUntil(async () => {
    const done = "SELECT 1 FROM pgboss.job WHERE state = 'completed' AND name = $1";
    await until(async () => (await query(databaseUrl, done, [job.queue])).length > 0);
  });
  await expectNothing(after, `and done again: ${move.name}`, readBesideJobs);
}

/** As everything of the story before it. */
async function goOn(step: Step): Promise<"tried" | "done" | "left out"> {
  if ("due" in step) {
    if (full) await tryClock(step);
    return full ? "tried" : "left out";
  }
  if (full || step.short !== undefined) {
    await tryMove(step);
    return "tried";
  }
  await justAsk(step.name, await step.press());
  return "done";
}

test.each(["settling", "sale"] as const)(
  "%s: killed between two statements nothing is half-moved, and a repeat does it once",
  async (story) => {
    const steps = stories[story];
    const last = full ? steps.length : steps.findLastIndex((step) => "short" in step) + 1;
    const went: string[] = [];
    for (const step of steps.slice(0, last)) went.push(await goOn(step));
    const tried = steps.filter((step) => full || ("short" in step && step.short !== undefined));
    expect(went.filter((how) => how === "tried")).toHaveLength(tried.length);
    if (full) console.log(`${story}: ${tried.length} moves, killed at ${kills} moments so far`);
  },
  full ? 3_600_000 : 300_000,
);

test("after all that every record is whole", async () => {
  const { isWhole, lines } = await verifyRecord(testConfig(databaseUrl), {});
  expect([isWhole, lines]).toEqual([true, lines]);
});
