import { Injectable } from "@nestjs/common";
import { costTableChanges } from "@evenhand/decision/cost-table-changes";
import { CostTable } from "@evenhand/shared/cost-table";
import type { CostTableHistory, CostTableSeen, CostTablesOffered } from "@evenhand/shared/http/summaries";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { nextRevision } from "../../platform/database/next-revision.ts";
import { found } from "../../platform/problems/problem-error.ts";

/** The table is the buyer's, or that of the firm for which the person inspects. */
const ownerOf = (actor: Actor): string =>
  found(actor.organizations("buyer")[0] ?? actor.organizations("inspector")[0], "cost table");

/** So many times back is shown. */
const versionsShown = 20;

/**
 * What a buyer reckons it costs to put things right: the buyer's alone. A firm that inspects may keep one too, with which a buyer it
 * has reported to may begin.
 */
@Injectable()
export class CostTablesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async get(actor: Actor): Promise<CostTableSeen> {
    return this.database.transaction((tx) => this.read(tx, ownerOf(actor)));
  }

  async put(actor: Actor, meant: number, table: CostTable): Promise<CostTableSeen> {
    return this.database.transaction((tx) => this.putIn(tx, actor, meant, table));
  }

  /** The same, as part of a larger change. */
  async putIn(tx: Transaction, actor: Actor, meant: number, table: CostTable): Promise<CostTableSeen> {
    const organizationId = ownerOf(actor);
    const revision = await nextRevision(tx, organizationId, meant, () => this.read(tx, organizationId));
    const at = this.clock.now();
    const row = { revision, document: table, updatedBy: actor.account, updatedAt: at };
    await tx.costTable.upsert({
      where: { organizationId },
      create: { organizationId, ...row },
      update: row,
    });
    const saved = { savedBy: actor.account, savedAt: at };
    await tx.costTableVersion.create({ data: { organizationId, revision, document: table, ...saved } });
    return { revision, table };
  }

  async history(actor: Actor): Promise<CostTableHistory> {
    const organizationId = ownerOf(actor);
    return this.database.transaction(async (tx) => {
      const rows = await tx.costTableVersion.findMany({
        where: { organizationId },
        orderBy: { revision: "desc" },
        take: versionsShown + 1,
      });
      const accounts = await tx.account.findMany({
        where: { id: { in: rows.map(({ savedBy }) => savedBy) } },
        select: { id: true, name: true },
      });
      const nameOf = new Map(accounts.map(({ id, name }) => [id, name]));
      const tables = rows.map(({ document }) => CostTable.parse(document));
      const items = rows.slice(0, versionsShown).flatMap(({ revision, savedBy, savedAt }, index) => {
        const table = tables[index];
        if (table === undefined) return [];
        const changes = costTableChanges(tables[index + 1] ?? null, table);
        const by = { savedBy: nameOf.get(savedBy) ?? "", savedAt: savedAt.toISOString() };
        return [{ revision, name: table.name, currency: table.currency, ...by, changes }];
      });
      return { items };
    });
  }

  /** The firm's own word for what things cost, to whom it has reported; never what another buyer reckons. */
  async offered(actor: Actor): Promise<CostTablesOffered> {
    return this.database.transaction(async (tx) => {
      const orders = await tx.inspectionOrder.findMany({
        where: { buyerId: { in: actor.organizations("buyer") }, state: "reported" },
        distinct: ["inspectorId"],
        select: { inspectorId: true },
        take: 50,
      });
      const tables = await tx.costTable.findMany({
        where: { organizationId: { in: orders.map(({ inspectorId }) => inspectorId) } },
        include: { organization: { select: { id: true, name: true } } },
        orderBy: { organizationId: "asc" },
      });
      return {
        items: tables.map(({ document, organization }) => ({
          firm: organization,
          table: CostTable.parse(document),
        })),
      };
    });
  }

  async read(tx: Transaction, organizationId: string): Promise<CostTableSeen> {
    const row = await tx.costTable.findUnique({ where: { organizationId } });
    return row === null
      ? { revision: 0, table: null }
      : { revision: row.revision, table: CostTable.parse(row.document) };
  }
}
