import { checkRevision } from "../access/parameters.ts";
import type { Transaction } from "./database.ts";
import { run, sql } from "./rows.ts";

/**
 * For a document an organization has one of: holds the organization until the transaction ends, so that of two who put it anew
 * one comes second and is told, and gives the revision it then has.
 *
 * @param meant the revision that is to be replaced; 0 before there is one
 * @param read the document as it stands, asked for once it is held
 */
export async function nextRevision(
  tx: Transaction,
  organizationId: string,
  meant: number,
  read: () => Promise<{ revision: number }>,
): Promise<number> {
  await run(tx, sql`SELECT id FROM organization WHERE id = ${organizationId}::uuid FOR UPDATE`);
  const { revision } = await read();
  checkRevision(revision, meant);
  return revision + 1;
}
