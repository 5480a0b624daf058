export { HandbookModule } from "./handbook.module.ts";
export { FirmHandbooksService } from "./firm-handbooks.service.ts";
