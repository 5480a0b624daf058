import { Module } from "@nestjs/common";
import { AdmissionsModule } from "../admissions/index.ts";
import { BookingModule } from "../booking/index.ts";
import { ComparisonsModule } from "../comparisons/index.ts";
import { EvidenceModule } from "../evidence/index.ts";
import { HandbookModule } from "../handbook/index.ts";
import { InstrumentsModule } from "../instruments/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { OrdersModule } from "../orders/index.ts";
import { ReleasesModule } from "../releases/index.ts";
import { VehiclesModule } from "../vehicles/index.ts";
import { OperationsService } from "./operations.service.ts";
import { ReportVersionsService } from "./report-versions.service.ts";
import { ReportsController } from "./reports.controller.ts";
import { ReportsService } from "./reports.service.ts";
import { SealingService } from "./sealing.service.ts";
import { SecondLooksService } from "./second-look.service.ts";

@Module({
  imports: [
    AdmissionsModule,
    BookingModule,
    ComparisonsModule,
    EvidenceModule,
    HandbookModule,
    InstrumentsModule,
    NoticesModule,
    OrdersModule,
    ReleasesModule,
    VehiclesModule,
  ],
  controllers: [ReportsController],
  providers: [ReportsService, OperationsService, SealingService, SecondLooksService, ReportVersionsService],
  exports: [ReportsService, OperationsService, SealingService, ReportVersionsService],
})
export class ReportsModule {}
