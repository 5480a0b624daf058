import { Module } from "@nestjs/common";
import { ComparisonsModule } from "../comparisons/index.ts";
import { SummariesModule } from "../summaries/index.ts";
import { BeforeMoneyService } from "./before-money.service.ts";
import { CaseDocuments } from "./case-documents.ts";
import { LandedCostService } from "./landed-cost.service.ts";
import { LookFirstService } from "./look-first.service.ts";
import { MoneyController } from "./money.controller.ts";
import { TransportRatesService } from "./transport-rates.service.ts";

@Module({
  imports: [ComparisonsModule, SummariesModule],
  controllers: [MoneyController],
  providers: [BeforeMoneyService, CaseDocuments, LandedCostService, LookFirstService, TransportRatesService],
})
export class MoneyModule {}
