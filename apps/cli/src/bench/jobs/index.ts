import { setTimeout as pause } from "node:timers/promises";
import { type Client, withDatabase } from "../database.ts";
import { benchRow } from "../row.ts";
import type { BenchOptions, BenchRow } from "../row.ts";
import { withGround } from "../served/ground.ts";
import type { Target } from "../served/load.ts";

const DRAINED = 5_000;
const LETTERS = 60;

/** Appointments that are looked at and found to be nobody's: what a job costs, without what it may lead to. */
const putInLine = `INSERT INTO pgboss.job (name, data)
  SELECT 'appointment', json_build_object('id', gen_random_uuid()) FROM generate_series(1, $1)`;
const left =
  "SELECT count(*)::int AS count FROM pgboss.job WHERE name = 'appointment' AND state < 'completed'";
const waits = `SELECT extract(epoch FROM started_on - created_on)::float8 AS seconds FROM pgboss.job
  WHERE name = 'mail' AND created_on > $1 ORDER BY seconds NULLS LAST`;

async function until(holds: () => Promise<boolean>): Promise<void> {
  const deadline = performance.now() + 120_000;
  while (!(await holds())) {
    if (performance.now() > deadline)
      throw new Error("The workers did not get through their jobs in two minutes.");
    await pause(20);
  }
}

/** Jobs a second, of thousands put in line at once for a service that has nothing else to do. */
async function drained(client: Client): Promise<number> {
  const start = performance.now();
  await client.query(putInLine, [DRAINED]);
  await until(async () => {
    const { rows } = await client.query<{ count: number }>(left);
    return rows[0]?.count === 0;
  });
  return (1000 * DRAINED) / (performance.now() - start);
}

async function invite({ served, cookie }: Target, organization: string, at: number): Promise<void> {
  const answer = await fetch(`${served.address}/api/v1/invitations`, {
    method: "POST",
    headers: {
      cookie,
      "content-type": "application/json",
      origin: new URL(served.address).origin,
      "idempotency-key": crypto.randomUUID(),
    },
    body: JSON.stringify({ email: `guest-${String(at)}@example.com`, organization, role: "member" }),
  });
  if (!answer.ok) throw new Error(`An invitation was refused: ${await answer.text()}`);
}

/** Seconds from putting a letter in line to beginning with it, the longest but one in twenty, of letters that come one by one. */
async function pickedUp(client: Client, service: Target, organization: string): Promise<number> {
  const begun = new Date();
  for (let at = 0; at < LETTERS; at += 1) {
    await invite(service, organization, at);
    await pause(50);
  }
  const read = async () => (await client.query<{ seconds: number | null }>(waits, [begun])).rows;
  await until(async () => {
    const rows = await read();
    return rows.length === LETTERS && rows.every(({ seconds }) => seconds !== null);
  });
  return (await read())[Math.ceil(0.95 * LETTERS) - 1]?.seconds ?? Number.NaN;
}

/** How soon the service begins with what is put in line, and how fast it gets through a queue. */
export const rows = ({ print }: BenchOptions): Promise<BenchRow[]> =>
  withDatabase((client, url) =>
    withGround(client, url, async ({ service, organizations }) => {
      const [organization = ""] = organizations;
      const seconds = await pickedUp(client, service, organization);
      const rate = await drained(client);
      print(
        `${DRAINED} jobs drained at ${rate.toFixed(0)} a second; a letter begun with after ${seconds.toFixed(3)} s (p95)`,
      );
      return [
        benchRow({
          work: "job picked up, seconds, 95th percentile",
          against: "enqueued",
          value: seconds,
          goal: 1,
          better: "lower",
        }),
        benchRow({
          work: "jobs drained",
          against: "one second",
          value: rate,
          goal: 500,
          better: "higher",
        }),
      ];
    }),
  );
