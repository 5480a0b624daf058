import type { Door, Work } from "@evenhand/record/blindness";
import type { Place } from "@evenhand/record/place";
import { z } from "zod";
import type { Transaction } from "../database/database.ts";
import { readRows, sql } from "../database/rows.ts";

/** Who reads, and when, as the parameters of a statement name them: `$3` and `$4`. */
export type ReaderParameters = { readonly account: string; readonly now: string };

/**
 * Notes what a statement shows, as a part of that very statement, so that nothing can be shown and not be noted: once for each
 * inspection firm the reader belongs to, else for the account alone. `$1` is `Actor.organizations()`, as everywhere.
 *
 * @param rows gives `vehicle_id`, `version_id`, `item` and `position` of each place shown; an empty item is every place
 */
export const noteShown = (door: Door, rows: string, { account, now }: ReaderParameters): string => `
  INSERT INTO statement_exposure
    (vehicle_id, organization_id, account_id, version_id, item, position, door, share_link_id, shown_at)
  SELECT shown.vehicle_id, firm.id, ${account}::uuid, shown.version_id, shown.item, shown.position, '${door}',
    ${door === "share-link" ? "shown.share_link_id" : "NULL::uuid"}, ${now}::timestamptz
  FROM (${rows}) shown
  LEFT JOIN organization firm ON firm.kind = 'inspector' AND firm.id = ANY($1::uuid[])
  ON CONFLICT DO NOTHING`;

const PlaceRow = z.object({ item: z.string(), position: z.string() });
const WorkRow = z.object({
  state: z.string(),
  committed: z.array(PlaceRow.extend({ answer: z.unknown() })),
});

/**
 * Every place of the car's statements that was shown to an inspection firm so far, by whichever door: to somebody who belonged
 * to it then, or who belongs to it now.
 */
export async function readShown(tx: Transaction, firm: string, vehicle: string): Promise<Place[]> {
  return readRows(
    tx,
    PlaceRow,
    sql`
    SELECT DISTINCT e.item, e.position FROM statement_exposure e
    WHERE e.vehicle_id = ${vehicle}::uuid AND (e.organization_id = ${firm}::uuid OR e.account_id IN (
      SELECT m.account_id FROM membership m WHERE m.organization_id = ${firm}::uuid))`,
  );
}

/** Every order on the car of the inspection firms among these organizations, with what is committed in its report. */
export async function readWorks(tx: Transaction, organizations: string[], vehicle: string): Promise<Work[]> {
  return readRows(
    tx,
    WorkRow,
    sql`
    SELECT o.state::text AS state, coalesce((
      SELECT jsonb_agg(jsonb_build_object('item', f.item, 'position', f.position, 'answer', f.body->'answer'))
      FROM report r JOIN report_finding f ON f.report_id = r.id
      WHERE r.order_id = o.id AND f.body IS NOT NULL), '[]') AS committed
    FROM inspection_order o
    WHERE o.vehicle_id = ${vehicle}::uuid AND o.inspector_id = ANY(${organizations}::uuid[])`,
  );
}
