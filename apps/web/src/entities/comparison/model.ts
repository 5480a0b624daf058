import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { Item, Section } from "@evenhand/shared/sheet";
import { positionStation, positionWords, searchWords, type SheetIndex, spelled } from "../sheet/sheet-index";

/** What the page reads: the stored comparison and, where the reader may see them, the two reports. */
export interface ComparisonSource {
  readonly index: SheetIndex;
  readonly comparison: Comparison;
  readonly a: Report;
  readonly b: Report;
}

/** One line of the facing pages. */
export interface Row {
  /** Index into the comparison's entries: the address of the line. */
  readonly at: number;
  readonly entry: Entry;
  readonly item: Item | undefined;
  readonly section: Section | undefined;
  readonly name: string;
  readonly place: string;
  readonly station: string | undefined;
  readonly a: Finding | null;
  readonly b: Finding | null;
  /** Place in "most pressing first"; `null` where it is no discrepancy. */
  readonly rank: number | null;
  readonly broken: readonly CrossCheck[];
  /** Lower case, everything it may be looked for by. */
  readonly words: string;
}

const place = (item: string, position: string): string => `${item}@${position}`;

const brokenByPlace = (comparison: Comparison): ReadonlyMap<string, readonly CrossCheck[]> => {
  const found = new Map<string, CrossCheck[]>();
  for (const check of comparison.crossChecks) {
    if (check.verdict !== "breaks") continue;
    const read = check.claim ? [check.claim] : check.reads;
    for (const key of new Set(read.map((one) => place(one.item, one.position)))) {
      const list = found.get(key);
      if (list) list.push(check);
      else found.set(key, [check]);
    }
  }
  return found;
};

export const comparisonRows = ({ index, comparison, a, b }: ComparisonSource): readonly Row[] => {
  const rank = new Map(comparison.order.map((at, pressing) => [at, pressing]));
  const broken = brokenByPlace(comparison);
  return comparison.entries.map((entry, at) => {
    const item = index.items.get(entry.item);
    const section = item && index.sections.get(item.section);
    const where = positionWords(index, item, entry.position);
    const positions = item?.positions === undefined ? undefined : index.positions.get(item.positions);
    return {
      at,
      entry,
      item,
      section,
      name: item?.words.american ?? spelled(entry.item),
      place: where,
      station: positionStation(index, item, entry.position) ?? section?.station,
      a: entry.finding.a === null ? null : (a.findings[entry.finding.a] ?? null),
      b: entry.finding.b === null ? null : (b.findings[entry.finding.b] ?? null),
      rank: rank.get(at) ?? null,
      broken: broken.get(place(entry.item, entry.position)) ?? [],
      words: [
        searchWords(item?.words),
        searchWords(positions?.get(entry.position)?.words),
        where.toLowerCase(),
        searchWords(section?.words),
        entry.atom.of === "answer" ? "" : searchWords(index.faultKinds.get(entry.atom.kind)?.words),
      ].join(" "),
    };
  });
};
