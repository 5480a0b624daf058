import { Injectable } from "@nestjs/common";
import {
  Decision,
  type Moved,
  type SummaryCreated,
  type SummaryQuery,
  type SummarySeen,
} from "@evenhand/shared/http/summaries";
import { sealDocument } from "@evenhand/record/seal";
import { asSummary } from "@evenhand/shared/as-summary";
import { SettlementState } from "@evenhand/shared/settlement";
import { StoredSummary, type Summary } from "@evenhand/shared/summary";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { DocumentRow, findRow } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { ComparisonsService, type OrderedComparison } from "../comparisons/index.ts";
import { SettlementService } from "../releases/index.ts";
import { CostTablesService } from "./cost-tables.service.ts";
import { DecisionDraftsService } from "./decision-drafts.service.ts";
import { makeSummary } from "./make-summary.ts";
import { nameFindings } from "./moved-findings.ts";
import { decisionOfSummary, summaryDocument, summaryList } from "./summaries.queries.ts";
import { moves, readSources } from "./summary-sources.ts";

const SummaryRow = DocumentRow.extend({ hash: z.string() });
const DecisionRow = z.object({ decision: Decision });

export type HeldSummary = {
  id: string;
  hash: string;
  createdAt: Date;
  ordered: OrderedComparison;
  summary: Summary;
};

type ReadSummary = { hash: string; summary: Summary; decision: Decision | null };

const readStored = (document: Uint8Array): Summary =>
  asSummary(StoredSummary.parse(JSON.parse(Buffer.from(document).toString("utf8"))));

@Injectable()
export class SummariesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly comparisons: ComparisonsService,
    private readonly costTables: CostTablesService,
    private readonly drafts: DecisionDraftsService,
    private readonly record: RecordChain,
    private readonly settlement: SettlementService,
  ) {}

  /** Takes a snapshot of how things stand, for the buyer to decide on. */
  async create(tx: Transaction, actor: Actor, comparison: string): Promise<SummaryCreated> {
    const ordered = await this.comparisons.lockOrdered(tx, actor, comparison);
    await this.settlement.lapseDue(tx, comparison);
    const [id, createdAt] = [this.ids.next(), this.clock.now()];
    const summary = makeSummary({
      id,
      createdAt,
      ordered,
      releases: await readReleases(tx, comparison),
      costTable: (await this.costTables.read(tx, ordered.buyerId)).table,
      sources: await readSources(tx, ordered),
    });
    const { text, seal: hash } = sealDocument(summary, sha256Hex);
    const { vehicleId, buyerId, dealerId } = ordered;
    const document = new Uint8Array(Buffer.from(text, "utf8"));
    await tx.summary.create({
      data: {
        id,
        comparisonId: comparison,
        vehicleId,
        buyerId,
        dealerId,
        hash,
        document,
        createdBy: actor.account,
        createdAt,
      },
    });
    this.record.append(tx, {
      kind: "summary.made",
      organizations: [buyerId],
      subject: id,
      actor: actor.account,
      content: { comparison, vehicle: vehicleId, seal: hash },
    });
    const receipt = await this.record.receiptOf(tx, { organization: buyerId, subject: id, seal: hash });
    return { id, hash, receipt };
  }

  async list(actor: Actor, query: SummaryQuery): Promise<JsonText> {
    const filters = [query.comparison ?? null, query.vehicle ?? null];
    return readPage(this.database, {
      name: "summary-list",
      text: summaryList,
      values: [actor.organizations(), readCursor(query), query.limit, ...filters],
    });
  }

  async get(actor: Actor, id: string): Promise<SummarySeen> {
    return this.database.transaction(async (tx) => {
      const held = await this.hold(tx, actor, id);
      const values = [actor.organizations(), id];
      const row = await findRow(tx, DecisionRow, { text: decisionOfSummary, values });
      return {
        id,
        comparison: held.ordered.id,
        vehicle: held.ordered.vehicleId,
        hash: held.hash,
        createdAt: held.createdAt.toISOString(),
        moved: await this.findMoved(tx, held),
        decision: row?.decision ?? null,
        draft: await this.drafts.read(tx, id),
      };
    });
  }

  /** The bytes as they were shown. */
  async document(actor: Actor, id: string): Promise<JsonText> {
    const { document, hash } = await this.stored(actor, id);
    return new JsonText(document, hash);
  }

  /** The summary as it stands, with what was decided on it. */
  async read(actor: Actor, id: string): Promise<ReadSummary> {
    const { document, hash } = await this.stored(actor, id);
    const values = [actor.organizations(), id];
    const row = await findRow(this.database, DecisionRow, { text: decisionOfSummary, values });
    return { hash, summary: readStored(document), decision: row?.decision ?? null };
  }

  /** For whoever may see it, noted as shown. */
  private async stored(actor: Actor, id: string): Promise<z.infer<typeof SummaryRow>> {
    const row = await findRow(this.database, SummaryRow, {
      name: "summary-document",
      text: summaryDocument,
      values: [actor.organizations(), id, actor.account, this.clock.now()],
    });
    return found(row, "summary");
  }

  /** One's own summary with the comparison under it held, so that nothing moves until the transaction ends. */
  async hold(tx: Transaction, actor: Actor, id: string): Promise<HeldSummary> {
    const where = { id, buyerId: { in: actor.organizations("buyer") } };
    const row = found(await tx.summary.findFirst({ where }), "summary");
    const ordered = await this.comparisons.lockOrdered(tx, actor, row.comparisonId);
    return { id, hash: row.hash, createdAt: row.createdAt, ordered, summary: readStored(row.document) };
  }

  /** What the summary was made from that has moved since. */
  async findMoved(tx: Transaction, { ordered, summary }: HeldSummary): Promise<Moved[]> {
    return nameFindings(tx, moves(summary.sources, await readSources(tx, ordered)));
  }
}

async function readReleases(tx: Transaction, comparison: string): Promise<Summary["releases"]> {
  const rows = await tx.release.findMany({
    where: { atComparisonId: comparison },
    orderBy: { atEntryIndex: "asc" },
  });
  return rows.map(({ id, atEntryIndex, state, reason }) => ({
    id,
    entry: atEntryIndex,
    state: SettlementState.parse(state),
    reason,
  }));
}
