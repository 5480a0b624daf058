import { readFileSync } from "node:fs";
import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { Database } from "../../apps/api/src/platform/database/database.ts";
import { growths, sweepTables } from "../../apps/api/src/platform/database/sweep.ts";
import {
  type BookingWorld,
  confirm,
  hold,
  makeBookingWorld,
  monday,
  newClock,
} from "./setup/booking-story.ts";
import { query } from "./setup/database.ts";
import { useService } from "./setup/service.ts";
import { publish } from "./setup/story.ts";

const root = new URL("../../", import.meta.url);
const service = useService({ clock: newClock(), emptyBetween: false });
let world: BookingWorld;
beforeAll(async () => {
  world = await makeBookingWorld(service());
});
const sql = <R extends object>(text: string, values: unknown[] = []) =>
  query<R>(service().databaseUrl, text, values);

test("every table of the schema is either swept or kept for a reason, and the developers' page says which", () => {
  const schema = readFileSync(new URL("prisma/schema.prisma", root), "utf8");
  const tables = [...schema.matchAll(/^model[^}]*@@map\("(\w+)"\)/gm)].map(([, name]) => name ?? "");
  expect(tables.length).toBeGreaterThan(30);
  expect(Object.keys(growths).toSorted()).toEqual(tables.toSorted());
  const page = readFileSync(new URL("DEVELOPERS.md", root), "utf8");
  const swept = Object.entries(growths).flatMap(([table, growth]) =>
    "after" in growth ? [{ table, after: growth.after }] : [],
  );
  const said = ({ table, after }: (typeof swept)[number]) =>
    new RegExp(`\\| \`${table}\` +\\| ${after} +\\|`).test(page);
  expect(swept.filter((one) => !said(one))).toEqual([]);
});

const old = "'2027-05-03T14:00:00Z'::timestamptz - interval '3 years'";
const young = "'2027-05-03T14:00:00Z'::timestamptz - interval '1 hour'";
/** One row that is over for long, and one that is not. */
const rows: Readonly<Record<string, (at: string) => string>> = {
  session: (
    at,
  ) => `INSERT INTO session (id, account_id, token_hash, device, created_at, last_seen_at, expires_at)
    VALUES (gen_random_uuid(), $1, gen_random_uuid()::text::bytea, 'x', ${at}, ${at}, ${at} + interval '30 minutes')`,
  api_token: (
    at,
  ) => `INSERT INTO api_token (id, account_id, name, token_hash, scopes, created_at, expires_at, revoked_at)
    VALUES (gen_random_uuid(), $1, 'x', gen_random_uuid()::text::bytea, '{}', ${at}, '2030-01-01', ${at})`,
  invitation: (
    at,
  ) => `INSERT INTO invitation (id, organization_id, email, role, token_hash, invited_by, created_at, expires_at)
    SELECT gen_random_uuid(), organization_id, 'x', 'member', gen_random_uuid()::text::bytea, $1::uuid, ${at}, ${at}
    FROM membership WHERE account_id = $1`,
  password_reset: (at) => `INSERT INTO password_reset (id, email, account_id, created_at, expires_at)
    VALUES (gen_random_uuid(), 'x', $1, ${at}, ${at})`,
  throttle: (at) =>
    `INSERT INTO throttle SELECT gen_random_uuid()::text::bytea, 1, ${at} + interval '2 hours' FROM account WHERE id = $1`,
  idempotency: (
    at,
  ) => `INSERT INTO idempotency (account_id, route, key, request_hash, organizations, body, created_at)
    VALUES ($1, 'x', gen_random_uuid()::text, '', '{}', '', ${at})`,
  mail: (at) => `INSERT INTO mail (id, recipient, subject, state, attempts, created_at, sent_at)
    SELECT gen_random_uuid(), 'x', 'x', 'sent', 1, ${at}, ${at} FROM account WHERE id = $1`,
  notice: (at) => `INSERT INTO notice (id, account_id, kind, subject, vehicle_id, created_at, read_at)
    VALUES (gen_random_uuid(), $1, 'inspection-sealed', gen_random_uuid(), gen_random_uuid(), ${at}, ${at})`,
  calendar_feed: (
    at,
  ) => `INSERT INTO calendar_feed (id, account_id, organization_id, name, token_hash, created_at, revoked_at)
    VALUES (gen_random_uuid(), $1, gen_random_uuid(), 'x', gen_random_uuid()::text::bytea, ${at}, ${at})`,
};

const sweep = async () => {
  const database = new Database({
    url: service().databaseUrl,
    pool: 2,
    connectionTimeout: 5_000,
    statementTimeout: 15_000,
  });
  try {
    return await sweepTables(database, monday);
  } finally {
    await database.close();
  }
};
const countOf = async (table: string): Promise<number> =>
  Number((await sql<{ count: string }>(`SELECT count(*) FROM ${table}`))[0]?.count);

test.each(Object.entries(rows))(
  "of %s what is long over goes, and what is not stays",
  async (table, insert) => {
    await sql(`DELETE FROM ${table} WHERE ${table === "session" ? "device = 'x'" : "true"}`);
    const before = await countOf(table);
    await sql(insert(old), [world.buyer.account]);
    await sql(insert(young), [world.buyer.account]);
    expect((await sweep())[table]).toBe(1);
    expect(await countOf(table)).toBe(before + 1);
  },
);

test("mail that waits is never taken away, however old", async () => {
  await sql(
    `INSERT INTO mail (id, recipient, subject, body, state, attempts, created_at) VALUES ($1, 'x', 'x', 'x', 'waiting', 9, ${old})`,
    [v7()],
  );
  await sweep();
  expect(await sql("SELECT 1 FROM mail WHERE state = 'waiting' AND attempts = 9")).toHaveLength(1);
});

test("a hold that ran out unasked goes with its history; whatever was asked for stays, and no history is rewritten", async () => {
  const unasked = await hold(world.buyer, world.vehicle);
  await sql(
    "UPDATE appointment SET state = 'expired', deadline = NULL, created_at = now() - interval '9 years' WHERE id = $1",
    [unasked],
  );
  const { vehicle } = await publish(world.dealer);
  const asked = await confirm(service(), { ...world, vehicle });
  await sql(
    "UPDATE appointment SET state = 'cancelled', created_at = now() - interval '9 years' WHERE id = $1",
    [asked],
  );
  const change = sql("DELETE FROM appointment_move WHERE appointment_id = $1", [asked]);
  await expect(change).rejects.toThrow(/never changed/);
  await expect(
    sql("UPDATE appointment_move SET note = 'x' WHERE appointment_id = $1", [unasked]),
  ).rejects.toThrow(/never changed/);
  await sweep();
  expect(await sql("SELECT id FROM appointment")).toEqual([{ id: asked }]);
  expect(await sql("SELECT 1 FROM appointment_move WHERE appointment_id = $1", [unasked])).toEqual([]);
  expect(await countOf("appointment_move")).toBeGreaterThan(0);
});
