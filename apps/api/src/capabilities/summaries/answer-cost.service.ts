import { Injectable } from "@nestjs/common";
import { LRUCache } from "lru-cache";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { AnswerCost } from "@evenhand/shared/page-one";
import type { Actor } from "../../platform/auth/actor.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { keptOrMade } from "../../platform/database/kept-or-made.ts";
import { ComparisonsService, type OrderedComparison } from "../comparisons/index.ts";
import { answerCostOf } from "./cost-at-stake.ts";
import { CostTablesService } from "./cost-tables.service.ts";

type Cost = NonNullable<AnswerCost["cost"]>;

/** Costs kept as drawn: about a kilobyte each, with the table they were drawn from some ten. */
const maxCosts = 500;

/** What it may cost to put right, beside what is asked: for the buyer who ordered the inspection, from their own table. */
@Injectable()
export class AnswerCostService {
  /** What was compared never changes, so the same comparison and table give the same figures: ten thousand draws once, not at every look. */
  private readonly costs = new LRUCache<string, Cost>({ max: maxCosts });

  constructor(
    private readonly database: Database,
    private readonly comparisons: ComparisonsService,
    private readonly costTables: CostTablesService,
  ) {}

  async get(actor: Actor, comparison: string): Promise<AnswerCost> {
    return this.database.transaction(async (tx) => {
      const { buyerId, vehicleId } = await this.comparisons.readOrderedOf(tx, actor, comparison);
      const { table } = await this.costTables.read(tx, buyerId);
      const read = () => this.comparisons.readOrdered(tx, actor, comparison);
      const cost = table === null ? null : await this.costOf(comparison, table, read);
      return { asking: await readAsking(tx, vehicleId), cost };
    });
  }

  /** The same beside what it was made of, as part of a larger answer; `revision` is that of the table. */
  async read(tx: Transaction, actor: Actor, comparison: string) {
    const ordered = await this.comparisons.readOrdered(tx, actor, comparison);
    const { table, revision } = await this.costTables.read(tx, ordered.buyerId);
    const cost = table === null ? null : await this.costOf(comparison, table, () => ordered);
    return { ordered, table, revision, cost };
  }

  private costOf(
    comparison: string,
    table: CostTable,
    read: () => OrderedComparison | Promise<OrderedComparison>,
  ): Promise<Cost> {
    const key = `${comparison} ${JSON.stringify(table)}`;
    return keptOrMade(this.costs, key, async () => answerCostOf(await read(), table));
  }
}

async function readAsking(tx: Transaction, id: string): Promise<AnswerCost["asking"]> {
  const { askingMinor, askingCurrency } = await tx.vehicle.findUniqueOrThrow({
    where: { id },
    select: { askingMinor: true, askingCurrency: true },
  });
  return askingMinor === null || askingCurrency === null
    ? null
    : { minor: Number(askingMinor), currency: askingCurrency };
}
