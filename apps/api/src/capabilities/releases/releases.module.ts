import { Module } from "@nestjs/common";
import { ComparisonsModule } from "../comparisons/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { VehiclesModule } from "../vehicles/index.ts";
import { ReleasesController } from "./releases.controller.ts";
import { ReleasesService } from "./releases.service.ts";

@Module({
  imports: [ComparisonsModule, NoticesModule, VehiclesModule],
  controllers: [ReleasesController],
  providers: [ReleasesService],
  exports: [ReleasesService],
})
export class ReleasesModule {}
