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
