export { AdmissionsModule } from "./admissions.module.ts";
export { AdmissionsService } from "./admissions.service.ts";
