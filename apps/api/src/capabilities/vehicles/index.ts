export { readOpenFaults } from "./open-faults.ts";
export { VehiclesModule } from "./vehicles.module.ts";
export { VehiclesService } from "./vehicles.service.ts";
