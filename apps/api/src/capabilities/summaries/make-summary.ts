import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { Report } from "@evenhand/shared/report";
import { isDecisive, type Severity, severityRank } from "@evenhand/shared/severity";
import type { Summary, SummaryCost, SummaryItem, SummarySource } from "@evenhand/shared/summary";
import { costsAtStake } from "@evenhand/decision/costs-at-stake";
import { isFoundBad } from "@evenhand/comparison/found-bad";
import { costSum } from "@evenhand/decision/cost-sum";
import { openMatters } from "@evenhand/decision/open-matters";
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

const toItem = (entry: Entry, index: number): SummaryItem => ({
  entry: index,
  item: entry.item,
  position: entry.position,
  outcome: entry.outcome,
  standing: entry.standing,
  direction: entry.direction,
  severity: entry.severity,
  found: isFoundBad(entry),
  reason: entry.reason,
});

/** What a purchase can turn on and nobody saw, gravest first. */
function unseenOf({ entries }: Comparison): SummaryItem[] {
  return entries
    .flatMap((entry, index) =>
      entry.outcome === "unseen" && isDecisive(entry.severity) ? [toItem(entry, index)] : [],
    )
    .toSorted((one, other) => rankOf(one.severity) - rankOf(other.severity) || one.entry - other.entry);
}

const rankOf = (severity: Severity | null): number => severityRank(severity ?? "small");

/** The lines of entries by their indexes. */
function linesAt({ entries }: Comparison, indexes: readonly number[]): SummaryItem[] {
  return indexes.flatMap((index) => {
    const entry = entries[index];
    return entry === undefined ? [] : [toItem(entry, index)];
  });
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
    // What both say is bad ranks among them, and nobody doubts it.
    inDoubt: linesAt(
      comparison,
      comparison.order.filter((index) => comparison.entries[index]?.standing !== "agreed-fault"),
    ),
    unseen: unseenOf(comparison),
    openMatters: openMatters(comparison.entries).map(({ matter, severity, entries }) => ({
      matter,
      severity,
      lines: linesAt(comparison, entries),
    })),
    releases,
    cost: costTable === null ? null : costOf(comparison, hash, ordered.b, costTable),
    cautions,
    sources: [...sources],
  };
}
