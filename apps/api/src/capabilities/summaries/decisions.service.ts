import { Injectable } from "@nestjs/common";
import { DECISION_STATES, decisionStateOf } from "@evenhand/case/decision-states";
import { decideMove } from "@evenhand/case/state-table";
import type { Created } from "@evenhand/shared/http/paging";
import type { DecisionQuery, DecisionRequest } from "@evenhand/shared/http/summaries";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow, RevisedBodyRow } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { NoticesService } from "../notices/index.ts";
import { SettlementService } from "../releases/index.ts";
import { checkAcknowledged, checkCounter, checkUntil } from "./decision-checks.ts";
import { DecisionDraftsService } from "./decision-drafts.service.ts";
import { decisionDetail, decisionList } from "./summaries.queries.ts";
import { type HeldSummary, SummariesService } from "./summaries.service.ts";

/** The buyer approves, counters or declines exactly what they saw. */
@Injectable()
export class DecisionsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly summaries: SummariesService,
    private readonly notices: NoticesService,
    private readonly drafts: DecisionDraftsService,
    private readonly record: RecordChain,
    private readonly settlement: SettlementService,
  ) {}

  /** Declining is free; the other two need that nothing moved since. */
  async decide(tx: Transaction, actor: Actor, id: string, request: DecisionRequest): Promise<Created> {
    checkCounter(request);
    checkUntil(request, this.clock.now());
    const held = await this.summaries.hold(tx, actor, id);
    if (request.hash !== held.hash)
      throw new ProblemError(
        "summary-hash",
        "This is not the hash of the summary. Read it again, then decide.",
      );
    if (request.decision !== "decline") await this.checkUnmoved(tx, held);
    const before = await tx.decision.findUnique({
      where: { summaryId: id },
      select: { decision: true, answer: true },
    });
    if (decideMove(DECISION_STATES, decisionStateOf(before), request.decision, "buyer").kind === "refused")
      throw new ProblemError(
        "summary-decided",
        "You have decided on this summary. Make a new one to decide anew.",
      );
    if (request.decision === "approve") checkAcknowledged(held.summary, request);
    const made = await this.store(tx, actor, held, request);
    const { vehicleId, buyerId } = held.ordered;
    if (request.decision === "decline") await this.settlement.leaveAll(tx, actor.account, vehicleId, buyerId);
    return made;
  }

  async list(actor: Actor, query: DecisionQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "decision-list",
      text: decisionList,
      values: [actor.organizations(), readCursor(query), query.limit, query.vehicle ?? null],
    });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findRow(this.database, RevisedBodyRow, {
      name: "decision",
      text: decisionDetail,
      values: [actor.organizations(), id],
    });
    const { body, revision } = found(row, "decision");
    return new JsonText(body, String(revision));
  }

  private async checkUnmoved(tx: Transaction, held: HeldSummary): Promise<void> {
    const moved = await this.summaries.findMoved(tx, held);
    if (moved.length === 0) return;
    throw new ProblemError(
      "summary-moved",
      "Something the summary was made from has moved since. Make a new summary and decide on that.",
      { members: { moved } },
    );
  }

  private async store(
    tx: Transaction,
    actor: Actor,
    held: HeldSummary,
    request: DecisionRequest,
  ): Promise<Created> {
    const id = this.ids.next();
    const { vehicleId, buyerId, dealerId } = held.ordered;
    await tx.decision.create({
      data: {
        id,
        summaryId: held.id,
        vehicleId,
        buyerId,
        dealerId,
        decision: request.decision,
        hash: held.hash,
        acknowledgements: request.acknowledgements,
        priceMinor: request.price?.minor ?? null,
        priceCurrency: request.price?.currency ?? null,
        conditions: request.conditions ?? null,
        standsUntil: request.until === undefined ? null : new Date(request.until),
        revision: 1,
        decidedBy: actor.account,
        decidedAt: this.clock.now(),
      },
    });
    this.record.append(tx, {
      kind: "decision.made",
      organizations: [buyerId, dealerId],
      subject: id,
      actor: actor.account,
      content: {
        decision: request.decision,
        summary: held.id,
        seal: held.hash,
        priceMinor: request.price?.minor ?? null,
        priceCurrency: request.price?.currency ?? null,
        until: request.until ?? null,
      },
    });
    await this.drafts.drop(tx, held.id);
    await this.notices.tell(tx, {
      organization: dealerId,
      kind: "decision-made",
      subject: id,
      vehicle: vehicleId,
    });
    return { id };
  }
}
