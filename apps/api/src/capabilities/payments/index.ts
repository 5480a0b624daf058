export { Payments } from "./payments.ts";
export { PaymentsModule } from "./payments.module.ts";
