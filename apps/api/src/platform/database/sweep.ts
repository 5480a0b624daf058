import type { Database } from "./database.ts";
import { z } from "zod";
import { readRows } from "./rows.ts";

/**
 * What becomes of every table in time. `older` is SQL that holds for rows whose time is over at `$1`; `after` says the same in
 * words. `kept`: why nothing of it is taken away.
 */
export type Growth = { readonly older: string; readonly after: string } | { readonly kept: string };

const days = (count: number): string => `$1::timestamptz - interval '${count} days'`;
const neverAsked = `requested_at IS NULL AND state IN ('expired', 'cancelled') AND created_at < ${days(30)}
  AND NOT EXISTS (SELECT 1 FROM payment_entry p WHERE p.appointment_id = appointment.id)`;
const ofHolds = `appointment_id IN (SELECT id FROM appointment WHERE ${neverAsked})`;

/** Rows taken away in one statement, so that none holds anything for long. */
const atOnce = 5_000;

const work = "the work itself: as many rows as people make";
const evidence = "evidence: never changed, never taken away";

/** Every table there is; a test holds it against the schema, and DEVELOPERS.md shows it. */
export const growths: Readonly<Record<string, Growth>> = {
  session: { older: `least(expires_at, revoked_at) < ${days(30)}`, after: "30 days after its end" },
  api_token: { older: `least(expires_at, revoked_at) < ${days(90)}`, after: "90 days after its end" },
  invitation: {
    older: `least(expires_at, revoked_at, accepted_at) < ${days(90)}`,
    after: "90 days after it was used, revoked or ran out",
  },
  password_reset: { older: `expires_at < ${days(7)}`, after: "7 days after it ran out" },
  throttle: { older: "window_ends < $1::timestamptz", after: "once its window has ended" },
  idempotency: { older: `created_at < ${days(1)}`, after: "after 24 hours" },
  mail: {
    older: `(state = 'sent' AND sent_at < ${days(30)}) OR (state = 'failed' AND created_at < ${days(90)})`,
    after: "30 days after it was sent, 90 days where it failed",
  },
  notice: { older: `coalesce(read_at, created_at) < ${days(730)}`, after: "two years after it was read" },
  deadline_notice: { older: `told_at < ${days(30)}`, after: "30 days after it was told" },
  calendar_feed: { older: `revoked_at < ${days(90)}`, after: "90 days after it was revoked" },
  // A hold nobody asked for goes with its parts, which come first.
  appointment_move: { older: ofHolds, after: "with its hold" },
  appointment_car: { older: ofHolds, after: "with its hold" },
  appointment_bay: { older: ofHolds, after: "with its hold" },
  appointment: { older: neverAsked, after: "30 days, a hold that was never asked for; others are kept" },
  organization: { kept: work },
  account: { kept: work },
  membership: { kept: work },
  vehicle: { kept: work },
  inspection_order: { kept: work },
  buyer_case: { kept: work },
  report: { kept: work },
  report_finding: { kept: work },
  report_operation: { kept: "an operation is done once, ever, however late it is sent again" },
  report_version: { kept: evidence },
  evidence_file: { kept: "swept with what lies in the storage, in evidence/evidence-sweep.ts" },
  evidence: {
    kept: "swept with what lies in the storage, in evidence/evidence-sweep.ts; what is sealed is kept",
  },
  picture_print: { kept: "goes with its file" },
  picture_likeness: { kept: "goes with either of its files" },
  statement_exposure: { kept: evidence },
  comparison: { kept: evidence },
  past_pair: { kept: "one a comparison: what later tables are made of" },
  history_table: { kept: "comparisons name its hash: what they were made with must be found again" },
  release: { kept: evidence },
  settlement_move: { kept: evidence },
  release_picture: {
    older: `sent_at IS NULL AND created_at < ${days(30)}`,
    after: "30 days, one that no move ever named; the others are kept",
  },
  hand_over: { kept: work },
  hand_over_report: { kept: evidence },
  hand_over_move: { kept: evidence },
  hand_over_picture: { kept: "evidence: taken away by whoever sent it, until its report is signed" },
  cost_table: { kept: "one a buyer or firm" },
  cost_table_version: { kept: "what a summary was reckoned with must be found again" },
  transport_rates_version: { kept: "what a landed cost was reckoned with must be found again" },
  case_document_version: { kept: "what stood at a decision must be found again" },
  firm_handbook: { kept: "one a firm" },
  firm_instruments: { kept: "one a firm" },
  sheet_line: { kept: "5,000 a firm at most: those settled longest ago make room" },
  summary: { kept: evidence },
  decision_draft: { kept: "one a summary, gone once it is decided" },
  decision: { kept: evidence },
  demo_load: { kept: "one a demo" },
  inspector_calendar: { kept: work },
  firm_admission: { kept: "one a firm" },
  inspector_interest: { kept: evidence },
  inspector_dealing: { kept: evidence },
  site: { kept: work },
  bay: { kept: work },
  vehicle_place: { kept: "one a car" },
  brief: { kept: "one a car and buyer" },
  booking_terms: { kept: evidence },
  payment_entry: { kept: evidence },
  share_link: { kept: "says how often it was read, also once it is revoked" },
  listing_change: { kept: evidence },
  question: { kept: work },
  complaint: { kept: evidence },
  complaint_opening: { kept: evidence },
  record_chain: { kept: "one an organization" },
  record_entry: { kept: evidence },
  record_root: { kept: evidence },
  seal_receipt: { kept: evidence },
};

/**
 * Takes away what no longer serves anybody, table by table and some rows at a time. Done twice, or by two at once, it does no harm.
 *
 * @param now the hour from which ages are reckoned
 * @returns rows taken away, by table
 */
export async function sweepTables(database: Database, now: Date): Promise<Record<string, number>> {
  const taken: Record<string, number> = {};
  for (const [table, growth] of Object.entries(growths))
    if ("older" in growth) taken[table] = await sweepTable(database, table, growth.older, now);
  return taken;
}

const TakenRow = z.object({ one: z.number() });

async function sweepTable(database: Database, table: string, older: string, now: Date): Promise<number> {
  let taken = 0;
  for (;;) {
    const rows = await readRows(database, TakenRow, {
      text: `DELETE FROM ${table} WHERE ctid IN (
        SELECT ctid FROM ${table} WHERE ${older} LIMIT ${atOnce} FOR UPDATE SKIP LOCKED) RETURNING 1 AS one`,
      values: [now],
    });
    taken += rows.length;
    if (rows.length < atOnce) return taken;
  }
}
