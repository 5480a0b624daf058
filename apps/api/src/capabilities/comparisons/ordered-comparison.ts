import type { Comparison } from "@evenhand/shared/comparison";
import type { Answer } from "@evenhand/shared/page-one";
import type { Report } from "@evenhand/shared/report";
import { z } from "zod";
import { mustBeBlind } from "../../platform/access/row-access.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Statement, Transaction } from "../../platform/database/database.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import { storedAnswer, storedComparison, storedReport } from "../../platform/database/stored-documents.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { answerOf } from "./analysis.ts";

const Bytes = z.instanceof(Uint8Array);
const VersionFacts = z.object({ id: z.string(), report: z.string(), version: z.number(), seal: z.string() });
const Row = z.object({
  id: z.string(),
  vehicleId: z.string(),
  dealerId: z.string(),
  buyerId: z.string(),
  inspectorId: z.string(),
  engine: z.string(),
  hash: z.string(),
  document: Bytes,
  answer: Bytes.nullable(),
  aDocument: Bytes,
  bDocument: Bytes,
  statement: VersionFacts,
  inspection: VersionFacts,
});
type Row = z.infer<typeof Row>;

/** A comparison with an inspection that the person's organization ordered, and all that it was made from. */
export type OrderedComparison = Omit<Row, "document" | "answer" | "aDocument" | "bDocument"> & {
  comparison: Comparison;
  answer: Answer;
  a: Report;
  b: Report;
};

type Made = Pick<OrderedComparison, "comparison" | "a" | "b">;

const sides = `FROM comparison c JOIN report_version a ON a.id = c.a_id JOIN report_version b ON b.id = c.b_id
    JOIN vehicle v ON v.id = c.vehicle_id
  WHERE a.kind = 'statement' AND b.kind = 'inspection' AND b.buyer_id IS NOT NULL`;

const whole = `
  SELECT c.id, c.vehicle_id AS "vehicleId", v.organization_id AS "dealerId", b.buyer_id AS "buyerId",
    b.organization_id AS "inspectorId", c.engine, c.hash, c.document, c.answer,
    a.document AS "aDocument", b.document AS "bDocument",
    json_build_object('id', a.id, 'report', a.report_id, 'version', a.number, 'seal', a.seal) AS statement,
    json_build_object('id', b.id, 'report', b.report_id, 'version', b.number, 'seal', b.seal) AS inspection
  ${sides}`;

/** `$1` organizations, `$2` those of them that buy, `$3` the comparison. Nothing of it to whoever must be blind. */
const ofBuyer = `c.id = $3::uuid AND b.buyer_id = ANY($2::uuid[]) AND NOT ${mustBeBlind("v.id")}`;
const ordered = `${whole} AND ${ofBuyer}`;

/** Gives a comparison made before there were answers its own, once. */
async function fillAnswer(tx: Transaction, id: string, made: Made): Promise<Uint8Array> {
  const data = answerOf(made.comparison, made.a, made.b);
  // Two at once make the same, and the second finds nothing left to do.
  await tx.comparison.updateMany({ where: { id, answer: null }, data });
  return data.answer;
}

const Unanswered = z.object({ answer: Bytes.nullable(), document: Bytes, a: Bytes, b: Bytes });

/** The stored answer's bytes, made and kept now where the comparison is from before there were any. */
export async function readAnswer(tx: Transaction, id: string): Promise<Uint8Array> {
  const row = await findRow(
    tx,
    Unanswered,
    sql`
    SELECT c.answer, c.document, a.document AS a, b.document AS b FROM comparison c
      JOIN report_version a ON a.id = c.a_id JOIN report_version b ON b.id = c.b_id
    WHERE c.id = ${id}::uuid FOR UPDATE OF c`,
  );
  const { answer, document, a, b } = found(row, "comparison");
  if (answer !== null) return answer;
  return fillAnswer(tx, id, {
    comparison: storedComparison(document),
    a: storedReport(a),
    b: storedReport(b),
  });
}

/** Held until the transaction ends, so that releases and decisions on it come one after the other. */
export const lockOrdered = (tx: Transaction, actor: Actor, id: string): Promise<OrderedComparison> =>
  readAs(tx, actor, id, `${ordered} FOR UPDATE OF c`);

/** The same to look at, holding nothing. */
export const readOrdered = (tx: Transaction, actor: Actor, id: string): Promise<OrderedComparison> =>
  readAs(tx, actor, id, ordered);

const Of = z.object({ vehicleId: z.string(), buyerId: z.string() });

/** Whose it is and of which car, to whoever may look at it; nothing that was compared is read. */
export async function readOrderedOf(tx: Transaction, actor: Actor, id: string): Promise<z.infer<typeof Of>> {
  const text = `SELECT c.vehicle_id AS "vehicleId", b.buyer_id AS "buyerId" ${sides} AND ${ofBuyer}`;
  const values = [actor.organizations(), actor.organizations("buyer"), id];
  return found(await findRow(tx, Of, { text, values }), "comparison");
}

/** One that the service itself has just made, whoever may read it. */
export const readMade = (tx: Transaction, id: string): Promise<OrderedComparison> =>
  read(tx, id, { text: `${whole} AND c.id = $1::uuid`, values: [id] });

const readAs = (tx: Transaction, actor: Actor, id: string, text: string): Promise<OrderedComparison> =>
  read(tx, id, { text, values: [actor.organizations(), actor.organizations("buyer"), id] });

async function read(tx: Transaction, id: string, statement: Statement): Promise<OrderedComparison> {
  const row = await findRow(tx, Row, statement);
  const { document, answer, aDocument, bDocument, ...facts } = found(row, "comparison");
  const comparison = storedComparison(document);
  const [a, b] = [storedReport(aDocument), storedReport(bDocument)];
  const stored = answer ?? (await fillAnswer(tx, id, { comparison, a, b }));
  return { ...facts, comparison, answer: storedAnswer(stored), a, b };
}
