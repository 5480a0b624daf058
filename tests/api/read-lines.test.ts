import { afterAll, beforeAll, expect, test } from "vitest";
import { z } from "zod";
import { Database } from "../../apps/api/src/platform/database/database.ts";
import { LINES, MOST_ON_A_LINE } from "../../apps/api/src/platform/database/read-lines.ts";
import { findRow, readRows, run, sql } from "../../apps/api/src/platform/database/rows.ts";
import { query, workerDatabase } from "./setup/database.ts";
import { testConfig } from "./setup/service.ts";
import { until } from "./setup/until.ts";

let database: Database;
let url: string;
beforeAll(async () => {
  url = await workerDatabase();
  database = new Database(testConfig(url).database);
});
afterAll(() => database.close());

const Asked = z.object({ server: z.number(), n: z.number() });
const ask = (n: number) =>
  findRow(database, Asked, {
    name: "asked",
    text: "SELECT pg_backend_pid() AS server, 1000 / $1::int AS n",
    values: [n],
  });
const atOnce = (count: number) => Promise.all(Array.from({ length: count }, (_, at) => ask(at + 1)));
const serversOf = (rows: readonly (z.infer<typeof Asked> | null)[]) =>
  new Set(rows.map((row) => row?.server));
/** Connections are opened in the background. */
const untilShared = () => until(async () => serversOf(await atOnce(LINES * MOST_ON_A_LINE)).size === LINES);

test("prepared reads that come at once share a few connections, and each gets its own row", async () => {
  await untilShared();
  const rows = await atOnce(LINES * MOST_ON_A_LINE);
  expect(rows.map((row) => row?.n)).toEqual(rows.map((_, at) => Math.floor(1000 / (at + 1))));
  expect(serversOf(rows).size).toBe(LINES);
});

test("one that fails leaves those before and behind it alone", async () => {
  await untilShared();
  const answers = await Promise.allSettled([4, 0, 5, 0, 8].map((n) => ask(n)));
  expect(answers.map((each) => (each.status === "fulfilled" ? each.value?.n : "failed"))).toEqual([
    250,
    "failed",
    200,
    "failed",
    125,
  ]);
});

const Setting = z.object({ readonly: z.string() });
const setting = "SELECT current_setting('transaction_read_only') AS readonly";

test("what the shared connections are asked can write nothing; what writes is asked on its own", async () => {
  await untilShared();
  expect(await readRows(database, Setting, { name: "only-reads", text: setting })).toEqual([
    { readonly: "on" },
  ]);
  const writes = `WITH noted AS (DELETE FROM throttle WHERE false) ${setting}`;
  expect(await readRows(database, Setting, { name: "writes", text: writes })).toEqual([{ readonly: "off" }]);
});

const LongOne = z.object({ server: z.number(), readonly: z.string(), plans: z.string() });
const askLong = () =>
  readRows(database, LongOne, {
    name: "long",
    text: `SELECT pg_backend_pid() AS server, current_setting('transaction_read_only') AS readonly,
      current_setting('plan_cache_mode') AS plans`,
    isLong: true,
  });

test("what takes long to plan is planned once, on connections where it stands before nothing short", async () => {
  await untilShared();
  await until(async () => (await askLong()).every(({ readonly }) => readonly === "on"));
  const [long] = await askLong();
  expect(long?.plans).toBe("force_generic_plan");
  expect(serversOf(await atOnce(LINES * MOST_ON_A_LINE))).not.toContain(long?.server);
});

test("behind one that waits no more stand than fit on its connection", async () => {
  await untilShared();
  let done = 0;
  const { reads } = await database.transaction(async (tx) => {
    await run(tx, sql`LOCK TABLE throttle IN ACCESS EXCLUSIVE MODE`);
    const locked = readRows(database, z.object({}), { name: "locked", text: "SELECT FROM throttle" });
    const others = Array.from({ length: 5 * MOST_ON_A_LINE }, async (_, at) => {
      await ask(at + 1);
      done += 1;
    });
    await until(() => done > 4 * MOST_ON_A_LINE);
    return { reads: Promise.all([locked, ...others]) };
  });
  await reads;
  expect(done).toBe(5 * MOST_ON_A_LINE);
});

test("where the shared connections break, reads go on", async () => {
  await untilShared();
  const servers = [...serversOf(await atOnce(LINES * MOST_ON_A_LINE))];
  await query(url, "SELECT pg_terminate_backend(unnest($1::int[]))", [servers]);
  await until(() =>
    atOnce(1).then(
      ([row]) => row !== null && !servers.includes(row?.server),
      () => false,
    ),
  );
  expect((await atOnce(20)).map((row) => row?.n)).toEqual(
    Array.from({ length: 20 }, (_, at) => Math.floor(1000 / (at + 1))),
  );
});
