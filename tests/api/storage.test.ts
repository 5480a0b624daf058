import { randomBytes } from "node:crypto";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { FileStorage } from "../../apps/api/src/platform/storage/file-storage.ts";
import { S3Storage } from "../../apps/api/src/platform/storage/s3-storage.ts";
import type { Storage } from "../../apps/api/src/platform/storage/storage.ts";
import { type PlainProcess, startProcess } from "./setup/plain-process.ts";

const folder = mkdtempSync(join(tmpdir(), "evenhand-storage-"));
const account = { region: "us-east-1", accessKeyId: "S3RVER", secretAccessKey: "S3RVER" };
/** A server that speaks S3, as a process of its own. */
const serve = `
  const S3rver = require("@20minutes/s3rver");
  new S3rver({ port: 0, address: "127.0.0.1", silent: true, directory: process.env.FOLDER, configureBuckets: [{ name: "evenhand" }] })
    .run((error, at) => console.log(error ?? "listens at " + at.port + "."));`;
let server: PlainProcess;
let endpoint: string;

beforeAll(async () => {
  server = startProcess(["node", "-e", serve], { FOLDER: join(folder, "s3") });
  const [, port] = await server.says(/listens at (\d+)\./);
  endpoint = `http://127.0.0.1:${port}/evenhand`;
});
afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

const adapters: Readonly<Record<string, () => Storage>> = {
  "a folder": () => new FileStorage(join(folder, "files")),
  S3: () => new S3Storage({ endpoint, ...account }),
};

describe.each(Object.entries(adapters))("%s", (_, open) => {
  test("gives back what was put, byte for byte, to whoever opens it anew", async () => {
    const bytes = randomBytes(3_000_001);
    await open().put("originals/ab/photograph", bytes);
    expect((await open().read("originals/ab/photograph"))?.equals(bytes)).toBe(true);
  });

  test("keeps a part of a larger store of bytes as that part", async () => {
    await open().put("parts/one", Buffer.from("before-part-after").subarray(7, 11));
    expect((await open().read("parts/one"))?.toString()).toBe("part");
  });

  test("replaces what lay there, and keeps nothing at all as nothing", async () => {
    await open().put("pictures/a.webp", Buffer.from("old"));
    await open().put("pictures/a.webp", Buffer.alloc(0));
    expect((await open().read("pictures/a.webp"))?.length).toBe(0);
  });

  test("has nothing where nothing was put, or what was put is taken away; twice is no error", async () => {
    expect(await open().read("nothing/here")).toBeNull();
    await open().put("going", Buffer.from("x"));
    await open().remove("going");
    await open().remove("going");
    expect(await open().read("going")).toBeNull();
  });

  test.each(["../secret", "/etc/passwd", "a/../b", "A", "a//b", "a\0b", "", "a/.hidden"])(
    "takes no key such as %j",
    async (key) => {
      await expect(open().put(key, Buffer.from("x"))).rejects.toThrow(RangeError);
      await expect(open().read(key)).rejects.toThrow(RangeError);
    },
  );
});

const unfinished = join(folder, "files", ".unfinished");

test("a folder is left without half-written files", async () => {
  await adapters["a folder"]?.().put("whole", Buffer.from("x"));
  expect(readdirSync(unfinished)).toEqual([]);
});

test("what somebody had begun to write who was killed goes after its time, and only then", async () => {
  const storage = new FileStorage(join(folder, "files"));
  mkdirSync(unfinished, { recursive: true });
  for (const [name, day] of [
    ["old", "2026-03-01"],
    ["new", "2026-03-03"],
  ] as const) {
    const place = join(unfinished, name);
    writeFileSync(place, "half");
    utimesSync(place, new Date(day), new Date(day));
  }
  expect(await storage.clearUnfinished(new Date("2026-03-02"))).toBe(1);
  expect(readdirSync(unfinished)).toEqual(["new"]);
  expect(await new FileStorage(join(folder, "none yet")).clearUnfinished(new Date())).toBe(0);
});

test("a store that is not there, or refuses the key, is an error and not an absence", async () => {
  const shut = new S3Storage({ endpoint, ...account, secretAccessKey: "another" });
  await expect(shut.read("originals/ab/photograph")).rejects.toThrow(/403/);
  await expect(shut.put("x", Buffer.from("x"))).rejects.toThrow(/403/);
});
