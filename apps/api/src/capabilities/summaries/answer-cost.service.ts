import { Injectable } from "@nestjs/common";
import type { AnswerCost } from "@evenhand/shared/page-one";
import type { Actor } from "../../platform/auth/actor.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { ComparisonsService } from "../comparisons/index.ts";
import { answerCostOf } from "./cost-at-stake.ts";
import { CostTablesService } from "./cost-tables.service.ts";

/** What it may cost to put right, beside what is asked: for the buyer who ordered the inspection, from their own table. */
@Injectable()
export class AnswerCostService {
  constructor(
    private readonly database: Database,
    private readonly comparisons: ComparisonsService,
    private readonly costTables: CostTablesService,
  ) {}

  async get(actor: Actor, comparison: string): Promise<AnswerCost> {
    return this.database.transaction(async (tx) => {
      const { ordered, cost } = await this.read(tx, actor, comparison);
      return { asking: await readAsking(tx, ordered.vehicleId), cost };
    });
  }

  /** The same beside what it was made of, as part of a larger answer; `revision` is that of the table. */
  async read(tx: Transaction, actor: Actor, comparison: string) {
    const ordered = await this.comparisons.readOrdered(tx, actor, comparison);
    const { table, revision } = await this.costTables.read(tx, ordered.buyerId);
    return { ordered, table, revision, cost: table === null ? null : answerCostOf(ordered, table) };
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
