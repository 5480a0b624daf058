import { Injectable } from "@nestjs/common";
import { z } from "zod";
import type { Actor } from "../auth/actor.ts";
import { Clock } from "../clock/index.ts";
import { notFound } from "../problems/problem-error.ts";
import { Database, type Transaction } from "./database.ts";
import { nextRevision } from "./next-revision.ts";
import { findRow, run, type Source } from "./rows.ts";

/** A document that a firm has one of. */
export type FirmDocument<D extends object> = {
  /** With the columns `organization_id`, `revision`, `document`, `updated_by` and `updated_at`. */
  readonly table: "firm_handbook" | "firm_instruments";
  readonly contract: z.ZodType<D>;
  /** Before there is one. */
  readonly none: D;
  /** @throws ProblemError naming everything that cannot be taken */
  readonly refuse: (document: D) => void;
};
type Kept<D> = { readonly revision: number; readonly document: D };

/** Documents a firm's administrators keep and its people read, each replaced whole; reports made before keep their copy. */
@Injectable()
export class FirmDocuments {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemError `not-found` to whoever does not work for the firm */
  async get<D extends object>(actor: Actor, firm: string, kind: FirmDocument<D>): Promise<Kept<D>> {
    if (!actor.worksFor(firm)) throw notFound("organization");
    return this.read(this.database, firm, kind);
  }

  /** @throws ProblemError `not-found` to whoever does not administer the firm, `revision-moved`, or what is wrong with it */
  async put<D extends object>(
    actor: Actor,
    firm: string,
    meant: number,
    kind: FirmDocument<D>,
    document: D,
  ): Promise<Kept<D>> {
    if (!actor.worksFor(firm) || !actor.isAdmin(firm)) throw notFound("organization");
    kind.refuse(document);
    return this.database.transaction(async (tx) => {
      const revision = await nextRevision(tx, firm, meant, () => this.read(tx, firm, kind));
      await this.store(tx, kind.table, [firm, revision, JSON.stringify(document), actor.account]);
      return { revision, document };
    });
  }

  /** Revision 0 before there is one. */
  async read<D extends object>(source: Source, firm: string, kind: FirmDocument<D>): Promise<Kept<D>> {
    const row = await findRow(source, z.object({ revision: z.number(), document: kind.contract }), {
      text: `SELECT revision, document FROM ${kind.table} WHERE organization_id = $1::uuid`,
      values: [firm],
    });
    return row ?? { revision: 0, document: kind.none };
  }

  private async store(tx: Transaction, table: string, values: readonly unknown[]): Promise<void> {
    await run(tx, {
      text: `INSERT INTO ${table} (organization_id, revision, document, updated_by, updated_at)
        VALUES ($1::uuid, $2::int, $3::jsonb, $4::uuid, $5::timestamptz)
        ON CONFLICT (organization_id) DO UPDATE SET revision = excluded.revision, document = excluded.document,
          updated_by = excluded.updated_by, updated_at = excluded.updated_at`,
      values: [...values, this.clock.now()],
    });
  }
}
