import { Injectable } from "@nestjs/common";
import { CostTable } from "@evenhand/shared/cost-table";
import type { CostTableSeen } from "@evenhand/shared/http/summaries";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { nextRevision } from "../../platform/database/next-revision.ts";
import { found } from "../../platform/problems/problem-error.ts";

const ownBuyer = (actor: Actor): string => found(actor.organizations("buyer")[0], "cost table");

/** What the buyer reckons it costs to put things right. The buyer's alone. */
@Injectable()
export class CostTablesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async get(actor: Actor): Promise<CostTableSeen> {
    return this.database.transaction((tx) => this.read(tx, ownBuyer(actor)));
  }

  async put(actor: Actor, meant: number, table: CostTable): Promise<CostTableSeen> {
    const organizationId = ownBuyer(actor);
    return this.database.transaction(async (tx) => {
      const revision = await nextRevision(tx, organizationId, meant, () => this.read(tx, organizationId));
      const row = { revision, document: table, updatedBy: actor.account, updatedAt: this.clock.now() };
      await tx.costTable.upsert({
        where: { organizationId },
        create: { organizationId, ...row },
        update: row,
      });
      return { revision, table };
    });
  }

  async read(tx: Transaction, organizationId: string): Promise<CostTableSeen> {
    const row = await tx.costTable.findUnique({ where: { organizationId } });
    return row === null
      ? { revision: 0, table: null }
      : { revision: row.revision, table: CostTable.parse(row.document) };
  }
}
