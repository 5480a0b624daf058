export { AdmissionsModule } from "./admissions.module.ts";
