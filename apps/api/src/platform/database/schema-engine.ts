import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { PrismaPg } from "@prisma/adapter-pg";
import { bindMigrationAwareSqlAdapterFactory } from "@prisma/driver-adapter-utils";
import * as bindings from "@prisma/schema-engine-wasm/schema_engine_bg";
import type { Pool } from "pg";

const noFilters = { externalTables: [], externalEnums: [] };

/** What the module is given. Its time-out on a lock is never cleared and would keep a finished process waiting ten seconds. */
const importsOf = () =>
  Object.fromEntries(
    Object.entries(bindings).map(([name, given]) => [
      name,
      name.startsWith("__wbg_setTimeout") ? unwaitedTimeout : given,
    ]),
  );
const unwaitedTimeout = (callback: () => void, milliseconds: number) =>
  setTimeout(callback, milliseconds).unref();

/**
 * Prisma's schema engine as WebAssembly. The ordinary command downloads a native one; this one comes with the packages.
 * Its package is made for bundlers, so the module is loaded by hand.
 */
let loaded: Promise<void> | undefined;
async function load(): Promise<void> {
  const entry = createRequire(import.meta.url).resolve("@prisma/schema-engine-wasm/schema_engine_bg");
  const bytes = await readFile(join(dirname(entry), "schema_engine_bg.wasm"));
  const { instance } = await WebAssembly.instantiate(bytes, { "./schema_engine_bg.js": importsOf() });
  const { ["__wbg_set_wasm"]: setModule } = bindings;
  setModule(instance.exports);
  const start = instance.exports["__wbindgen_start"];
  if (typeof start !== "function") throw new Error("The schema engine's module has no start function.");
  start();
}

export type MigrationFolder = { name: string; sql: string };

export type SchemaEngine = {
  /** SQL that makes the tables of the schema from nothing. */
  fromEmpty(schema: string): Promise<string>;
  /** SQL that leads from one schema to another: the draft of a migration. */
  between(before: string, after: string): Promise<string>;
  /** Applies what is not applied yet, in order; answers the names. */
  apply(migrations: readonly MigrationFolder[]): Promise<string[]>;
};

const listOf = (migrations: readonly MigrationFolder[]) => ({
  baseDir: "prisma/migrations",
  lockfile: { path: "migration_lock.toml", content: 'provider = "postgresql"\n' },
  shadowDbInitScript: "",
  migrationDirectories: migrations.map((each) => ({
    path: each.name,
    migrationFile: { path: "migration.sql", content: { tag: "ok" as const, value: each.sql } },
  })),
});

const datamodel = (schema: string) => ({
  tag: "schemaDatamodel" as const,
  files: [{ path: "schema.prisma", content: schema }],
});

/** The adapter cuts scripts at every semicolon, also inside functions and comments; the server takes them whole. */
class WholeScripts extends PrismaPg {
  /** What the server said of a script it refused. The engine, in the same transaction, only finds out that nothing works. */
  refusal: unknown;

  override async connect() {
    const connection = await super.connect();
    connection.executeScript = async (script: string) => {
      try {
        await connection.underlyingDriver().query(script);
      } catch (error) {
        this.refusal ??= error;
        throw error;
      }
    };
    return connection;
  }
}

/** @param pool a pool of the database to work on; given one connection, everything happens on it */
export async function openSchemaEngine(pool: Pool, schema: string): Promise<SchemaEngine> {
  loaded ??= load();
  await loaded;
  const scripts = new WholeScripts(pool);
  const adapter = bindMigrationAwareSqlAdapterFactory(scripts);
  const engine = await bindings.SchemaEngine.new(
    { datamodels: [["schema.prisma", schema]] },
    () => {},
    adapter,
  );
  const script = async (from: Parameters<typeof engine.diff>[0]["from"], to: string): Promise<string> => {
    const answer = await engine.diff({
      from,
      to: datamodel(to),
      script: true,
      exitCode: null,
      filters: noFilters,
    });
    if (answer.stdout === null) throw new Error("The schema engine gave no script.");
    return answer.stdout;
  };
  return {
    fromEmpty: (to) => script({ tag: "empty" }, to),
    between: (before, after) => script(datamodel(before), after),
    apply: async (migrations) => {
      try {
        const input = { migrationsList: listOf(migrations), filters: noFilters };
        return (await engine.applyMigrations(input)).appliedMigrationNames;
      } catch (error) {
        throw scripts.refusal ?? error;
      }
    },
  };
}
