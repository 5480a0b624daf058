import { Module } from "@nestjs/common";
import { EvidenceModule } from "../evidence/index.ts";
import { VehiclesModule } from "../vehicles/index.ts";
import { PublishingController } from "./publishing.controller.ts";
import { PublishingService } from "./publishing.service.ts";

@Module({
  imports: [EvidenceModule, VehiclesModule],
  controllers: [PublishingController],
  providers: [PublishingService],
})
export class PublishingModule {}
