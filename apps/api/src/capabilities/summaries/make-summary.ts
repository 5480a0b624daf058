import type { Entry } from "@evenhand/shared/comparison";
import type { CostTable } from "@evenhand/shared/cost-table";
import { isDecisive, type Severity, severityRank } from "@evenhand/shared/severity";
import type { Summary, SummaryItem, SummarySource } from "@evenhand/shared/summary";
import { isFoundBad } from "@evenhand/comparison/found-bad";
import { saidOf } from "@evenhand/matters/headline";
import { openMatters } from "@evenhand/matters/open-matters";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
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
const sheet = compileSheet(sheetVersion1);

const toItem = (entry: Entry, index: number, { a, b }: OrderedComparison): SummaryItem => ({
  entry: index,
  item: entry.item,
  position: entry.position,
  outcome: entry.outcome,
  standing: entry.standing,
  direction: entry.direction,
  severity: entry.severity,
  found: isFoundBad(entry),
  reason: entry.reason,
  said: {
    stated: saidOf(entry, "a", { a, b, sheet }) ?? null,
    found: saidOf(entry, "b", { a, b, sheet }) ?? null,
  },
});

const rankOf = (severity: Severity | null): number => severityRank(severity ?? "small");

/** The lines of entries by their indexes. */
const linesAt = (ordered: OrderedComparison, indexes: readonly number[]): SummaryItem[] =>
  indexes.flatMap((index) => {
    const entry = ordered.comparison.entries[index];
    return entry === undefined ? [] : [toItem(entry, index, ordered)];
  });

const indexesOf = ({ comparison }: OrderedComparison, is: (entry: Entry) => boolean): number[] =>
  comparison.entries.flatMap((entry, index) => (is(entry) ? [index] : []));

/** Gravest first. */
const gravest = (items: SummaryItem[]): SummaryItem[] =>
  items.toSorted((one, other) => rankOf(one.severity) - rankOf(other.severity) || one.entry - other.entry);

const isAdmitted = (entry: Entry | undefined): boolean => entry?.standing === "agreed-fault";
const isUnseen = ({ outcome, severity }: Entry): boolean => outcome === "unseen" && isDecisive(severity);

/** What is counted and listed of the comparison's lines. */
function listsOf(ordered: OrderedComparison): Pick<Summary, "inDoubt" | "unseen" | "bothBad"> {
  const { entries, order } = ordered.comparison;
  return {
    // What both say is bad ranks among them, and nobody doubts it.
    inDoubt: linesAt(
      ordered,
      order.filter((index) => !isAdmitted(entries[index])),
    ),
    // What a purchase can turn on and nobody saw.
    unseen: gravest(linesAt(ordered, indexesOf(ordered, isUnseen))),
    bothBad: gravest(linesAt(ordered, indexesOf(ordered, isAdmitted))),
  };
}

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
  const { comparison, answer } = ordered;
  const matters = [...answer.matters, ...answer.unknown].map(({ matter }) => matter);
  return {
    format: "evenhand-summary",
    version: 2,
    id,
    createdAt: createdAt.toISOString(),
    ...factsOf(ordered),
    standings: comparison.standings,
    coverage: comparison.coverage.whole,
    ...listsOf(ordered),
    matters: summaryMatters(matters, releases),
    openMatters: openMatters(matters).map((open) => ({
      ...open,
      matters: [...open.matters],
      lines: linesAt(ordered, open.lines),
    })),
    broken: comparison.crossChecks.filter(({ verdict }) => verdict === "breaks"),
    releases,
    cost: costTable === null ? null : summaryCostOf(ordered, costTable),
    cautions,
    sources: [...sources],
  };
}
