import { Module } from "@nestjs/common";
import { ComparisonsModule } from "../comparisons/index.ts";
import { SummariesModule } from "../summaries/index.ts";
import { FirstSight } from "./first-sight.ts";
import { PapersController } from "./papers.controller.ts";
import { PapersService } from "./papers.service.ts";

@Module({
  imports: [ComparisonsModule, SummariesModule],
  controllers: [PapersController],
  providers: [PapersService, FirstSight],
})
export class PapersModule {}
