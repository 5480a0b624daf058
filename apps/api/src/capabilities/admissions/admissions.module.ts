import { Module } from "@nestjs/common";
import { AdmissionsController } from "./admissions.controller.ts";
import { AdmissionsService } from "./admissions.service.ts";

@Module({ controllers: [AdmissionsController], providers: [AdmissionsService], exports: [AdmissionsService] })
export class AdmissionsModule {}
