import { Module } from "@nestjs/common";
import { EvidenceModule } from "../evidence/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { CarriedHandOversController } from "./carried-hand-overs.controller.ts";
import { CarriedHandOversService } from "./carried-hand-overs.service.ts";
import { CarriedPicturesController } from "./carried-pictures.controller.ts";
import { CarriedPicturesService } from "./carried-pictures.service.ts";
import { HandOverPicturesController } from "./hand-over-pictures.controller.ts";
import { HandOverPicturesService } from "./hand-over-pictures.service.ts";
import { HandOversController } from "./hand-overs.controller.ts";
import { HandOversService } from "./hand-overs.service.ts";

@Module({
  imports: [NoticesModule, EvidenceModule],
  controllers: [
    HandOversController,
    HandOverPicturesController,
    CarriedHandOversController,
    CarriedPicturesController,
  ],
  providers: [HandOversService, HandOverPicturesService, CarriedHandOversService, CarriedPicturesService],
  exports: [HandOversService, CarriedHandOversService, CarriedPicturesService],
})
export class HandOversModule {}
