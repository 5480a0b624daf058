export { OrdersModule } from "./orders.module.ts";
export { type LockedOrder, OrdersService } from "./orders.service.ts";
export { maySeeOrder, orderJson } from "./orders.queries.ts";
export { VisitOrdersService } from "./visit-orders.service.ts";
