export { SitesModule } from "./sites.module.ts";
export { siteOfVehicle } from "./sites.queries.ts";
export { SitesService } from "./sites.service.ts";
