import { z } from "zod";
import type { Transaction } from "../../platform/database/database.ts";
import { readRows, sql } from "../../platform/database/rows.ts";
import { storedComparison } from "../../platform/database/stored-documents.ts";
import { countStatements } from "./analysis.ts";

const Uncounted = z.object({ id: z.string(), document: z.instanceof(Uint8Array) });

/** Counts comparisons made before counts were kept. Two at once count the same, and the second finds nothing left to do. */
export async function countStored(tx: Transaction, comparisons: readonly string[]): Promise<void> {
  const rows = await readRows(
    tx,
    Uncounted,
    sql`
    SELECT id, document FROM comparison WHERE id = ANY(${comparisons}::uuid[]) AND statement_counts IS NULL
    ORDER BY id FOR UPDATE`,
  );
  for (const { id, document } of rows) {
    const statementCounts = countStatements(storedComparison(document));
    await tx.comparison.update({ where: { id }, data: { statementCounts }, select: { id: true } });
  }
}
