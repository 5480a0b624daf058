export { CasesModule } from "./cases.module.ts";
export { OpenCases } from "./open-cases.ts";
