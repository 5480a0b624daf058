import { Injectable } from "@nestjs/common";
import { landedCost, type LandedCostInput } from "@evenhand/decision/landed-cost";
import { landedCostChanges } from "@evenhand/decision/landed-cost-changes";
import type { LandedCostHistory, LandedCostSeen } from "@evenhand/shared/http/money";
import { LandedCostEntries } from "@evenhand/shared/landed-cost";
import type { Actor } from "../../platform/auth/actor.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { AnswerCostService } from "../summaries/index.ts";
import { type CaseDocument, CaseDocuments, type KeptDocument, type OwnCase } from "./case-documents.ts";
import { type CaseMoney, CaseMoneyRow, caseMoney } from "./landed-cost.queries.ts";
import { worthOf } from "./worth.ts";
import { TransportRatesService } from "./transport-rates.service.ts";

const landed: CaseDocument<LandedCostEntries> = {
  kind: "landed-cost",
  contract: LandedCostEntries,
  none: { lines: {}, trip: null, currency: null, rates: [], limit: null },
};

const versionsShown = 20;

/** What a car comes to at its buyer's door: the buyer's alone, reckoned from what they entered and what the record has. */
@Injectable()
export class LandedCostService {
  constructor(
    private readonly database: Database,
    private readonly documents: CaseDocuments,
    private readonly rates: TransportRatesService,
    private readonly costs: AnswerCostService,
  ) {}

  async get(actor: Actor, id: string): Promise<LandedCostSeen> {
    return this.database.transaction(async (tx) => {
      const own = await this.documents.ownCase(tx, actor, id);
      return this.seen(tx, actor, own, await this.documents.read(tx, id, landed));
    });
  }

  async put(actor: Actor, id: string, meant: number, entries: LandedCostEntries): Promise<LandedCostSeen> {
    return this.database.transaction(async (tx) => {
      const own = await this.documents.ownCase(tx, actor, id);
      return this.seen(tx, actor, own, await this.documents.put(tx, actor, id, meant, landed, entries));
    });
  }

  /** Who changed what of it when; the buyer's alone, like the thing itself. */
  async history(actor: Actor, id: string): Promise<LandedCostHistory> {
    return this.database.transaction(async (tx) => {
      await this.documents.ownCase(tx, actor, id);
      const versions = await this.documents.versions(tx, id, landed, versionsShown + 1);
      const items = versions.slice(0, versionsShown).map(({ document, ...saved }, index) => ({
        ...saved,
        changes: landedCostChanges(versions[index + 1]?.document ?? null, document),
      }));
      return { items };
    });
  }

  private async seen(
    tx: Transaction,
    actor: Actor,
    own: OwnCase,
    { document: entries, ...kept }: KeptDocument<LandedCostEntries>,
  ): Promise<LandedCostSeen> {
    const values = [actor.organizations(), own.id];
    const row = await findRow(tx, CaseMoneyRow, { text: caseMoney, values });
    const { money } = found(row, "case");
    const { comparison } = money;
    const reckoned = comparison === null ? null : await this.costs.read(tx, actor, comparison);
    const { revision, rates } = await this.rates.read(tx, own.buyerId);
    const cost = landedCost({
      entries,
      price: priceOf(money),
      putRight: putRightOf(reckoned),
      inspection: inspectionOf(money),
      rates: rates === null ? null : { revision, table: rates },
    });
    const table = reckoned?.table ?? null;
    const worth =
      reckoned === null || table === null ? null : worthOf(entries, cost, reckoned.ordered, table);
    return { ...kept, entries, cost, worth };
  }
}

type Reckoned = Awaited<ReturnType<AnswerCostService["read"]>>;

const putRightOf = (reckoned: Reckoned | null): LandedCostInput["putRight"] => {
  if (reckoned === null) return { unset: "no-comparison" };
  const { cost, revision } = reckoned;
  if (cost === null) return { unset: "no-cost-table" };
  const { currency, table: name, total: amount, unset } = cost;
  return { currency, amount, source: { of: "cost-table", name, revision, unsetRows: unset.length } };
};

const priceOf = ({ offer, asking }: CaseMoney): LandedCostInput["price"] => {
  if (offer !== null) {
    const { amount, ...said } = offer;
    return { amount, source: { of: "offer", ...said } };
  }
  return asking === null ? null : { amount: asking, source: { of: "asking" } };
};

/** A visit to several cars counts with this car's even share. */
const inspectionOf = ({ visits }: CaseMoney): LandedCostInput["inspection"] =>
  [...Map.groupBy(visits, ({ currency }) => currency)].map(([currency, of]) => ({
    amount: { minor: of.reduce((sum, { minor, cars }) => sum + Math.round(minor / cars), 0), currency },
    source: { of: "booking", visits: of.length, shared: of.some(({ cars }) => cars > 1) },
  }));
