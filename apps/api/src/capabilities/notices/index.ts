export { NoticesModule } from "./notices.module.ts";
export { NoticesService } from "./notices.service.ts";
