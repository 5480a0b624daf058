import type { Transaction } from "../../platform/database/database.ts";
import { countHeldUp } from "./analysis.ts";
import { readComparison } from "./ordered-comparison.ts";

/** Counts comparisons made before counts were kept. Two at once count the same, and the second finds nothing left to do. */
export async function countStored(tx: Transaction, comparisons: readonly string[]): Promise<void> {
  const rows = await tx.$queryRaw<{ id: string; document: Uint8Array }[]>`
    SELECT id, document FROM comparison WHERE id = ANY(${comparisons}::uuid[]) AND held_up_counts IS NULL
    ORDER BY id FOR UPDATE`;
  for (const { id, document } of rows) {
    const heldUpCounts = countHeldUp(readComparison(document));
    await tx.comparison.update({ where: { id }, data: { heldUpCounts }, select: { id: true } });
  }
}
