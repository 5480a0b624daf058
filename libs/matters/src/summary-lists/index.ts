import type { Comparison, Entry } from "@evenhand/shared/comparison";
import { isDecisive, severityRank } from "@evenhand/shared/severity";
import type { Summary, SummaryItem } from "@evenhand/shared/summary";
import { isFoundBad } from "@evenhand/comparison/found-bad";
import { saidOf } from "../headline/index.ts";
import type { Reports } from "../headline/index.ts";

const lineOf = (entry: Entry, index: number, reports: Reports): SummaryItem => ({
  entry: index,
  item: entry.item,
  position: entry.position,
  outcome: entry.outcome,
  standing: entry.standing,
  direction: entry.direction,
  severity: entry.severity,
  found: isFoundBad(entry),
  reason: entry.reason,
  said: { stated: saidOf(entry, "a", reports) ?? null, found: saidOf(entry, "b", reports) ?? null },
});

type Entries = Pick<Comparison, "entries">;

/**
 * Lines of a comparison as a summary keeps them: what each side said is kept in words, so that nothing is looked up again.
 *
 * @param indexes into the comparison's entries; one that is not there is passed over
 * @example summaryLines([4], comparison, reports)[0]?.said // { stated: "works", found: "does not work" }
 */
export const summaryLines = (
  indexes: readonly number[],
  { entries }: Entries,
  reports: Reports,
): SummaryItem[] =>
  indexes.flatMap((index) => {
    const entry = entries[index];
    return entry === undefined ? [] : [lineOf(entry, index, reports)];
  });

const indexesOf = ({ entries }: Entries, is: (entry: Entry) => boolean): number[] =>
  entries.flatMap((entry, index) => (is(entry) ? [index] : []));

const rankOf = ({ severity }: SummaryItem): number => severityRank(severity ?? "small");

const gravestFirst = (lines: readonly SummaryItem[]): SummaryItem[] =>
  lines.toSorted((one, other) => rankOf(one) - rankOf(other) || one.entry - other.entry);

/** Said to be bad by both. */
const isAdmitted = ({ standing }: Entry): boolean => standing === "agreed-fault";

/** What a purchase can turn on and nobody saw. */
const isDecisiveUnseen = ({ outcome, severity }: Entry): boolean =>
  outcome === "unseen" && isDecisive(severity);

/**
 * What a buyer decides on, line by line: what is in doubt in the comparison's own order, what a purchase can turn on and nobody saw,
 * and what both say is bad, the gravest first. What both say is bad ranks among the first, and nobody doubts it.
 *
 * @example summaryLists(comparison, reports).bothBad.map(({ item }) => item) // ["electrics.horn"]
 */
export const summaryLists = (
  comparison: Pick<Comparison, "entries" | "order">,
  reports: Reports,
): Pick<Summary, "inDoubt" | "unseen" | "bothBad"> => {
  const lines = (indexes: readonly number[]) => summaryLines(indexes, comparison, reports);
  const admitted = new Set(indexesOf(comparison, isAdmitted));
  return {
    inDoubt: lines(comparison.order.filter((index) => !admitted.has(index))),
    unseen: gravestFirst(lines(indexesOf(comparison, isDecisiveUnseen))),
    bothBad: gravestFirst(lines([...admitted])),
  };
};
