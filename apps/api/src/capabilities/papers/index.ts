export { PapersModule } from "./papers.module.ts";
