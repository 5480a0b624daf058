export { NewLooks } from "./new-looks.ts";
export { ReleasesModule } from "./releases.module.ts";
export { ReleasesService } from "./releases.service.ts";
export { SettlementService } from "./settlement.service.ts";
