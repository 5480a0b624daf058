import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { ChainController } from "./chain.controller.ts";
import { ExportService } from "./export.service.ts";
import { ReceiptsService } from "./receipts.service.ts";
import { RootsService } from "./roots.service.ts";

@Module({
  imports: [MailModule],
  controllers: [ChainController],
  providers: [ReceiptsService, ExportService, RootsService],
})
export class ChainModule {}
