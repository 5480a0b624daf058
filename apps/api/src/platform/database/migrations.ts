import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Pool } from "pg";
import { z } from "zod";
import { projectFolder } from "../config/project-folder.ts";
import { openSchemaEngine, type MigrationFolder } from "./schema-engine.ts";

const folder = () => join(projectFolder(), "prisma");

export const readSchema = (): string => readFileSync(join(folder(), "schema.prisma"), "utf8");

/** The migrations in Prisma's own folder format, in order. */
export function readMigrations(): MigrationFolder[] {
  return readdirSync(join(folder(), "migrations"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => ({
      name,
      sql: readFileSync(join(folder(), "migrations", name, "migration.sql"), "utf8"),
    }));
}

/**
 * Prisma's own table of what was applied. The engine finds out that it is missing by a statement that fails, which would end the
 * transaction, so it is made beforehand.
 */
const bookkeeping = `CREATE TABLE IF NOT EXISTS _prisma_migrations (
  id varchar(36) PRIMARY KEY NOT NULL,
  checksum varchar(64) NOT NULL,
  finished_at timestamptz,
  migration_name varchar(255) NOT NULL,
  logs text,
  rolled_back_at timestamptz,
  started_at timestamptz NOT NULL DEFAULT now(),
  applied_steps_count integer NOT NULL DEFAULT 0
)`;

/**
 * Applies every migration that is not applied yet, all in one transaction: stopped in the middle, nothing of it has happened,
 * and it can be run again. Two at once wait for each other.
 *
 * @returns names of the migrations applied now
 */
export async function migrate(
  databaseUrl: string,
  migrations: readonly MigrationFolder[] = readMigrations(),
): Promise<string[]> {
  const pool = new Pool({ connectionString: databaseUrl, max: 1, idleTimeoutMillis: 0 });
  try {
    await pool.query("BEGIN");
    await pool.query("SELECT pg_advisory_xact_lock(hashtext('evenhand migrations'))");
    await pool.query(bookkeeping);
    const engine = await openSchemaEngine(pool, readSchema());
    const applied = await engine.apply(migrations);
    await pool.query("COMMIT");
    return applied;
  } finally {
    await pool.end();
  }
}

const Applied = z.object({ migration_name: z.string() });

/** Names of migrations the database does not have yet; all of them where it is empty. */
export async function missingMigrations(pool: Pick<Pool, "query">): Promise<string[]> {
  const { rowCount } = await pool.query(
    "SELECT 1 WHERE to_regclass('public._prisma_migrations') IS NOT NULL",
  );
  const names = readMigrations().map((each) => each.name);
  if (rowCount === 0) return names;
  const { rows } = await pool.query(
    "SELECT migration_name FROM _prisma_migrations WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL",
  );
  const have = new Set(
    z
      .array(Applied)
      .parse(rows)
      .map((row) => row.migration_name),
  );
  return names.filter((name) => !have.has(name));
}
