export { AnswerCostService } from "./answer-cost.service.ts";
export { bought } from "./bought.ts";
export { CostTablesService } from "./cost-tables.service.ts";
export { DecisionsService } from "./decisions.service.ts";
export { OffersService } from "./offers.service.ts";
export { SummariesModule } from "./summaries.module.ts";
export { SummariesService } from "./summaries.service.ts";
