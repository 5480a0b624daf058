import { Module } from "@nestjs/common";
import { NoticesModule } from "../notices/index.ts";
import { CarriedHandOversController } from "./carried-hand-overs.controller.ts";
import { CarriedHandOversService } from "./carried-hand-overs.service.ts";
import { HandOversController } from "./hand-overs.controller.ts";
import { HandOversService } from "./hand-overs.service.ts";

@Module({
  imports: [NoticesModule],
  controllers: [HandOversController, CarriedHandOversController],
  providers: [HandOversService, CarriedHandOversService],
  exports: [HandOversService, CarriedHandOversService],
})
export class HandOversModule {}
