import { Injectable } from "@nestjs/common";
import type { KeptDraft } from "@evenhand/shared/http/summaries";
import { DecisionDraft } from "@evenhand/shared/summary";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";

const DecidedRow = z.object({ decided: z.boolean() });

/** What a buyer typed and chose before deciding, so that nothing of it is lost. The buyer's alone. */
@Injectable()
export class DecisionDraftsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async put(actor: Actor, summary: string, meant: number, draft: DecisionDraft): Promise<KeptDraft> {
    return this.database.transaction(async (tx) => {
      await lockUndecided(tx, actor, summary);
      const { revision: before } = await this.read(tx, summary);
      checkRevision(before, meant);
      const revision = before + 1;
      const row = { revision, document: draft, updatedBy: actor.account, updatedAt: this.clock.now() };
      await tx.decisionDraft.upsert({
        where: { summaryId: summary },
        create: { summaryId: summary, ...row },
        update: row,
      });
      return { revision, draft };
    });
  }

  async read(tx: Transaction, summary: string): Promise<KeptDraft> {
    const row = await tx.decisionDraft.findUnique({ where: { summaryId: summary } });
    return row === null
      ? { revision: 0, draft: null }
      : { revision: row.revision, draft: DecisionDraft.parse(row.document) };
  }

  /** Once it is decided, what was decided stands; the draft goes. */
  async drop(tx: Transaction, summary: string): Promise<void> {
    await tx.decisionDraft.deleteMany({ where: { summaryId: summary } });
  }
}

/** One's own summary, held so that of two drafts at once one comes second and is told. */
async function lockUndecided(tx: Transaction, actor: Actor, summary: string): Promise<void> {
  const row = await findRow(
    tx,
    DecidedRow,
    sql`
    SELECT EXISTS (SELECT 1 FROM decision d WHERE d.summary_id = s.id) AS decided
    FROM summary s WHERE s.id = ${summary}::uuid AND s.buyer_id = ANY(${actor.organizations("buyer")}::uuid[])
    FOR UPDATE OF s`,
  );
  if (found(row, "summary").decided)
    throw new ProblemError(
      "summary-decided",
      "You have decided on this summary. Make a new one to decide anew.",
    );
}
