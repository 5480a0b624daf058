export { OrganizationsModule } from "./organizations.module.ts";
export { OrganizationsService } from "./organizations.service.ts";
