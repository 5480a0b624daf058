export { DigestService } from "./digest.service.ts";
export { NoticesModule } from "./notices.module.ts";
export { unreadCount } from "./notices.queries.ts";
export { NoticesService } from "./notices.service.ts";
