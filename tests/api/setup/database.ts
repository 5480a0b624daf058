import { Client, Pool } from "pg";
import { inject } from "vitest";

async function onServer<T>(work: (client: Client) => Promise<T>, url = inject("databaseServer")): Promise<T> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

const urlOf = (name: string): string => {
  const url = new URL(inject("databaseServer"));
  url.pathname = `/${name}`;
  return url.href;
};

/** A fresh database cloned from the migrated template. */
export async function cloneDatabase(name: string, template = "template"): Promise<string> {
  await onServer(async (client) => {
    await client.query(`DROP DATABASE IF EXISTS ${client.escapeIdentifier(name)} WITH (FORCE)`);
    await client.query(
      `CREATE DATABASE ${client.escapeIdentifier(name)} TEMPLATE ${client.escapeIdentifier(template)}`,
    );
  });
  return urlOf(name);
}

/** Which of the run's workers this is. */
export const worker = process.env["VITEST_POOL_ID"] ?? "0";

/** A database of the worker's own, cloned once a file. */
export const workerDatabase = (): Promise<string> => cloneDatabase(`worker_${worker}`);

/**
 * Everything out, between two tests. The tables hold a few rows each: deleting these takes a fiftieth of what it takes
 * to truncate, which makes every table's files anew. As a replica would, so that no trigger keeps what is append-only.
 */
export async function empty(url: string): Promise<void> {
  const rows = await query<{ name: string }>(
    url,
    "SELECT quote_ident(tablename) AS name FROM pg_tables WHERE schemaname = 'public' AND tablename !~ '^_prisma'",
  );
  const deletes = rows.map(({ name }) => `DELETE FROM ${name}`).join("; ");
  await query(url, `SET session_replication_role = replica; ${deletes}; RESET session_replication_role`);
}

const pools = new Map<string, Pool>();

/** Runs SQL on a database, past the service. */
export async function query<R extends object>(
  url: string,
  text: string,
  values: unknown[] = [],
): Promise<R[]> {
  return (await poolOf(url).query<R>(text, values)).rows;
}

function poolOf(url: string): Pool {
  const kept = pools.get(url);
  if (kept !== undefined) return kept;
  const pool = new Pool({ connectionString: url, max: 4, allowExitOnIdle: true });
  // Where a test kills the database, what was connected and idle has been put away by the pool when this is told.
  pool.on("error", () => {});
  pools.set(url, pool);
  return pool;
}

/** Lets go of every database a test file asked: the next file's takes the same name. */
export async function closePools(): Promise<void> {
  const open = [...pools.values()];
  pools.clear();
  await Promise.all(open.map((pool) => pool.end()));
}
