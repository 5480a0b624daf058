import { query } from "../../api/setup/database.ts";

/** How many rows each table has, and what they are, in one word. */
export type Rows = Readonly<Record<string, { readonly count: number; readonly hash: string }>>;

/** What is no part of what anybody does: when somebody was last seen, and what a restart counts anew. */
const beside = ["session", "throttle", "_prisma_migrations"];

const one = (name: string, table: string, of: string) =>
  `SELECT '${name}' AS name, count(*)::int AS count, coalesce(md5(string_agg(md5(${of}), '' ORDER BY md5(${of}))), '') AS hash
   FROM ${table} t`;

/** Everything the database holds, with the jobs in line. */
export async function rowsOf(databaseUrl: string): Promise<Rows> {
  const tables = await query<{ name: string }>(
    databaseUrl,
    "SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' AND tablename <> ALL($1)",
    [beside],
  );
  const jobs = one("job in line", "pgboss.job", "t.name || t.data || t.start_after");
  const rows = await query<{ name: string; count: number; hash: string }>(
    databaseUrl,
    [...tables.map(({ name }) => one(name, `public."${name}"`, "t::text")), jobs].join(" UNION ALL "),
  );
  return Object.fromEntries(rows.map(({ name, count, hash }) => [name, { count, hash }]));
}

/** What came between: rows that were added by table; `0` where rows were changed and none added. */
export const addedTo = (before: Rows, after: Rows): Record<string, number> =>
  Object.fromEntries(
    Object.entries(after).flatMap(([name, { count, hash }]) => {
      const was = before[name];
      return was?.hash === hash ? [] : [[name, count - (was?.count ?? 0)]];
    }),
  );
