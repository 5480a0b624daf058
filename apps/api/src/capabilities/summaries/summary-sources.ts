import type { Moved } from "@evenhand/shared/http/summaries";
import { SummarySource } from "@evenhand/shared/summary";
import type { Transaction } from "../../platform/database/database.ts";
import { readRows, run, sql } from "../../platform/database/rows.ts";
import type { OrderedComparison } from "../comparisons/index.ts";

type Facts = Pick<OrderedComparison, "id" | "hash" | "buyerId" | "statement" | "inspection">;

/**
 * Everything a summary of the comparison is made from, with the version it has now. Read while the comparison is held; the two
 * lines of reports are held with it, so that nothing is sealed between looking and deciding.
 */
export async function readSources(
  tx: Transaction,
  { id, hash, buyerId, statement, inspection }: Facts,
): Promise<SummarySource[]> {
  const lines = [statement.report, inspection.report].toSorted();
  await run(tx, sql`SELECT id FROM report WHERE id = ANY(${lines}::uuid[]) ORDER BY id FOR UPDATE`);
  return readRows(
    tx,
    SummarySource,
    sql`
    SELECT CASE rv.kind WHEN 'statement' THEN 'statement' ELSE 'inspection' END AS what, rv.report_id AS id,
      max(rv.number)::text AS version
    FROM report_version rv WHERE rv.report_id = ANY(${lines}::uuid[]) GROUP BY rv.kind, rv.report_id
    UNION ALL SELECT 'comparison', ${id}::uuid, ${hash}
    UNION ALL SELECT 'release', r.id, r.revision::text FROM release r WHERE r.at_comparison_id = ${id}::uuid
    UNION ALL SELECT 'cost-table', t.organization_id, t.revision::text FROM cost_table t WHERE t.organization_id = ${buyerId}::uuid
    ORDER BY what, id`,
  );
}

const key = ({ what, id }: SummarySource): string => `${what} ${id}`;

/** What has another version now than it had then; `null` on a side where it was not there. */
export function moves(then: readonly SummarySource[], now: readonly SummarySource[]): Moved[] {
  const before = new Map(then.map((source) => [key(source), source]));
  const after = new Map(now.map((source) => [key(source), source]));
  return [...new Map([...before, ...after]).values()]
    .map(({ what, id }) => ({
      what,
      id,
      was: before.get(`${what} ${id}`)?.version ?? null,
      now: after.get(`${what} ${id}`)?.version ?? null,
    }))
    .filter(({ was, now: is }) => was !== is);
}
