export { ComplaintsModule } from "./complaints.module.ts";
