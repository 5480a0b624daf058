export { SitesModule } from "./sites.module.ts";
export { siteOfVehicle, zoneOfVehicle } from "./sites.queries.ts";
export { SitesService } from "./sites.service.ts";
