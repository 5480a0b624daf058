export { OperationsService } from "./operations.service.ts";
export { ReportsModule } from "./reports.module.ts";
export { ReportsService } from "./reports.service.ts";
export { SealingService } from "./sealing.service.ts";
