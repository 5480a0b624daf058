import { spawn } from "node:child_process";
import type { ChildProcess } from "node:child_process";
import { once } from "node:events";
import { chmodSync, mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { text } from "node:stream/consumers";
import { setTimeout as wait } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";

const run = fileURLToPath(new URL("../../apps/launch/src/run.mjs", import.meta.url));
const port = 48_700 + (process.pid % 1000);

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "evenhand-demo-test-"));
  // Under root the database runs as another user, who must get in.
  chmodSync(folder, 0o711);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The demo as a person starts it, in a session of its own, with its data in the test's folder. */
const startDemo = (...args: string[]): ChildProcess =>
  spawn(process.execPath, [run, "demo", ...args], {
    env: { ...process.env, EVENHAND_DATA: folder, PORT: String(port), DATABASE_URL: "" },
    stdio: ["ignore", "pipe", "inherit"],
    detached: true,
  });

const outputOf = async (demo: ChildProcess): Promise<{ code: number | null; out: string }> => {
  if (demo.stdout === null) throw new Error("the demo's output is piped");
  const [out, code] = await Promise.all([text(demo.stdout), exitOf(demo)]);
  return { code, out };
};

const exitOf = async (demo: ChildProcess): Promise<number | null> => {
  if (demo.exitCode !== null) return demo.exitCode;
  const [code]: unknown[] = await once(demo, "exit");
  return typeof code === "number" ? code : null;
};

/** Reads until the demo says how it is stopped; gives what it printed so far. */
const served = async (demo: ChildProcess): Promise<string> => {
  let out = "";
  for await (const chunk of demo.stdout ?? []) {
    out += String(chunk);
    if (out.includes("Ctrl-C stops everything")) return out;
  }
  throw new Error(`The demo ended before it served:\n${out.slice(-2000)}`);
};

const commandLine = (pid: string): string => {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, "utf8").replaceAll("\0", " ");
  } catch {
    return "gone";
  }
};

const environmentOf = (pid: string): string => {
  try {
    return readFileSync(`/proc/${pid}/environ`, "utf8");
  } catch {
    return "gone";
  }
};

/** Processes that belong to this test's demo: its own by their environment, the database's by its folder. */
const left = (): { pid: number; words: string }[] =>
  readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .map((name) => ({ pid: Number(name), words: commandLine(name), environment: environmentOf(name) }))
    .filter(
      ({ words, environment }) => words.includes(folder) || environment.includes(`EVENHAND_DATA=${folder}`),
    );

const nothingLeft = async (): Promise<string[]> => {
  for (let tries = 0; tries < 40 && left().length > 0; tries += 1) await wait(250);
  return left().map(({ words }) => words);
};

const addressIn = (out: string): string => /http:\/\/\S+/.exec(out)?.[0] ?? "";

test("from nothing: loads the scenario, steps over a taken port, prints who can sign in, serves, and stops everything when told to", async () => {
  const taken = createServer().listen(port, "127.0.0.1");
  const demo = startDemo();
  const out = await served(demo);
  expect(out).toContain("The demo scenario is loaded.");
  expect(addressIn(out)).toMatch(new RegExp(`:${port + 1}$`));
  expect(out.match(/buyer +Maribel Okonjo-Strand +\S+@\S+ +\S+ \S+ \d+/g)).toHaveLength(2);
  const [first, last] = [out.indexOf("The web application:"), out.lastIndexOf("The web application:")];
  const answer = out.indexOf("What is wrong, worst first:");
  expect(first < answer && answer < last).toBe(true);
  expect((await fetch(`${addressIn(out)}/ready`)).status).toBe(200);
  demo.kill("SIGINT");
  expect(await exitOf(demo)).toBe(0);
  expect(await nothingLeft()).toEqual([]);
  taken.close();
});

test("again it works on the same data; after a kill of its Node alone the service ends by itself, and the next start goes on, prints the main case once and leaves no process", async () => {
  const demo = startDemo();
  expect(await served(demo)).toContain("The demo scenario is there from before.");
  const own = left().find(({ words }) => words.includes("command.mjs demo"));
  expect(own).toBeDefined();
  process.kill(own?.pid ?? demo.pid ?? 0, "SIGKILL");
  await exitOf(demo);
  for (let tries = 0; tries < 40 && left().some(({ words }) => words.includes("service.mjs")); tries += 1)
    await wait(250);
  expect(left().filter(({ words }) => words.includes("service.mjs"))).toEqual([]);
  expect(left().some(({ words }) => words.includes("postgres"))).toBe(true);
  const { code, out } = await outputOf(startDemo("--once"));
  expect(code).toBe(0);
  expect(out).toContain("(found running)");
  expect(out).toContain("The demo scenario is there from before.");
  expect(out).toMatch(
    /What became of the statement: Of \d+ places stated \(\d+ of the \d+ that count\): \d+ fell/,
  );
  expect(out).toMatch(/What is wrong, worst first:\n 1 halt /);
  expect(out).not.toContain("@");
  const steps = [...out.matchAll(/^(\d) of 6 {2}\S/gm)].map(([, step]) => step);
  expect(steps).toEqual(["1", "2", "3", "4", "5", "6"]);
  expect(await nothingLeft()).toEqual([]);
});
