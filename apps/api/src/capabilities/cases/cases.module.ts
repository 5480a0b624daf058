import { Module } from "@nestjs/common";
import { ComparisonsModule } from "../comparisons/index.ts";
import { CasesController } from "./cases.controller.ts";
import { CasesService } from "./cases.service.ts";
import { OpenCases } from "./open-cases.ts";

@Module({
  imports: [ComparisonsModule],
  controllers: [CasesController],
  providers: [CasesService, OpenCases],
  exports: [OpenCases],
})
export class CasesModule {}
