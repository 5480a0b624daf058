import { SettlementState } from "@evenhand/shared/settlement";
import { Entry } from "@evenhand/shared/comparison";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { readRows } from "../../platform/database/rows.ts";
import { maySeeRelease } from "./releases.queries.ts";

const Line = z.object({
  id: z.string(),
  revision: z.number(),
  state: SettlementState,
  deadline: z.date().nullable(),
  vehicleId: z.string(),
  buyerId: z.string(),
  dealerId: z.string(),
  inspectorId: z.string(),
  askedAt: z.date().nullable(),
  atComparisonId: z.string(),
  atEntryIndex: z.number(),
  entry: Entry,
});
/** A line being settled, held until the transaction ends. */
export type Line = z.infer<typeof Line>;

const columns = `r.id, r.revision, r.state, r.deadline, r.vehicle_id AS "vehicleId", r.buyer_id AS "buyerId",
  r.dealer_id AS "dealerId", r.inspector_id AS "inspectorId", r.asked_at AS "askedAt",
  r.at_comparison_id AS "atComparisonId", r.at_entry_index AS "atEntryIndex", r.snapshot->'entry' AS entry`;

/** In the order of their ids, so that two never wait in a ring. */
const lock = (tx: Transaction, condition: string, values: unknown[]): Promise<Line[]> =>
  readRows(tx, Line, {
    text: `SELECT ${columns} FROM release r WHERE ${condition} ORDER BY r.id FOR UPDATE OF r`,
    values,
  });

/** Those of the lines that the person may see. */
export const lockSeen = (tx: Transaction, actor: Actor, ids: readonly string[]): Promise<Line[]> =>
  lock(tx, `r.id = ANY($2::uuid[]) AND ${maySeeRelease("r")}`, [actor.organizations(), ids]);

export const lockOne = (tx: Transaction, id: string): Promise<Line[]> => lock(tx, "r.id = $1::uuid", [id]);

/** What of a comparison is past its deadline. */
export const lockDue = (tx: Transaction, comparison: string, now: Date): Promise<Line[]> =>
  lock(tx, "r.at_comparison_id = $1::uuid AND r.deadline <= $2::timestamptz", [comparison, now]);

/** All lines of one buyer and car. */
export const lockOfCase = (tx: Transaction, vehicle: string, buyer: string): Promise<Line[]> =>
  lock(tx, "r.vehicle_id = $1::uuid AND r.buyer_id = $2::uuid", [vehicle, buyer]);
