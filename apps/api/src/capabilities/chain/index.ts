export { ChainModule } from "./chain.module.ts";
