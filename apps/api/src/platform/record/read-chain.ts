import { KeptEntry, type Opening, type Receipt, SealReceipt, SignedRoot } from "@evenhand/shared/chain";
import { z } from "zod";
import { readRows, type Source, sql } from "../database/rows.ts";

const Row = KeptEntry.omit({ openings: true, organization: true, seq: true, at: true }).extend({
  seq: z.number(),
  at: z.date(),
  nameSalt: z.string().nullable(),
  nameText: z.string().nullable(),
  contentSalt: z.string().nullable(),
  contentText: z.string().nullable(),
});

const opening = (salt: string | null, text: string | null): Opening | null =>
  salt === null || text === null ? null : { salt, text };

/** An organization's record as it is kept, in the order of its numbers. What is no entry any more is read all the same. */
export async function readEntries(source: Source, organization: string): Promise<KeptEntry[]> {
  const rows = await readRows(
    source,
    Row.extend({ kind: z.string(), previous: z.string(), hash: z.string() }),
    sql`
    SELECT seq, previous, at, kind, subject, actor, name, content, hash, name_salt AS "nameSalt", name_text AS "nameText",
      content_salt AS "contentSalt", content_text AS "contentText"
    FROM record_entry WHERE organization_id = ${organization}::uuid ORDER BY seq`,
  );
  return rows.map(({ nameSalt, nameText, contentSalt, contentText, at, ...said }) => ({
    organization,
    ...said,
    at: at.toISOString(),
    openings: { name: opening(nameSalt, nameText), content: opening(contentSalt, contentText) },
  }));
}

const at = z.date().transform((date) => date.toISOString());
const RootRow = SignedRoot.omit({ what: true }).extend({ at });
const SealRow = SealReceipt.omit({ what: true }).extend({ at });

/** The roots and receipts that the service keeps itself of what it signed. */
export async function readReceipts(source: Source, organization: string): Promise<Receipt[]> {
  const roots = await readRows(
    source,
    RootRow,
    sql`
    SELECT organization_id AS organization, size, root, at, key, signature FROM record_root
    WHERE organization_id = ${organization}::uuid ORDER BY size`,
  );
  const seals = await readRows(
    source,
    SealRow,
    sql`
    SELECT organization_id AS organization, subject, seal, size, root, at, key, signature FROM seal_receipt
    WHERE organization_id = ${organization}::uuid ORDER BY size`,
  );
  return [
    ...roots.map((root) => ({ what: "root" as const, ...root })),
    ...seals.map((seal) => ({ what: "seal" as const, ...seal })),
  ];
}
