import { beforeMoneyLines, type MatterAtItems, standing } from "@evenhand/decision/before-money";
import { BeforeMoneyEntries } from "@evenhand/shared/before-money";
import type { BeforeMoneySeen } from "@evenhand/shared/http/money";
import { matterId } from "@evenhand/shared/matter-id";
import { Injectable } from "@nestjs/common";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { ComparisonsService, type OrderedComparison } from "../comparisons/index.ts";
import { type CaseDocument, CaseDocuments, type KeptDocument } from "./case-documents.ts";
import { BoughtRow, caseBought } from "./before-money.queries.ts";

const before: CaseDocument<BeforeMoneyEntries> = {
  kind: "before-money",
  contract: BeforeMoneyEntries,
  none: { lines: {} },
};

/** Nobody's date is further on than that of UTC+14. */
const furthest = 14 * 3_600_000;

/** What a buyer goes through before money moves: the buyer's alone, beside what the record says today. */
@Injectable()
export class BeforeMoneyService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly documents: CaseDocuments,
    private readonly comparisons: ComparisonsService,
  ) {}

  async get(actor: Actor, id: string): Promise<BeforeMoneySeen> {
    return this.database.transaction(async (tx) => {
      await this.documents.ownCase(tx, actor, id);
      return this.seen(tx, actor, id, await this.documents.read(tx, id, before));
    });
  }

  async put(actor: Actor, id: string, meant: number, entries: BeforeMoneyEntries): Promise<BeforeMoneySeen> {
    return this.database.transaction(async (tx) => {
      await this.documents.ownCase(tx, actor, id);
      return this.seen(tx, actor, id, await this.documents.put(tx, actor, id, meant, before, entries));
    });
  }

  private async seen(
    tx: Transaction,
    actor: Actor,
    id: string,
    { document: entries, ...kept }: KeptDocument<BeforeMoneyEntries>,
  ): Promise<BeforeMoneySeen> {
    const values = [actor.organizations(), id];
    const row = await findRow(tx, BoughtRow, { text: caseBought, values });
    const { bought, comparison } = found(row, "case");
    const matters =
      comparison === null ? null : mattersOf(await this.comparisons.readOrdered(tx, actor, comparison));
    const today = new Date(this.clock.now().getTime() + furthest).toISOString().slice(0, 10);
    return { ...kept, bought, entries, standing: standing(beforeMoneyLines, matters, entries.lines, today) };
  }
}

/** Every matter with the items it is gravest at; all of its items where no line says so. */
const mattersOf = ({ answer, comparison }: OrderedComparison): MatterAtItems[] =>
  [...answer.matters, ...answer.unknown].map(({ matter }) => {
    const { severity, headline, found: what, decides } = matter;
    const lines = matter.lines.flatMap((line) => comparison.entries[line] ?? []);
    const gravest = lines.filter((line) => line.severity === severity);
    const items = (gravest.length > 0 ? gravest : lines).map(({ item }) => item);
    return { id: matterId(matter), severity, headline, found: what, decides, items: [...new Set(items)] };
  });
