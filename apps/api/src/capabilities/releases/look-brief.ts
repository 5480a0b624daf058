import type { Transaction } from "../../platform/database/database.ts";
import { run, sql } from "../../platform/database/rows.ts";
import type { Line } from "./settlement-rows.ts";

/** The buyer's brief becomes that of a short visit: the shallowest depth, and the items that are looked at again. */
export async function briefLooks(
  tx: Transaction,
  lines: readonly Line[],
  account: string,
  at: Date,
): Promise<void> {
  const [first] = lines;
  if (first === undefined) return;
  const { vehicleId, buyerId } = first;
  await run(tx, sql`SELECT pg_advisory_xact_lock(hashtextextended(${`brief ${vehicleId} ${buyerId}`}, 0))`);
  await run(
    tx,
    sql`
    INSERT INTO brief (vehicle_id, buyer_id, depth, items, revision, updated_by, updated_at)
    VALUES (${vehicleId}::uuid, ${buyerId}::uuid, 'first-look', (
      SELECT array_agg(DISTINCT r.snapshot->'entry'->>'item') FROM release r WHERE r.vehicle_id = ${vehicleId}::uuid
        AND r.buyer_id = ${buyerId}::uuid AND r.state = 'looking-again'), 1, ${account}::uuid, ${at})
    ON CONFLICT (vehicle_id, buyer_id) DO UPDATE SET depth = excluded.depth, items = excluded.items,
      revision = brief.revision + 1, updated_by = excluded.updated_by, updated_at = excluded.updated_at`,
  );
}
