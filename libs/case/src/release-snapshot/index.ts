import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { ReleasedFinding } from "@evenhand/shared/http/releases";
import type { Report } from "@evenhand/shared/report";

/** What the dealer gets to see of one entry. */
export type ReleaseSnapshot = {
  readonly entry: Entry;
  readonly a: ReleasedFinding | null;
  readonly b: ReleasedFinding | null;
};

/** The finding without who made it, and with the instrument's name in place of the report's own id for it. */
function show(report: Report, index: number | null): ReleasedFinding | null {
  const finding = index === null ? undefined : report.findings[index];
  if (finding === undefined) return null;
  const { person: _person, instrument, ...rest } = finding;
  const named = report.instruments.find((each) => each.id === instrument);
  return { ...rest, instrumentName: named?.name ?? null };
}

/** The entry without what only the other readings of the report tell: the q-value, and whether the pair scatters more than declared. */
const byItself = (entry: Entry): Entry => {
  const { figures } = entry;
  const marks = entry.marks.filter((mark) => mark !== "only-as-declared");
  return figures?.of === "reading"
    ? { ...entry, marks, figures: { ...figures, qValue: null } }
    : { ...entry, marks };
};

/**
 * The two answers of one entry as they stood when it was released, and nothing that the rest of the inspection has a part in.
 *
 * @param index of the entry in the comparison
 * @returns `null` where the comparison has no such entry
 */
export const snapshotOf = (
  comparison: Comparison,
  index: number,
  a: Report,
  b: Report,
): ReleaseSnapshot | null => {
  const entry = comparison.entries[index];
  return entry === undefined
    ? null
    : { entry: byItself(entry), a: show(a, entry.finding.a), b: show(b, entry.finding.b) };
};
