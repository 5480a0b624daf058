export { OperationsService } from "./operations.service.ts";
export { ReportVersionsService } from "./report-versions.service.ts";
export { ReportsModule } from "./reports.module.ts";
export { ReportsService } from "./reports.service.ts";
export { SealingService } from "./sealing.service.ts";
