import { Body, Controller, Query } from "@nestjs/common";
import { CostTable } from "@evenhand/shared/cost-table";
import {
  DecisionAnswer,
  DecisionQuery,
  DecisionRequest,
  OfferReply,
  SummaryQuery,
  SummaryRequest,
} from "@evenhand/shared/http/summaries";
import { DecisionDraft } from "@evenhand/shared/summary";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { AnswerCostService } from "./answer-cost.service.ts";
import { CostTablesService } from "./cost-tables.service.ts";
import { DecisionDraftsService } from "./decision-drafts.service.ts";
import { DecisionsService } from "./decisions.service.ts";
import { OffersService } from "./offers.service.ts";
import { SummariesService } from "./summaries.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class SummariesController {
  constructor(
    private readonly summaries: SummariesService,
    private readonly decisions: DecisionsService,
    private readonly offers: OffersService,
    private readonly costTables: CostTablesService,
    private readonly answerCosts: AnswerCostService,
    private readonly drafts: DecisionDraftsService,
  ) {}

  @Route("comparisons.cost")
  cost(@By() actor: Actor, @Id() comparison: string) {
    return this.answerCosts.get(actor, comparison);
  }

  @Route("costTable.get")
  getCostTable(@By() actor: Actor) {
    return this.costTables.get(actor);
  }

  @Route("costTable.history")
  getCostTableHistory(@By() actor: Actor) {
    return this.costTables.history(actor);
  }

  @Route("costTable.offered")
  getCostTablesOffered(@By() actor: Actor) {
    return this.costTables.offered(actor);
  }

  @Route("costTable.put")
  putCostTable(
    @By() actor: Actor,
    @IfMatch() revision: number,
    @Body({ schema: CostTable }) body: CostTable,
  ) {
    return this.costTables.put(actor, revision, body);
  }

  @Route("summaries.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() comparison: string,
    @Body({ schema: SummaryRequest }) _body: SummaryRequest,
  ) {
    return this.summaries.create(tx, actor, comparison);
  }

  @Route("summaries.list")
  list(@By() actor: Actor, @Query({ schema: SummaryQuery }) query: SummaryQuery) {
    return this.summaries.list(actor, query);
  }

  @Route("summaries.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.summaries.get(actor, id);
  }

  @Route("summaries.document")
  document(@By() actor: Actor, @Id() id: string) {
    return this.summaries.document(actor, id);
  }

  @Route("summaries.draft")
  draft(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: DecisionDraft }) body: DecisionDraft,
  ) {
    return this.drafts.put(actor, id, revision, body);
  }

  @Route("summaries.decide")
  decide(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @Body({ schema: DecisionRequest }) body: DecisionRequest,
  ) {
    return this.decisions.decide(tx, actor, id, body);
  }

  @Route("decisions.list")
  listDecisions(@By() actor: Actor, @Query({ schema: DecisionQuery }) query: DecisionQuery) {
    return this.decisions.list(actor, query);
  }

  @Route("decisions.get")
  getDecision(@By() actor: Actor, @Id() id: string) {
    return this.decisions.get(actor, id);
  }

  @Route("decisions.answer")
  answer(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: DecisionAnswer }) body: DecisionAnswer,
  ) {
    return this.offers.answer(tx, actor, id, revision, body);
  }

  @Route("decisions.reply")
  reply(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: OfferReply }) body: OfferReply,
  ) {
    return this.offers.reply(tx, actor, id, revision, body);
  }
}
