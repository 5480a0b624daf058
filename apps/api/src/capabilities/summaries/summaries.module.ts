import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { ComparisonsModule } from "../comparisons/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { ReleasesModule } from "../releases/index.ts";
import { AnswerCostService } from "./answer-cost.service.ts";
import { CostTablesService } from "./cost-tables.service.ts";
import { DecisionDraftsService } from "./decision-drafts.service.ts";
import { DecisionsService } from "./decisions.service.ts";
import { OfferJobs } from "./offer-jobs.ts";
import { OffersService } from "./offers.service.ts";
import { SummariesController } from "./summaries.controller.ts";
import { SummariesService } from "./summaries.service.ts";

@Module({
  imports: [ComparisonsModule, MailModule, NoticesModule, ReleasesModule],
  controllers: [SummariesController],
  providers: [
    SummariesService,
    DecisionsService,
    OffersService,
    OfferJobs,
    CostTablesService,
    AnswerCostService,
    DecisionDraftsService,
  ],
  exports: [SummariesService, DecisionsService, CostTablesService, AnswerCostService, OffersService],
})
export class SummariesModule {}
