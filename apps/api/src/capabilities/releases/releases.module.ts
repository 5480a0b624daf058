import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { ComparisonsModule } from "../comparisons/index.ts";
import { EvidenceModule } from "../evidence/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { VehiclesModule } from "../vehicles/index.ts";
import { ReleasesController } from "./releases.controller.ts";
import { ReleasePicturesController } from "./release-pictures.controller.ts";
import { ReleasePicturesService } from "./release-pictures.service.ts";
import { NewLooks } from "./new-looks.ts";
import { ReleasesService } from "./releases.service.ts";
import { SettlementMoves } from "./settlement-moves.ts";
import { SettlementService } from "./settlement.service.ts";

@Module({
  imports: [ComparisonsModule, EvidenceModule, MailModule, NoticesModule, VehiclesModule],
  controllers: [ReleasesController, ReleasePicturesController],
  providers: [ReleasesService, SettlementService, SettlementMoves, NewLooks, ReleasePicturesService],
  exports: [ReleasesService, ReleasePicturesService, SettlementService, NewLooks],
})
export class ReleasesModule {}
