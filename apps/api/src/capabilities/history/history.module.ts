import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { HistoryController } from "./history.controller.ts";
import { HistoryService } from "./history.service.ts";
import { HistoryTables } from "./history-tables.ts";

@Module({
  imports: [MailModule],
  controllers: [HistoryController],
  providers: [HistoryService, HistoryTables],
  exports: [HistoryTables],
})
export class HistoryModule {}
