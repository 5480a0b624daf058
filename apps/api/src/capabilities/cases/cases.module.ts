import { Module } from "@nestjs/common";
import { CasesController } from "./cases.controller.ts";
import { CasesService } from "./cases.service.ts";
import { OpenCases } from "./open-cases.ts";

@Module({ controllers: [CasesController], providers: [CasesService, OpenCases], exports: [OpenCases] })
export class CasesModule {}
