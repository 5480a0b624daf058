import type { Door, Work } from "@evenhand/record/blindness";
import type { Place } from "@evenhand/record/place";
import { z } from "zod";
import type { Database, Transaction } from "../database/database.ts";
import type { NotingPart } from "../database/page.ts";
import { JsonText } from "../http/json-text.ts";
import { BodyRow, findRow, readRows, RevisedBodyRow, type RowSchema, sql } from "../database/rows.ts";

/** Who reads, and when, as the parameters of a statement name them: `$3` and `$4`. */
export type ReaderParameters = { readonly account: string; readonly now: string };

/** For each inspection firm the reader belongs to, else for the account alone. */
const toReaders = (rows: string) => `(${rows}) shown
  LEFT JOIN organization firm ON firm.kind = 'inspector' AND firm.id = ANY($1::uuid[])`;

const linkOf = (door: Door) => (door === "share-link" ? "shown.share_link_id" : "NULL::uuid");

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
    ${linkOf(door)}, ${now}::timestamptz
  FROM ${toReaders(rows)}
  ON CONFLICT DO NOTHING`;

/** Would {@link noteShown} note anything? By the columns of the index that keeps each showing once. */
const isAnyNew = (door: Door, rows: string, account: string): string => `EXISTS (
  SELECT FROM ${toReaders(rows)} WHERE NOT EXISTS (SELECT FROM statement_exposure e
    WHERE e.vehicle_id = shown.vehicle_id AND e.account_id = ${account}::uuid AND e.organization_id IS NOT DISTINCT FROM firm.id
      AND e.version_id IS NOT DISTINCT FROM shown.version_id AND e.item = shown.item AND e.position = shown.position
      AND e.door = '${door}' AND e.share_link_id IS NOT DISTINCT FROM ${linkOf(door)}))`;

/** A statement twice: the one only reads, and says whether it shows anything that is not noted yet; the other notes it. */
export type NotedRead = { readonly reading: string; readonly noting: string };

/**
 * A statement that shows something to somebody signed in: see {@link findNoted}.
 *
 * @param make the statement's text with this part in it
 */
export const notedRead = (
  door: Door,
  rows: string,
  { account, now }: ReaderParameters,
  make: (part: NotingPart) => string,
): NotedRead => ({
  reading: make({
    noted: `SELECT ${isAnyNew(door, rows, account)} AS is_new`,
    column: `(SELECT is_new FROM noted) AS "isNew"`,
  }),
  noting: make({ noted: noteShown(door, rows, { account, now }), column: `false AS "isNew"` }),
});

type NotedQuery = {
  readonly name: string;
  readonly read: NotedRead;
  /** Without `now`, which is the last parameter of the statement that notes. */
  readonly values: readonly unknown[];
  readonly now: Date;
};

/** What statements that note what they show give. */
const NotedRow = z.object({ isNew: z.boolean() });
export const NotedRevisedBodyRow = RevisedBodyRow.extend(NotedRow.shape);
const NotedBodyRow = BodyRow.extend(NotedRow.shape);

/**
 * Finds a row and never gives it before what it shows is noted. Most of what is read was read before, and noted then: that is
 * found by reading alone, over the connections that such reads share; else it is read and noted anew by one statement.
 */
export async function findNoted<S extends RowSchema & z.ZodType<z.output<typeof NotedRow>>>(
  database: Database,
  schema: S,
  { name, read, values, now }: NotedQuery,
): Promise<z.output<S> | null> {
  const row = await findRow(database, schema, { name, text: read.reading, values });
  if (row === null || !row.isNew) return row;
  return findRow(database, schema, { name: `${name}-noted`, text: read.noting, values: [...values, now] });
}

/** A page of what is noted as {@link findNoted} does. */
export async function readNotedPage(database: Database, query: NotedQuery): Promise<JsonText> {
  return new JsonText((await findNoted(database, NotedBodyRow, query))?.body ?? "");
}

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
