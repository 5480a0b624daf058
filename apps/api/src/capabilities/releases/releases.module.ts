import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { ComparisonsModule } from "../comparisons/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { VehiclesModule } from "../vehicles/index.ts";
import { ReleasesController } from "./releases.controller.ts";
import { NewLooks } from "./new-looks.ts";
import { ReleasesService } from "./releases.service.ts";
import { SettlementMoves } from "./settlement-moves.ts";
import { SettlementService } from "./settlement.service.ts";

@Module({
  imports: [ComparisonsModule, MailModule, NoticesModule, VehiclesModule],
  controllers: [ReleasesController],
  providers: [ReleasesService, SettlementService, SettlementMoves, NewLooks],
  exports: [ReleasesService, SettlementService, NewLooks],
})
export class ReleasesModule {}
