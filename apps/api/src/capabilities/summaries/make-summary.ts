import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { Standing } from "@evenhand/shared/outcome";
import type { Report } from "@evenhand/shared/report";
import type { Summary, SummaryCost, SummaryItem, SummarySource } from "@evenhand/shared/summary";
import { costsAtStake } from "@evenhand/decision/costs-at-stake";
import { costSum } from "@evenhand/decision/cost-sum";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { OrderedComparison } from "../comparisons/index.ts";

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
const draws = 10_000;

const openStandings: ReadonlySet<Standing> = new Set([
  "in-doubt",
  "differs",
  "contradicted-by-figures",
  "not-mentioned",
  "unseen",
  "agreed-fault",
]);

const toItem = (entry: Entry, index: number): SummaryItem => ({
  entry: index,
  item: entry.item,
  position: entry.position,
  outcome: entry.outcome,
  standing: entry.standing,
  direction: entry.direction,
  consequence: entry.consequence,
  reason: entry.reason,
});

/** Safety items that are in doubt, bad, unmentioned or unseen: each is to be acknowledged in words before approving. */
export const isOpenSafety = (entry: Entry): boolean =>
  entry.consequence === "safety" && openStandings.has(entry.standing) && entry.coverageOnly !== true;

const isUnseenAndHeavy = (entry: Entry): boolean =>
  entry.outcome === "unseen" && (entry.consequence === "safety" || entry.consequence === "structure");

function itemsWhere(comparison: Comparison, holds: (entry: Entry) => boolean): SummaryItem[] {
  return comparison.entries.flatMap((entry, index) => (holds(entry) ? [toItem(entry, index)] : []));
}

/** Drawn with a seed from the comparison's own hash: the same summary, the same figures. */
function costOf(comparison: Comparison, hash: string, inspection: Report, table: CostTable): SummaryCost {
  const atStake = costsAtStake({ comparison, found: inspection, sheet: sheetVersion1, table });
  const seed = Number.parseInt(hash.slice(0, 8), 16);
  const sum = costSum(atStake.costs, { correlation: atStake.correlation, draws, seed });
  return {
    currency: atStake.currency,
    table: table.name,
    rows: atStake.costs.map(({ row, entries, probability, low, likely, high }) => ({
      row,
      entries: [...entries],
      probability,
      low: Math.round(low),
      likely: Math.round(likely),
      high: Math.round(high),
    })),
    unset: [...new Set(atStake.unset.map(({ row }) => row))],
    total: { low: Math.round(sum.p10), likely: Math.round(sum.p50), high: Math.round(sum.p90) },
    draws,
    seed,
  };
}

const versionOf = ({ id, version, seal }: OrderedComparison["statement"]) => ({ id, version, seal });

/** The snapshot the buyer decides on. Nothing in it is looked up again later. */
export function makeSummary({ id, createdAt, ordered, releases, costTable, sources }: SummaryParts): Summary {
  const { comparison, hash } = ordered;
  return {
    format: "evenhand-summary",
    version: 1,
    id,
    createdAt: createdAt.toISOString(),
    vehicle: { id: ordered.vehicleId, ...comparison.vehicle },
    dealer: ordered.dealerId,
    inspector: ordered.inspectorId,
    comparison: { id: ordered.id, engine: ordered.engine, hash },
    statement: versionOf(ordered.statement),
    inspection: versionOf(ordered.inspection),
    standings: comparison.standings,
    coverage: comparison.coverage.whole,
    inDoubt: comparison.order.flatMap((index) => {
      const entry = comparison.entries[index];
      return entry === undefined ? [] : [toItem(entry, index)];
    }),
    unseen: itemsWhere(comparison, isUnseenAndHeavy),
    openSafety: itemsWhere(comparison, isOpenSafety),
    releases,
    cost: costTable === null ? null : costOf(comparison, hash, ordered.b, costTable),
    cautions,
    sources: [...sources],
  };
}
