import type { Entry } from "@evenhand/shared/comparison";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";

/** What became of a car's statements in one section. */
export type SectionCounts = {
  confirmed: number;
  notContradicted: number;
  fell: number;
  /** Settled by money: what was true is not known. */
  leftOut: number;
};

export type CarCounts = ReadonlyMap<string, SectionCounts>;

const what = ({ standing, direction, coverageOnly }: Entry): keyof SectionCounts | undefined => {
  if (coverageOnly === true) return undefined;
  switch (standing) {
    case "confirmed":
    case "agreed-fault":
      return "confirmed";
    case "not-contradicted":
      return "notContradicted";
    case "contradicted-by-figures":
      return "fell";
    case "differs":
      return direction === "found-better" ? undefined : "fell";
    default:
      return undefined;
  }
};

/**
 * What became of a statement by section: what was confirmed (a fault it disclosed and the inspection found, too), what was
 * not contradicted, what fell. What is in doubt, too coarse to test, unseen or never stated says nothing of whether it held
 * up, and neither does what was found better than stated. What was settled by money is left out and counted as such.
 *
 * @param settledByMoney indexes of entries whose dispute ended in money
 * @example heldUpCounts(comparison.entries, sheet, new Set()).get("body") // { confirmed: 31, notContradicted: 12, … }
 */
export const heldUpCounts = (
  entries: readonly Entry[],
  sheet: CompiledSheet,
  settledByMoney: ReadonlySet<number>,
): CarCounts => {
  const sections = new Map<string, SectionCounts>();
  for (const [index, entry] of entries.entries()) {
    const kind = what(entry);
    const section = sheet.items.get(entry.item)?.item.section;
    if (kind === undefined || section === undefined) continue;
    const counts = sections.get(section) ?? { confirmed: 0, notContradicted: 0, fell: 0, leftOut: 0 };
    counts[settledByMoney.has(index) ? "leftOut" : kind] += 1;
    sections.set(section, counts);
  }
  return sections;
};
