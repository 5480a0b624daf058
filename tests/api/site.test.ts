import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";
import request from "supertest";
import { afterAll, expect, test } from "vitest";
import { useService } from "./setup/service.ts";

const folder = mkdtempSync(join(tmpdir(), "evenhand-site-"));
mkdirSync(join(folder, "assets"));
writeFileSync(join(folder, "index.html"), "<!doctype html><title>Evenhand</title>");
writeFileSync(join(folder, "assets", "main-1a2b.js"), "export {};");
const script = "export const many = 1;\n".repeat(200);
writeFileSync(join(folder, "assets", "large-3c4d.js"), script);
writeFileSync(join(folder, "assets", "large-3c4d.js.br"), brotliCompressSync(script));
writeFileSync(join(folder, "assets", "large-3c4d.js.gz"), gzipSync(script));

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const service = useService({ environment: { SITE_FOLDER: folder } });
const get = (address: string, accept = "text/html") =>
  request(service().url).get(address).set("accept", accept);

test.each(["/", "/vehicles/0192", "/comparisons/0192?item=electrics.horn"])(
  "%s is the application's page",
  async (address) => {
    const answer = await get(address);
    expect([answer.status, answer.text]).toEqual([200, "<!doctype html><title>Evenhand</title>"]);
    expect(answer.headers["cache-control"]).toBe("no-cache");
  },
);

test("a script is kept for ever, since its name changes with its contents", async () => {
  const answer = await get("/assets/main-1a2b.js", "*/*");
  expect(answer.headers["content-type"]).toMatch(/javascript/);
  expect(answer.headers["cache-control"]).toBe("public, max-age=31536000, immutable");
});

test.each(["/assets/gone.js", "/favicon.ico", "/api/v1/nothing", "/api/nothing"])(
  "%s is not there",
  async (address) => {
    const answer = await get(address);
    expect([answer.status, answer.headers["content-type"]]).toEqual([
      404,
      "application/problem+json; charset=utf-8",
    ]);
  },
);

test("a file that lies there compressed is handed out so to whoever takes it", async () => {
  for (const [encoding, bytes] of [
    ["br", script.length],
    ["gzip", script.length],
    ["identity", script.length],
  ] as const) {
    const answer = await get("/assets/large-3c4d.js", "*/*").set("accept-encoding", encoding);
    expect([answer.headers["content-encoding"] ?? "identity", answer.text.length]).toEqual([encoding, bytes]);
    expect(answer.headers["content-type"]).toMatch(/javascript/);
  }
});

test.each(["/../package.json", "/%2e%2e/%2e%2e/etc/passwd", "/assets/..%2f..%2fpackage.json"])(
  "%s leads nowhere",
  async (address) => {
    const answer = await get(address);
    expect(answer.text).not.toMatch(/"name"|root:/);
  },
);

test("no inline script runs, nobody frames the page, and types are not guessed", async () => {
  const { headers } = await get("/");
  expect(headers["content-security-policy"]).toContain("script-src 'self';");
  expect(headers["content-security-policy"]).toContain("frame-ancestors 'none'");
  expect(headers["content-security-policy"]).toContain("object-src 'none'");
  expect(headers["x-content-type-options"]).toBe("nosniff");
  expect(headers["referrer-policy"]).toBe("same-origin");
});

test.each([
  ["data", "/api/openapi.json", "application/json"],
  ["a script", "/assets/main-1a2b.js", "*/*"],
])("%s is no page: nothing in it runs, loads or is framed", async (_, address, accept) => {
  const { headers } = await get(address, accept);
  expect(headers["content-security-policy"]).toBe("default-src 'none'; frame-ancestors 'none'");
  expect(headers["x-content-type-options"]).toBe("nosniff");
});
