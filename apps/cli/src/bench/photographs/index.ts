import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { z } from "zod";
import { median } from "../comparison-speed/blocks.ts";
import { withDatabase } from "../database.ts";
import { benchRow, type BenchOptions, type BenchRow } from "../row.ts";
import { type Ground, withGround } from "../served/ground.ts";
import { fetchOnce, quantile, type Target } from "../served/load.ts";
import { type Served, startService, startWorker } from "../served/programs.ts";
import type { BareTask } from "./bare.ts";
import { forgetPrints, leftInLine, putAllInLine, secondsOfWork, untilDone } from "./line.ts";
import { mostMemory } from "./memory.ts";
import { asAnotherFile, photographsOf } from "./photographs.ts";

const ALL = 200;
const BLOCK = 5;
const BLOCKS = 3;
/** How long others ask with nothing to do beside them, and how long while photographs are made. */
const [IDLE_SECONDS, BUSY_SECONDS] = [10, 30];
/** Between two requests: somebody who presses, and the page that follows. */
const PAUSE_MS = 20;

type Made = { readonly whole: number; readonly bare: number };

/** Milliseconds that sharp alone takes for photographs, one after the other. */
async function timeBare(bare: ChildProcess, task: BareTask): Promise<number> {
  const answered = once(bare, "message");
  bare.send(task);
  const [answer]: unknown[] = await answered;
  return z.object({ milliseconds: z.number() }).parse(answer).milliseconds;
}

/** Photographs a second of a block, by the worker and by sharp alone, one after the other. */
async function blockOf(ground: Ground, bare: ChildProcess, task: BareTask): Promise<Made> {
  const since = new Date();
  const { photographs } = task;
  await putAllInLine(ground, photographs);
  await untilDone(ground);
  const whole = photographs.length / (await secondsOfWork(ground, since));
  return { whole, bare: (1000 * photographs.length) / (await timeBare(bare, task)) };
}

/** Blocks take turns, so that a slow stretch of the machine meets both; the first warms both up. */
async function throughput(ground: Ground, photographs: readonly Buffer[]): Promise<readonly Made[]> {
  const folder = mkdtempSync(join(tmpdir(), "evenhand-bench-pictures-"));
  const bare = fork(fileURLToPath(new URL("./bare.ts", import.meta.url)), {
    execArgv: [],
    serialization: "advanced",
  });
  try {
    const blocks: Made[] = [];
    for (let block = 0; block <= BLOCKS; block += 1) {
      const those = photographs.slice(block * BLOCK, (block + 1) * BLOCK);
      blocks.push(await blockOf(ground, bare, { photographs: those, folder }));
    }
    return blocks.slice(1);
  } finally {
    bare.kill();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What one buyer reads, again and again for so long: milliseconds each. */
async function readFor(target: Target, { comparison, case: id }: Ground, seconds: number): Promise<number[]> {
  const paths = ["cases?limit=25", `cases/${id}`, "vehicles?limit=25", `comparisons/${comparison}/document`];
  const times: number[] = [];
  const end = performance.now() + 1000 * seconds;
  for (let at = 0; performance.now() < end; at += 1) {
    const start = performance.now();
    await fetchOnce(target, `/api/v1/${paths[at % paths.length] ?? ""}`);
    times.push(performance.now() - start);
    await pause(PAUSE_MS);
  }
  return times;
}

/** The 95th percentile of reads of a service that works beside serving, with nothing to do and with photographs in line. */
async function besideWork(ground: Ground, photographs: readonly Buffer[]) {
  const served = await startService({ ...ground.env, JOBS: "on" });
  const target = { served, cookie: ground.service.cookie };
  try {
    await readFor(target, ground, 3);
    const idle = await readFor(target, ground, IDLE_SECONDS);
    await putAllInLine(ground, photographs);
    while ((await leftInLine(ground)) === photographs.length) await pause(50);
    const busy = await readFor(target, ground, BUSY_SECONDS);
    const made = photographs.length - (await leftInLine(ground));
    return { idle: quantile(idle, 0.95), busy: quantile(busy, 0.95), middle: quantile(busy, 0.5), made };
  } finally {
    await served.stop();
  }
}

async function worked(ground: Ground, photographs: readonly Buffer[]) {
  const worker: Served = await startWorker(ground.env);
  try {
    const blocks = await throughput(ground, photographs);
    return { blocks, memory: mostMemory(worker.pid) };
  } finally {
    await worker.stop();
  }
}

async function measure(ground: Ground, { print }: BenchOptions): Promise<BenchRow[]> {
  const photographs = await photographsOf(ALL);
  const { blocks, memory } = await worked(
    ground,
    photographs.slice(0, BLOCK * (BLOCKS + 1)).map((each) => asAnotherFile(each, ALL)),
  );
  const [whole, bare] = (["whole", "bare"] as const).map((of) => median(blocks.map((block) => block[of])));
  print(
    `photographs of 12 million pixels, a second: ${(whole ?? 0).toFixed(2)} by the worker, ${(bare ?? 0).toFixed(2)} by sharp alone`,
  );
  print(
    `memory at most: ${memory.map((each) => `${each.toFixed(0)} MiB`).join(" and ")} (worker, and what opens pictures)`,
  );
  await forgetPrints(ground);
  const { idle, busy, middle, made } = await besideWork(ground, photographs);
  print(
    `reads beside it: 95th percentile ${idle.toFixed(1)} ms idle, ${busy.toFixed(1)} ms (median ${middle.toFixed(1)} ms) ` +
      `while ${made} of ${ALL} photographs in line were made`,
  );
  return [
    benchRow({
      work: "photograph in, three sizes out: hashed, checked, kept, measured, looked up",
      against: "bare sharp drawing the same three sizes, taking turns",
      value: median(blocks.map((block) => block.whole / block.bare)),
      goal: 0.9,
      better: "higher",
    }),
    benchRow({
      work: "memory of the worker and its process for pictures, at most, MiB",
      against: "photographs of 12 million pixels",
      value: memory.reduce((sum, each) => sum + each, 0),
      goal: 350,
      better: "lower",
    }),
    benchRow({
      work: `other requests, 95th percentile, while ${ALL} photographs are in line`,
      against: "the same, idle",
      value: busy / idle,
      goal: 2,
      better: "lower",
    }),
  ];
}

/** How fast photographs are taken in, in how much memory, and who waits for it. */
export const rows = (options: BenchOptions): Promise<BenchRow[]> =>
  withDatabase((client, url) =>
    withGround(client, url, (ground) => measure(ground, options), { JOBS: "off" }),
  );
