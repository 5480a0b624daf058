export { DeadlinesModule } from "./deadlines.module.ts";
export { DeadlinesService } from "./deadlines.service.ts";
