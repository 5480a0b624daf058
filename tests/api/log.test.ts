import { spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { build } from "vite";
import { beforeAll, expect, test } from "vitest";
import { cloneDatabase } from "./setup/database.ts";
import { Person } from "./setup/person.ts";
import { emailOf, makePerson, password } from "./setup/world.ts";

const folder = join(import.meta.dirname, "..", "..", "apps", "api");
beforeAll(async () => {
  await build({ root: folder, configFile: join(folder, "vite.config.ts"), logLevel: "error" });
}, 120_000);

/** The bundle under plain Node, as it runs outside tests; gives what it wrote, once it has stopped. */
async function serve(databaseUrl: string, work: (url: string) => Promise<void>) {
  const environment = {
    ...process.env,
    DATABASE_URL: databaseUrl,
    PORT: "0",
    JOBS: "off",
    LOG_LEVEL: "info",
  };
  const child = spawn(process.execPath, [join(folder, "dist", "main.js"), "serve"], { env: environment });
  let written = "";
  child.stdout.on("data", (part: Buffer) => (written += part.toString()));
  child.stderr.on("data", (part: Buffer) => (written += part.toString()));
  while (!/answers at http/.test(written)) await once(child.stdout, "data");
  await work(/answers at (http:\S+)/.exec(written)?.[1] ?? "");
  const started = Date.now();
  child.kill("SIGTERM");
  const [code] = await once(child, "exit");
  return { written, code, stopped: Date.now() - started };
}

test("the log names requests by route and id, and no person, address or secret; told to stop, the service stops", async () => {
  const databaseUrl = await cloneDatabase("logged");
  const { written, code } = await serve(databaseUrl, async (url) => {
    const delia = await makePerson({ url, databaseUrl }, "dealer", "Delia");
    const nobody = new Person(url);
    await delia.does("account.get", { headers: { "x-request-id": "trace-12345678" } });
    await nobody.ask("sessions.create", { body: { email: emailOf("Delia"), password } });
    await nobody.ask("invitations.get", { path: { token: "secret-of-a-link" } });
  });
  const lines = written
    .split("\n")
    .filter((line) => line.startsWith("{"))
    .map((line): Record<string, unknown> => JSON.parse(line));
  expect(lines).toContainEqual(
    expect.objectContaining({
      reqId: "trace-12345678",
      method: "GET",
      route: "/api/v1/account",
      status: 200,
    }),
  );
  expect(lines).toContainEqual(expect.objectContaining({ route: "/api/v1/invitations/:token", status: 410 }));
  expect(written).not.toMatch(/secret-of-a-link|delia|remoteAddress|correct horse/i);
  expect(code).toBe(0);
}, 60_000);
