import { type Comparison, type Entry, isStatedWorse } from "@evenhand/shared/comparison";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { lineKey } from "../line-key/index.ts";

/** What upheld a fall when the comparison was made: figures, or a second look; `null` where one look alone speaks for it. */
type UpheldBy = "figures" | "second-look" | null;

/** A statement that was found worse, by its `lineKey`. */
export type Fall = { readonly line: string; readonly by: UpheldBy };

/** What was stated in one section, and what became of it. */
export type SectionCounts = {
  /** Places of the sheet that apply to the car. */
  readonly places: number;
  /** Places of which something was stated. */
  readonly stated: number;
  /** Statements that the inspection bore out; a fault that was disclosed and found, too. */
  readonly confirmed: number;
  /** Statements too soft or too coarse to be borne out, that nothing contradicts. */
  readonly notContradicted: number;
  readonly falls: readonly Fall[];
  /** Faults that the statement made out worse than they were found: to the dealer's credit, and in no other count. */
  readonly statedWorse: number;
};

/** By section. Kept with a comparison as it is: only facts of the two reports stand in it, nothing that is decided later. */
export type StatementCounts = Readonly<Record<string, SectionCounts>>;

type Fate = "confirmed" | "notContradicted" | Fall;

const fateOf = (entry: Entry): Fate | undefined => {
  if (entry.coverageOnly === true) return undefined;
  switch (entry.standing) {
    case "confirmed":
    case "agreed-fault":
      return "confirmed";
    case "not-contradicted":
      return "notContradicted";
    case "contradicted-by-figures":
      return { line: lineKey(entry), by: "figures" };
    case "differs":
      return entry.direction === "found-better"
        ? undefined
        : { line: lineKey(entry), by: entry.marks.includes("looked-twice") ? "second-look" : null };
    default:
      return undefined;
  }
};

const counted = (counts: SectionCounts, fate: Fate): SectionCounts =>
  typeof fate === "string"
    ? { ...counts, [fate]: counts[fate] + 1 }
    : { ...counts, falls: [...counts.falls, fate] };

const credited = (counts: SectionCounts, entry: Entry): SectionCounts =>
  isStatedWorse(entry) ? { ...counts, statedWorse: counts.statedWorse + 1 } : counts;

/**
 * What became of a statement, by section: what was confirmed, not contradicted, found worse, and how much was stated at all.
 * What is in doubt, too coarse to test, unseen or never stated says nothing of whether it held up, and neither does what was
 * found better than stated; a fault that was made out worse than found is credited beside it.
 *
 * @example statementCounts(comparison, sheet)["body"] // { places: 96, stated: 80, confirmed: 31, notContradicted: 12, falls: [], … }
 */
export const statementCounts = (
  { entries, coverage }: Pick<Comparison, "entries" | "coverage">,
  sheet: CompiledSheet,
): StatementCounts => {
  const sections = new Map<string, SectionCounts>(
    coverage.bySection.map(({ of, onSheet, stated }) => [
      of,
      { places: onSheet, stated, confirmed: 0, notContradicted: 0, falls: [], statedWorse: 0 },
    ]),
  );
  for (const entry of entries) {
    const fate = fateOf(entry);
    const section = sheet.items.get(entry.item)?.item.section;
    const counts = section === undefined ? undefined : sections.get(section);
    if (section === undefined || counts === undefined) continue;
    sections.set(section, credited(fate === undefined ? counts : counted(counts, fate), entry));
  }
  return Object.fromEntries(sections);
};
