import { Module } from "@nestjs/common";
import { ComparisonsModule } from "../comparisons/index.ts";
import { EvidenceModule } from "../evidence/index.ts";
import { CasesController } from "./cases.controller.ts";
import { CasesService } from "./cases.service.ts";
import { OpenCases } from "./open-cases.ts";

@Module({
  imports: [ComparisonsModule, EvidenceModule],
  controllers: [CasesController],
  providers: [CasesService, OpenCases],
  exports: [OpenCases],
})
export class CasesModule {}
