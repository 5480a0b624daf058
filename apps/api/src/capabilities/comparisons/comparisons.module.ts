import { Module } from "@nestjs/common";
import { HistoryModule } from "../history/index.ts";
import { ComparisonsController } from "./comparisons.controller.ts";
import { ComparisonsService } from "./comparisons.service.ts";

@Module({
  imports: [HistoryModule],
  controllers: [ComparisonsController],
  providers: [ComparisonsService],
  exports: [ComparisonsService],
})
export class ComparisonsModule {}
