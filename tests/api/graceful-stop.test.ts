import { Client } from "pg";
import { afterAll, beforeAll, expect, test } from "vitest";
import { query, workerDatabase } from "./setup/database.ts";
import type { Person } from "./setup/person.ts";
import { type PlainProcess, startProcess } from "./setup/plain-process.ts";
import { makePerson } from "./setup/world.ts";

/** Changes that are being made while the service is told to stop: they need the database, and put letters in line. */
const changes = 6;

let databaseUrl: string;
let service: PlainProcess;
let url = "";
let people: Person[];
let blocker: Client | undefined;

beforeAll(async () => {
  databaseUrl = await workerDatabase();
  service = startProcess(["node", "apps/api/dist/main.js", "serve"], {
    DATABASE_URL: databaseUrl,
    PORT: "0",
    JOBS: "on",
    MAIL: "file",
    LOG_LEVEL: "warn",
    STATEMENT_TIMEOUT_MS: "60000",
    STOP_DELAY_MS: "500",
  });
  [, url = ""] = await service.says(/answers at (\S+)/);
  url = url.replace("[::1]", "127.0.0.1");
  const names = Array.from({ length: changes }, (_, i) => `Delia ${String(i)}`);
  people = await Promise.all(names.map((name) => makePerson({ url, databaseUrl }, "dealer", name)));
});
afterAll(async () => {
  await blocker?.end();
  await service.stop("SIGKILL");
});

/** Nobody writes a letter until it is released. */
async function holdUpLetters(): Promise<() => Promise<void>> {
  const client = new Client({ connectionString: databaseUrl });
  blocker = client;
  await client.connect();
  await client.query("BEGIN; LOCK TABLE mail IN SHARE MODE");
  return async () => {
    await client.query("COMMIT");
  };
}

const waitingForLetters = async (): Promise<number> =>
  (await query(databaseUrl, "SELECT 1 FROM pg_locks WHERE relation = 'mail'::regclass AND NOT granted"))
    .length;

/** What everybody is answered who asks as long as the service says that it is ready. */
async function askWhileReady(person: Person): Promise<{ asked: number[]; notReady: string }> {
  const asked: number[] = [];
  for (;;) {
    const ready = await fetch(`${url}/ready`);
    if (ready.status === 503) return { asked, notReady: await ready.text() };
    asked.push(
      ...(await Promise.all([1, 2, 3, 4].map(async () => (await person.ask("account.get")).status))),
    );
  }
}

async function takesNothingNew(): Promise<boolean> {
  try {
    await fetch(`${url}/health`);
    return false;
  } catch (error) {
    return error instanceof TypeError && String(error.cause).includes("ECONNREFUSED");
  }
}

test("told to stop, it says so first, and finishes every request that it has: none fails", async () => {
  const release = await holdUpLetters();
  const changing = Promise.all(
    people.map((person) => {
      const body = { email: "guest@example.com", organization: person.organization, role: "member" };
      return person.ask("invitations.create", { body });
    }),
  );
  await expect.poll(waitingForLetters, { timeout: 30_000 }).toBe(changes);

  const [person] = people;
  if (person === undefined) throw new Error("nobody is signed in");
  const asking = askWhileReady(person);
  const ended = service.stop("SIGTERM");
  const { asked, notReady } = await asking;
  expect(notReady).toContain("it is being stopped");
  expect(asked.filter((status) => status !== 200)).toEqual([]);
  // It is still there for who has not noticed.
  expect((await person.ask("account.get")).status).toBe(200);

  await expect.poll(takesNothingNew, { timeout: 30_000, interval: 50 }).toBe(true);
  await release();
  const answers = await changing;
  expect(answers.map(({ status }) => status)).toEqual(answers.map(() => 201));
  await ended;
  expect(await service.ended).toBe(0);
  const inLine = "SELECT 1 FROM mail m JOIN pgboss.job j ON j.data ->> 'id' = m.id::text";
  expect(await query(databaseUrl, inLine)).toHaveLength(changes);
});
