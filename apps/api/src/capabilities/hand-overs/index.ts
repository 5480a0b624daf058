export { HandOversModule } from "./hand-overs.module.ts";
