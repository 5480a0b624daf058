export { MoneyModule } from "./money.module.ts";
