import { Module } from "@nestjs/common";
import { ComparisonsModule } from "../comparisons/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { ReleasesModule } from "../releases/index.ts";
import { AnswerCostService } from "./answer-cost.service.ts";
import { CostTablesService } from "./cost-tables.service.ts";
import { DecisionDraftsService } from "./decision-drafts.service.ts";
import { DecisionsService } from "./decisions.service.ts";
import { SummariesController } from "./summaries.controller.ts";
import { SummariesService } from "./summaries.service.ts";

@Module({
  imports: [ComparisonsModule, NoticesModule, ReleasesModule],
  controllers: [SummariesController],
  providers: [
    SummariesService,
    DecisionsService,
    CostTablesService,
    AnswerCostService,
    DecisionDraftsService,
  ],
  exports: [SummariesService, DecisionsService, CostTablesService, AnswerCostService],
})
export class SummariesModule {}
