import { Injectable } from "@nestjs/common";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { toJson } from "../../platform/database/to-json.ts";

/** A kind of document a buyer keeps with a case: its contract, and what stands before anything was saved. */
export type CaseDocument<T> = {
  readonly kind: string;
  readonly contract: z.ZodType<T>;
  readonly none: T;
};
export type KeptDocument<T> = {
  readonly revision: number;
  readonly savedAt: string | null;
  readonly document: T;
};
/** One save of it, and whose it was. */
export type SavedDocument<T> = {
  readonly revision: number;
  readonly savedBy: string;
  readonly savedAt: string;
  readonly document: T;
};

const CaseRow = z.object({ id: z.string(), buyerId: z.string(), vehicleId: z.string() });
export type OwnCase = z.infer<typeof CaseRow>;

/** What a buyer keeps with a case. Every save is kept; the newest holds. */
@Injectable()
export class CaseDocuments {
  constructor(private readonly clock: Clock) {}

  /** The buyer's own case. @throws ProblemError `not-found` */
  async ownCase(tx: Transaction, actor: Actor, id: string): Promise<OwnCase> {
    const row = await findRow(
      tx,
      CaseRow,
      sql`
      SELECT c.id, c.buyer_id AS "buyerId", c.vehicle_id AS "vehicleId" FROM buyer_case c
      WHERE c.id = ${id}::uuid AND c.buyer_id = ANY(${actor.organizations("buyer")}::uuid[])`,
    );
    return found(row, "case");
  }

  async read<T>(
    tx: Transaction,
    caseId: string,
    { kind, contract, none }: CaseDocument<T>,
  ): Promise<KeptDocument<T>> {
    const row = await tx.caseDocumentVersion.findFirst({
      where: { caseId, kind },
      orderBy: { revision: "desc" },
    });
    return row === null
      ? { revision: 0, savedAt: null, document: none }
      : {
          revision: row.revision,
          savedAt: row.savedAt.toISOString(),
          document: contract.parse(row.document),
        };
  }

  /** As it was saved the last so many times, the latest first. */
  async versions<T>(
    tx: Transaction,
    caseId: string,
    { kind, contract }: CaseDocument<T>,
    most: number,
  ): Promise<SavedDocument<T>[]> {
    const rows = await tx.caseDocumentVersion.findMany({
      where: { caseId, kind },
      orderBy: { revision: "desc" },
      take: most,
    });
    const accounts = await tx.account.findMany({
      where: { id: { in: rows.map(({ savedBy }) => savedBy) } },
      select: { id: true, name: true },
    });
    const nameOf = new Map(accounts.map(({ id, name }) => [id, name]));
    return rows.map(({ revision, savedBy, savedAt, document }) => ({
      revision,
      savedBy: nameOf.get(savedBy) ?? "",
      savedAt: savedAt.toISOString(),
      document: contract.parse(document),
    }));
  }

  /**
   * Keeps it anew. The case is held, so that of two who save at once one comes second and is told.
   *
   * @param meant the revision that is to be replaced
   * @param check asked once the case is held, with what stands
   * @throws ProblemError `revision-moved`
   */
  async put<T extends object>(
    tx: Transaction,
    actor: Actor,
    caseId: string,
    meant: number,
    kind: CaseDocument<T>,
    document: T,
  ): Promise<KeptDocument<T>> {
    await findRow(
      tx,
      CaseRow.pick({ id: true }),
      sql`SELECT id FROM buyer_case WHERE id = ${caseId}::uuid FOR UPDATE`,
    );
    const { revision: before } = await this.read(tx, caseId, kind);
    checkRevision(before, meant);
    const [revision, savedAt] = [before + 1, this.clock.now()];
    await tx.caseDocumentVersion.create({
      data: {
        caseId,
        kind: kind.kind,
        revision,
        document: toJson(document),
        savedBy: actor.account,
        savedAt,
      },
    });
    return { revision, savedAt: savedAt.toISOString(), document };
  }
}
