import { carriedHeader } from "@evenhand/record/carried-header";
import { StoredHeader } from "@evenhand/shared/http/reports";
import { z } from "zod";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, run, sql } from "../../platform/database/rows.ts";
import { toJson } from "../../platform/database/to-json.ts";

const Earlier = z.object({ id: z.string(), header: StoredHeader });
const Begun = z.object({ header: StoredHeader });

/** Of a visit to look again: whose, of which car. */
export type LookedAt = { readonly vehicleId: string; readonly buyerId: string; readonly inspectorId: string };

/**
 * A visit agreed on to look at some places again goes on from the firm's newest sealed report for this buyer: all its findings stand
 * in the new draft but those of the places in dispute, which are found anew. Where nothing is looked at again, nothing is done.
 *
 * @param draft the report that was just begun
 */
export async function carryFindings(tx: Transaction, order: LookedAt, draft: string): Promise<void> {
  const { vehicleId, buyerId, inspectorId } = order;
  const earlier = await findRow(
    tx,
    Earlier,
    sql`
    SELECT r.id, r.header FROM report r JOIN report_version v ON v.report_id = r.id
    WHERE v.vehicle_id = ${vehicleId}::uuid AND v.buyer_id = ${buyerId}::uuid AND v.kind = 'inspection'
      AND v.organization_id = ${inspectorId}::uuid AND NOT r.drafting AND EXISTS (
        SELECT 1 FROM release l WHERE l.vehicle_id = v.vehicle_id AND l.buyer_id = v.buyer_id AND l.state = 'looking-again')
    ORDER BY v.sealed_at DESC, v.number DESC LIMIT 1`,
  );
  if (earlier === null) return;
  await run(
    tx,
    sql`
    INSERT INTO report_finding (report_id, item, position, revision, body, first_committed_at, updated_by, updated_at)
    SELECT ${draft}::uuid, f.item, f.position, 1, f.body, f.first_committed_at, f.updated_by, f.updated_at
    FROM report_finding f WHERE f.report_id = ${earlier.id}::uuid AND f.body IS NOT NULL AND NOT EXISTS (
      SELECT 1 FROM release l WHERE l.vehicle_id = ${vehicleId}::uuid AND l.buyer_id = ${buyerId}::uuid
        AND l.state = 'looking-again' AND l.snapshot->'entry'->>'item' = f.item
        AND coalesce(l.snapshot->'entry'->>'position', '') = f.position)`,
  );
  const begun = await findRow(tx, Begun, sql`SELECT header FROM report WHERE id = ${draft}::uuid`);
  if (begun === null) return;
  const header = toJson({ ...begun.header, ...carriedHeader(earlier.header, begun.header) });
  await tx.report.update({ where: { id: draft }, data: { header }, select: { id: true } });
}
