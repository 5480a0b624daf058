import { Module } from "@nestjs/common";
import { ComparisonsController } from "./comparisons.controller.ts";
import { ComparisonsService } from "./comparisons.service.ts";

@Module({
  controllers: [ComparisonsController],
  providers: [ComparisonsService],
  exports: [ComparisonsService],
})
export class ComparisonsModule {}
