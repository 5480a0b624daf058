import { spawn } from "node:child_process";
import { chmodSync, mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { once } from "node:events";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type EmbeddedDatabase, startEmbedded } from "../../apps/api/src/platform/database/embedded.ts";

const source = join(
  import.meta.dirname,
  "..",
  "..",
  "apps",
  "api",
  "src",
  "platform",
  "database",
  "embedded.ts",
);
let folder: string;
let running: EmbeddedDatabase | undefined;
beforeAll(() => {
  const root = mkdtempSync(join(tmpdir(), "evenhand-embedded-"));
  chmodSync(root, 0o711);
  folder = join(root, "database");
});
afterAll(async () => {
  await running?.stop();
  rmSync(join(folder, ".."), { recursive: true, force: true });
});

async function rows<R extends object>(url: string, text: string): Promise<R[]> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query<R>(text)).rows;
  } finally {
    await client.end();
  }
}

const postmaster = () => Number(readFileSync(join(folder, "postmaster.pid"), "utf8").split("\n")[0]);

test("a second start reuses the data, and never initialises again", async () => {
  const first = await startEmbedded(folder);
  await rows(first.url, "CREATE TABLE kept AS SELECT 42 AS answer");
  const initialised = statSync(join(folder, "PG_VERSION")).mtimeMs;
  await first.stop();
  running = await startEmbedded(folder);
  expect(running.reused).toBe(false);
  expect(await rows(running.url, "SELECT answer FROM kept")).toEqual([{ answer: 42 }]);
  expect(statSync(join(folder, "PG_VERSION")).mtimeMs).toBe(initialised);
});

test("after Node alone was killed, the next start finds the server it left running", async () => {
  await running?.stop();
  const script = `const { startEmbedded } = await import(${JSON.stringify(source)});
    await startEmbedded(${JSON.stringify(folder)}); console.log("up"); setInterval(() => {}, 1000);`;
  const child = spawn(process.execPath, ["--input-type=module", "-e", script], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  await once(child.stdout, "data");
  const server = postmaster();
  child.kill("SIGKILL");
  await once(child, "exit");
  running = await startEmbedded(folder);
  expect([running.reused, postmaster()]).toEqual([true, server]);
  expect(await rows(running.url, "SELECT answer FROM kept")).toEqual([{ answer: 42 }]);
});

test("after the server itself was killed, the next start recovers it", async () => {
  process.kill(postmaster(), "SIGKILL");
  running = await startEmbedded(folder);
  expect(await rows(running.url, "SELECT answer FROM kept")).toEqual([{ answer: 42 }]);
});

test("it listens on the loopback only and asks for a password", async () => {
  const url = new URL(running?.url ?? "");
  expect(url.hostname).toBe("127.0.0.1");
  expect(await rows(url.href, "SHOW listen_addresses")).toEqual([{ listen_addresses: "127.0.0.1" }]);
  url.password = "guess";
  await expect(rows(url.href, "SELECT 1")).rejects.toThrow("password authentication failed");
  expect(statSync(`${folder}.password`).mode & 0o077).toBe(0);
});

test("stopped is stopped: nobody answers, and nothing says that somebody would", async () => {
  const url = running?.url ?? "";
  await running?.stop();
  running = undefined;
  await expect(rows(url, "SELECT 1")).rejects.toThrow("ECONNREFUSED");
  expect(() => postmaster()).toThrow("ENOENT");
});
