export { VehiclesModule } from "./vehicles.module.ts";
export { VehiclesService } from "./vehicles.service.ts";
