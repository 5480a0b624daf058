export { HistoryModule } from "./history.module.ts";
export { HistoryTables } from "./history-tables.ts";
