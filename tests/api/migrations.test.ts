import { Pool } from "pg";
import { inject, expect, test } from "vitest";
import {
  migrate,
  missingMigrations,
  readMigrations,
  readSchema,
} from "../../apps/api/src/platform/database/migrations.ts";
import { openSchemaEngine } from "../../apps/api/src/platform/database/schema-engine.ts";
import { cloneDatabase, query } from "./setup/database.ts";

/** What stands in the catalogs of a database, a line each, without the names PostgreSQL makes up. */
async function catalog(url: string): Promise<string[]> {
  const rows = await query<{ line: string }>(
    url,
    `SELECT format('column %s.%s %s %s default %s', c.table_name, c.column_name, c.udt_name || coalesce('(' ||
        coalesce(c.character_maximum_length, c.datetime_precision)::text || ')', ''), c.is_nullable, c.column_default) AS line
      FROM information_schema.columns c WHERE c.table_schema = 'public'
     UNION ALL SELECT format('constraint %s %s %s', c.conrelid::regclass, c.conname, pg_get_constraintdef(c.oid))
      FROM pg_constraint c WHERE c.connamespace = 'public'::regnamespace AND c.contype <> 'n'
     UNION ALL SELECT format('index %s', indexdef) FROM pg_indexes WHERE schemaname = 'public'
     UNION ALL SELECT format('enum %s %s', t.typname, string_agg(e.enumlabel, ',' ORDER BY e.enumsortorder))
      FROM pg_type t JOIN pg_enum e ON e.enumtypid = t.oid GROUP BY t.typname
     UNION ALL SELECT format('trigger %s', pg_get_triggerdef(oid)) FROM pg_trigger WHERE NOT tgisinternal
     UNION ALL SELECT format('function %s', p.oid::regprocedure) FROM pg_proc p
      LEFT JOIN pg_depend d ON d.objid = p.oid AND d.deptype = 'e'
      WHERE p.pronamespace = 'public'::regnamespace AND d.objid IS NULL`,
  );
  return rows
    .map(({ line }) => line)
    .filter((line) => !line.includes("_prisma_migrations"))
    .toSorted();
}

/** What the schema language cannot say, so that only the migrations can: checks, exclusions, partial and special indexes, code. */
const beyondTheSchema =
  /^(constraint \S+ \S+ (CHECK|EXCLUDE)|index .*( WHERE |USING (gin|gist)|NULLS NOT DISTINCT)|trigger|function)/;

async function empty(name: string): Promise<string> {
  return cloneDatabase(name, "template0");
}

test("the migrations and schema.prisma make the same tables", async () => {
  const [migrated, pushed] = [await empty("by_migrations"), await empty("by_schema")];
  await migrate(migrated);
  const pool = new Pool({ connectionString: pushed, max: 1 });
  const engine = await openSchemaEngine(pool, readSchema());
  await pool.query(await engine.fromEmpty(readSchema()));
  await pool.end();
  const [from, to] = [await catalog(migrated), await catalog(pushed)];
  expect(to.length).toBeGreaterThan(200);
  expect(from.filter((line) => !beyondTheSchema.test(line) && !to.includes(line))).toEqual([]);
  expect(to.filter((line) => !from.includes(line))).toEqual([]);
});

test("what the migrations add by hand is there", async () => {
  const url = await empty("by_hand");
  await migrate(url);
  const added = (await catalog(url)).filter((line) => beyondTheSchema.test(line)).join("\n");
  for (const name of [
    "vehicle_listed",
    "vehicle_search",
    "report_one_line",
    "report_unsealed",
    "inspection_order_live",
    "inspection_order_accepted_whole",
    "report_order_kind",
    "report_version_sealed",
    "comparison_sealed",
    "release_state_known",
    "release_upheld",
    "settlement_move_kept",
    "evidence_once",
    "evidence_state_known",
    "evidence_received_within",
    "evidence_refused_why",
    "evidence_sealed_stays",
    "evidence_file_state_known",
    "evidence_file_refused_why",
    "evidence_file_hash",
    "summary_sealed",
    "hand_over_live",
    "hand_over_report_sealed",
    "account_news_mail_known",
    "notice_mailing_known",
    "notice_waiting",
    "notice_unread",
  ])
    expect(added).toContain(name);
});

test("the schema engine drafts the step from one schema to another", async () => {
  const pool = new Pool({ connectionString: inject("databaseServer"), max: 1 });
  const engine = await openSchemaEngine(pool, readSchema());
  const later = readSchema().replace("model Mail {", "model Mail {\n  urgent Boolean @default(false)");
  expect(await engine.between(readSchema(), later)).toContain(
    'ADD COLUMN     "urgent" BOOLEAN NOT NULL DEFAULT false',
  );
  expect(await engine.between(readSchema(), readSchema())).toBe("-- This is an empty migration.\n");
  await pool.end();
});

test("migrating again does nothing, and two at once do it once", async () => {
  const url = await empty("twice");
  const applied = await Promise.all([migrate(url), migrate(url)]);
  expect(applied.flat()).toEqual(readMigrations().map(({ name }) => name));
  expect(await migrate(url)).toEqual([]);
});

test("a migration that fails leaves nothing behind, says why, and the next run completes", async () => {
  const url = await empty("broken");
  const broken = { name: "20991231000000_broken", sql: "CREATE TABLE half (id int);\nSELECT 1/0;" };
  await expect(migrate(url, [...readMigrations(), broken])).rejects.toThrow("division by zero");
  expect(await catalog(url)).toEqual([]);
  const pool = new Pool({ connectionString: url, max: 1 });
  expect(await missingMigrations(pool)).toEqual(readMigrations().map(({ name }) => name));
  await migrate(url);
  expect(await missingMigrations(pool)).toEqual([]);
  await pool.end();
});

test("a migration on a filled database keeps what is there", async () => {
  const url = await cloneDatabase("filled");
  await query(
    url,
    "INSERT INTO organization VALUES (gen_random_uuid(), 'Hollin', 'dealer', null, 'UTC', now())",
  );
  const more = {
    name: "20991231000000_more",
    sql: "ALTER TABLE organization ADD COLUMN more int NOT NULL DEFAULT 1;",
  };
  expect(await migrate(url, [...readMigrations(), more])).toEqual([more.name]);
  expect(await query(url, "SELECT name, more FROM organization")).toEqual([{ name: "Hollin", more: 1 }]);
});

const at = (hour: number): Date => new Date(`2026-05-04T${hour}:00:00Z`);
const id = (last: number): string => `018f0000-0000-7000-8000-00000000000${last}`;

test("what was noted as shown before places were noted is read place by place afterwards, none of it lost", async () => {
  const url = await empty("exposed");
  const before = readMigrations().filter(({ name }) => name < "20261127000000_exposure_by_place");
  await migrate(url, before);
  const [car, firm, other, version, account, report, order] = [1, 2, 3, 4, 5, 6, 0].map(id);
  const shown = (nth: number, who: string | undefined, whole: boolean, hour: number): string =>
    `('${id(nth)}', '${who}', '${car}', '${version}', '${account}', ${whole}, '2026-05-04T${hour}:00:00Z')`;
  // Only what the migration reads: what these rows refer to is left out.
  await query(
    url,
    `SET session_replication_role = replica;
     INSERT INTO report VALUES ('${report}', '${car}', '${firm}', '${order}', 'inspection', 1, true, '{}', '${account}', now(), now());
     INSERT INTO report_finding VALUES
       ('${report}', 'electrics.horn', '', 1, '{}', '2026-05-04T10:30:00Z', '${account}', now()),
       ('${report}', 'wheels.tread-depth', 'left-front', 1, '{}', '2026-05-04T12:30:00Z', '${account}', now());
     INSERT INTO statement_exposure VALUES
       ${[shown(7, firm, false, 11), shown(8, firm, false, 13), shown(9, other, true, 10)].join(", ")};
     RESET session_replication_role`,
  );
  await migrate(url);
  const rows = await query(
    url,
    `SELECT organization_id AS "to", item, position, door, shown_at FROM statement_exposure ORDER BY shown_at`,
  );
  expect(rows).toEqual([
    { to: other, item: "", position: "", door: "statement", shown_at: at(10) },
    { to: firm, item: "electrics.horn", position: "", door: "statement", shown_at: at(11) },
    { to: firm, item: "wheels.tread-depth", position: "left-front", door: "statement", shown_at: at(13) },
  ]);
});

test("what buyers had begun before there were cases is a case since its first part", async () => {
  const url = await empty("cased");
  await migrate(
    url,
    readMigrations().filter(({ name }) => name < "20261127070000_case"),
  );
  const [car, dealer, buyer, other, order, question, account] = [1, 2, 3, 4, 5, 6, 7].map(id);
  await query(
    url,
    `SET session_replication_role = replica;
     INSERT INTO vehicle (id, organization_id, make, model, model_year, identification, document, listed, revision, search,
       created_at, updated_at) VALUES ('${car}', '${dealer}', 'Uthwick', 'Alder', 1958, 'A', '{}', true, 1, 'a', now(), now());
     INSERT INTO inspection_order (id, vehicle_id, buyer_id, inspector_id, statement_id, state, revision, ordered_by, ordered_at)
       VALUES ('${order}', '${car}', '${buyer}', '${other}', '${order}', 'ordered', 1, '${account}', '2026-05-04T13:00:00Z');
     INSERT INTO question (id, vehicle_id, buyer_id, dealer_id, item, position, text, state, revision, created_by, created_at)
       VALUES ('${question}', '${car}', '${buyer}', '${dealer}', 'electrics.horn', '', 'Does it?', 'drafted', 1, '${account}',
         '2026-05-04T11:00:00Z');
     INSERT INTO brief (vehicle_id, buyer_id, depth, items, revision, updated_by, updated_at) VALUES ('${car}', '${other}', 'half-day', '{}', 1, '${account}', '2026-05-04T12:00:00Z');
     RESET session_replication_role`,
  );
  await migrate(url);
  const rows = await query<{ id: string }>(
    url,
    "SELECT id, buyer_id AS buyer, dealer_id AS dealer, opened_at AS since FROM buyer_case ORDER BY id",
  );
  expect(rows).toMatchObject([
    { buyer, dealer, since: at(11) },
    { buyer: other, dealer, since: at(12) },
  ]);
  for (const row of rows) expect(row.id).toMatch(/^019df[0-9a-f]{3}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab]/);
});

test("what a dealer had answered stays so, is the beginning of a thread, and has no deadline", async () => {
  const url = await empty("settled");
  await migrate(
    url,
    readMigrations().filter(({ name }) => name < "20261128030000_settlement"),
  );
  const [comparison, statement, inspection, firm, account] = [1, 2, 3, 4, 5].map(id);
  const answered = (nth: number, state: string): string =>
    `('${id(nth)}', '${comparison}', ${nth}, '${firm}', '${firm}', '${firm}', '{}', '${state}', 'So it is.', 2, '${account}',
      '2026-05-04T10:00:00Z', '${account}', '2026-05-04T11:00:00Z')`;
  await query(
    url,
    `SET session_replication_role = replica;
     INSERT INTO report_version (id, report_id, vehicle_id, organization_id, kind, number, seal, document, sealed_by, sealed_at)
       VALUES ('${inspection}', '${firm}', '${firm}', '${firm}', 'inspection', 1, repeat('a', 64), '', '${account}', now());
     INSERT INTO comparison (id, vehicle_id, a_id, b_id, engine, hash, document, created_at)
       VALUES ('${comparison}', '${firm}', '${statement}', '${inspection}', 'one', repeat('a', 64), '', now());
     INSERT INTO release (id, comparison_id, entry_index, vehicle_id, buyer_id, dealer_id, snapshot, state, reason, revision,
       released_by, released_at, answered_by, answered_at)
       VALUES ${answered(6, "accepted")}, ${answered(7, "contested")};
     RESET session_replication_role`,
  );
  await migrate(url);
  const rows = await query(
    url,
    `SELECT r.state, r.at_entry_index AS at, r.inspector_id AS firm, r.deadline, r.upheld_at AS since, m.move, m.words
     FROM release r JOIN settlement_move m ON m.release_id = r.id ORDER BY r.id`,
  );
  const words = "So it is.";
  expect(rows).toEqual([
    { state: "accepted", at: 6, firm, deadline: null, since: at(11), move: "accept", words },
    { state: "contested", at: 7, firm, deadline: null, since: null, move: "contest", words },
  ]);
});

test("the bookkeeping is Prisma's own", async () => {
  const url = await cloneDatabase("bookkeeping");
  const [row] = await query<{ migration_name: string; checksum: string; applied_steps_count: number }>(
    url,
    "SELECT * FROM _prisma_migrations WHERE finished_at IS NOT NULL ORDER BY migration_name LIMIT 1",
  );
  expect(row).toMatchObject({ migration_name: readMigrations()[0]?.name, applied_steps_count: 1 });
  expect(row?.checksum).toMatch(/^[0-9a-f]{64}$/);
});
