export { ComplaintsModule } from "./complaints.module.ts";
export { ComplaintsService } from "./complaints.service.ts";
