export { mattersReleased } from "./analysis.ts";
export { ComparisonsModule } from "./comparisons.module.ts";
export { comparisonJson } from "./comparisons.queries.ts";
export { ComparisonsService } from "./comparisons.service.ts";
export type { OrderedComparison } from "./ordered-comparison.ts";
