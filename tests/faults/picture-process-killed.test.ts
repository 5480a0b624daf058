import { execFileSync } from "node:child_process";
import { afterEach, expect, test } from "vitest";
import { PictureProcess } from "../../apps/api/src/capabilities/evidence/picture-process.ts";
import { photograph } from "../api/setup/pictures.ts";
import { until } from "../api/setup/until.ts";

const pictures = new PictureProcess();
afterEach(() => pictures.onApplicationShutdown());

/** Processes that this one started to open pictures. */
const openers = (): number[] =>
  execFileSync("ps", ["-A", "-o", "pid=,ppid=,args="], { encoding: "utf8" })
    .split("\n")
    .map((line) => /^\s*(\d+)\s+(\d+)\s+(.*)$/.exec(line) ?? [])
    .filter(([, , parent, words = ""]) => Number(parent) === process.pid && words.includes("picture-program"))
    .map(([, pid]) => Number(pid));

/** Ends one that was not ended yet, as soon as there is one. */
async function endNext(ended: Set<number>, signal: NodeJS.Signals): Promise<void> {
  await until(() => openers().some((pid) => !ended.has(pid)));
  for (const pid of openers().filter((one) => !ended.has(one))) {
    ended.add(pid);
    process.kill(pid, signal);
  }
}

test("what breaks the process that opens pictures once is tried again, and twice is refused", async () => {
  const original = await photograph();
  const ended = new Set<number>();
  const first = pictures.make(original);
  await endNext(ended, "SIGSEGV");
  expect(await first).toMatchObject({ ok: true, picture: { width: 1600, height: 1200 } });
  for (const pid of openers()) ended.delete(pid);
  const second = pictures.make(original);
  await endNext(ended, "SIGSEGV");
  await endNext(ended, "SIGABRT");
  expect(await second).toEqual({ ok: false, refused: { reason: "unreadable" } });
});

test("where it was stopped from outside, nothing is said against the picture, and the next one is made", async () => {
  const original = await photograph(90);
  const [why] = await Promise.all([
    pictures.make(original).catch((error: unknown) => error),
    endNext(new Set(), "SIGKILL"),
  ]);
  expect(why).toMatchObject({ name: "PictureProcessEnded", crashed: false });
  expect(await pictures.make(original)).toMatchObject({ ok: true });
});
