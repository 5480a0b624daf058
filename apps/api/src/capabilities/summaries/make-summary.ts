import type { CostTable } from "@evenhand/shared/cost-table";
import type { Summary, SummarySource } from "@evenhand/shared/summary";
import { openMatters } from "@evenhand/matters/open-matters";
import { summaryLines, summaryLists } from "@evenhand/matters/summary-lists";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import type { OrderedComparison } from "../comparisons/index.ts";
import { summaryCostOf } from "./cost-at-stake.ts";
import { summaryMatters } from "./summary-matters.ts";

export type SummaryParts = {
  id: string;
  createdAt: Date;
  ordered: OrderedComparison;
  releases: Summary["releases"];
  costTable: CostTable | null;
  sources: readonly SummarySource[];
};

/** Codes; the sentences are worded where they are shown. */
const cautions = ["not-a-certificate", "not-a-valuation", "not-a-contract", "local-law", "licensed-mechanic"];

const versionOf = ({ id, version, seal }: OrderedComparison["statement"]) => ({ id, version, seal });

/** Whose car, which reports, which comparison. */
const factsOf = (ordered: OrderedComparison) => ({
  vehicle: { id: ordered.vehicleId, ...ordered.comparison.vehicle },
  dealer: ordered.dealerId,
  inspector: ordered.inspectorId,
  comparison: { id: ordered.id, engine: ordered.engine, hash: ordered.hash },
  statement: versionOf(ordered.statement),
  inspection: versionOf(ordered.inspection),
});

/** The snapshot the buyer decides on. Nothing in it is looked up again later. */
export function makeSummary(parts: SummaryParts): Summary {
  const { id, createdAt, ordered, releases, costTable, sources } = parts;
  const { comparison, answer, a, b } = ordered;
  const reports = { a, b, sheet };
  const matters = [...answer.matters, ...answer.unknown].map(({ matter }) => matter);
  return {
    format: "evenhand-summary",
    version: 2,
    id,
    createdAt: createdAt.toISOString(),
    ...factsOf(ordered),
    standings: comparison.standings,
    coverage: comparison.coverage.whole,
    ...summaryLists(comparison, reports),
    matters: summaryMatters(matters, releases),
    openMatters: openMatters(matters).map((open) => ({
      ...open,
      matters: [...open.matters],
      lines: summaryLines(open.lines, comparison, reports),
    })),
    broken: comparison.crossChecks.filter(({ verdict }) => verdict === "breaks"),
    releases,
    cost: costTable === null ? null : summaryCostOf(ordered, costTable),
    cautions,
    sources: [...sources],
  };
}
