import { Injectable } from "@nestjs/common";
import type { KnownReader } from "@evenhand/comparison/corrections";
import { HistoryTable } from "@evenhand/shared/history";
import type { FirmHistory } from "@evenhand/shared/http/history";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { sealedBytes } from "../../platform/database/sealed-bytes.ts";
import { notFound } from "../../platform/problems/problem-error.ts";
import { newestTable } from "./history.queries.ts";

const TableRow = z.object({ hash: z.string(), document: z.instanceof(Uint8Array), madeAt: z.string() });
type Newest = { table: HistoryTable; hash: string; madeAt: string };

/** A version of a report, as far as it says whose hand it was. */
type Made = { readonly kind: string; readonly organizationId: string; readonly sealedBy: string };

/** The sealed tables of what past pairs tell: given to each comparison, and shown to whom they are of. */
@Injectable()
export class HistoryTables {
  constructor(private readonly database: Database) {}

  /** What is known now of whoever sealed an inspection; of a dealer nothing ever is. */
  async readerOf(
    tx: Transaction,
    { kind, organizationId, sealedBy }: Made,
  ): Promise<KnownReader | undefined> {
    if (kind !== "inspection") return undefined;
    const newest = await this.newest(tx, organizationId);
    return newest && { table: newest.table, hash: newest.hash, inspector: sealedBy };
  }

  /** The firm's gauges, and the hand of whoever asks. */
  async seenBy(actor: Actor, firm: string): Promise<FirmHistory> {
    if (!actor.organizations("inspector").includes(firm)) throw notFound("organization");
    const newest = await this.database.transaction((tx) => this.newest(tx, firm));
    if (newest === undefined) return { hash: null, madeAt: null, leans: [], gauges: [] };
    const { leans, gauges } = newest.table;
    return {
      hash: newest.hash,
      madeAt: newest.madeAt,
      leans: leans.flatMap(({ inspector, ...lean }) => (inspector === actor.account ? [lean] : [])),
      gauges,
    };
  }

  private async newest(tx: Transaction, firm: string): Promise<Newest | undefined> {
    const row = await findRow(tx, TableRow, { text: newestTable, values: [firm] });
    if (row === null) return undefined;
    const text = Buffer.from(sealedBytes(row.document, row.hash)).toString("utf8");
    return { table: HistoryTable.parse(JSON.parse(text)), hash: row.hash, madeAt: row.madeAt };
  }
}
