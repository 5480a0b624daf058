import { Comparison } from "@evenhand/shared/comparison";
import { Report } from "@evenhand/shared/report";
import { mustBeBlind } from "../../platform/access/row-access.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { found } from "../../platform/problems/problem-error.ts";

type VersionFacts = { id: string; report: string; version: number; seal: string };
type Row = {
  id: string;
  vehicleId: string;
  dealerId: string;
  buyerId: string;
  inspectorId: string;
  engine: string;
  hash: string;
  document: Uint8Array;
  aDocument: Uint8Array;
  bDocument: Uint8Array;
  statement: VersionFacts;
  inspection: VersionFacts;
};

/** A comparison with an inspection that the person's organization ordered, and all that it was made from. */
export type OrderedComparison = Omit<Row, "document" | "aDocument" | "bDocument"> & {
  comparison: Comparison;
  a: Report;
  b: Report;
};

const json = (bytes: Uint8Array): unknown => JSON.parse(Buffer.from(bytes).toString("utf8"));
/** The documents were held against their contracts when they were stored and cannot have changed since. */
const readStored = <T>(bytes: Uint8Array, is: (value: unknown) => value is T): T => {
  const value = json(bytes);
  if (!is(value)) throw new Error("A stored document is not what it was stored as.");
  return value;
};
const hasFormat = (value: unknown, format: string): boolean =>
  typeof value === "object" && value !== null && "format" in value && value.format === format;
const isComparison = (value: unknown): value is Comparison => hasFormat(value, "evenhand-comparison");
/** What a comparison's stored bytes say. */
export const readComparison = (document: Uint8Array): Comparison => readStored(document, isComparison);
const isReport = (value: unknown): value is Report => hasFormat(value, "evenhand-report");

/** `$1` organizations, `$2` those of them that buy, `$3` the comparison. Nothing of it to whoever must be blind. */
const orderedToLock = `
  SELECT c.id, c.vehicle_id AS "vehicleId", v.organization_id AS "dealerId", b.buyer_id AS "buyerId",
    b.organization_id AS "inspectorId", c.engine, c.hash, c.document,
    a.document AS "aDocument", b.document AS "bDocument",
    json_build_object('id', a.id, 'report', a.report_id, 'version', a.number, 'seal', a.seal) AS statement,
    json_build_object('id', b.id, 'report', b.report_id, 'version', b.number, 'seal', b.seal) AS inspection
  FROM comparison c JOIN report_version a ON a.id = c.a_id JOIN report_version b ON b.id = c.b_id
    JOIN vehicle v ON v.id = c.vehicle_id
  WHERE c.id = $3::uuid AND a.kind = 'statement' AND b.kind = 'inspection'
    AND b.buyer_id = ANY($2::uuid[]) AND NOT ${mustBeBlind("v.id")} FOR UPDATE OF c`;

/** Held until the transaction ends, so that releases and decisions on it come one after the other. */
export async function lockOrdered(tx: Transaction, actor: Actor, id: string): Promise<OrderedComparison> {
  const [row] = await tx.$queryRawUnsafe<Row[]>(
    orderedToLock,
    actor.organizations(),
    actor.organizations("buyer"),
    id,
  );
  const { document, aDocument, bDocument, ...facts } = found(row, "comparison");
  return {
    ...facts,
    comparison: readComparison(document),
    a: readStored(aDocument, isReport),
    b: readStored(bDocument, isReport),
  };
}
