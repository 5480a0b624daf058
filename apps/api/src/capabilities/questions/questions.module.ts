import { Module } from "@nestjs/common";
import { CasesModule } from "../cases/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { ReportsModule } from "../reports/index.ts";
import { QuestionsController } from "./questions.controller.ts";
import { QuestionsService } from "./questions.service.ts";
import { StatementAnswers } from "./statement-answers.ts";

@Module({
  imports: [CasesModule, NoticesModule, ReportsModule],
  controllers: [QuestionsController],
  providers: [QuestionsService, StatementAnswers],
  exports: [QuestionsService],
})
export class QuestionsModule {}
