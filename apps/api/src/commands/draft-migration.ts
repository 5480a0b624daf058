import { readFileSync } from "node:fs";
import { Pool } from "pg";
import { readSchema } from "../platform/database/migrations.ts";
import { openSchemaEngine } from "../platform/database/schema-engine.ts";

/**
 * The draft of a migration: SQL from an earlier schema file to the one in the project. Put it into a new folder of
 * `prisma/migrations`, add by hand what the schema language cannot say, and the tests hold the two against each other.
 *
 * @param before the earlier schema, such as what `git show HEAD:prisma/schema.prisma` gives
 */
export async function draftMigration(databaseUrl: string, before: string): Promise<string> {
  const pool = new Pool({ connectionString: databaseUrl, max: 1 });
  try {
    const engine = await openSchemaEngine(pool, readSchema());
    return await engine.between(readFileSync(before, "utf8"), readSchema());
  } finally {
    await pool.end();
  }
}
