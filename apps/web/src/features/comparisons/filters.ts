import type { Outcome } from "@evenhand/shared/outcome";
import type { Answer } from "@evenhand/shared/page-one";
import type { Row } from "../../entities/comparison/model";
import type { ComparisonSearch } from "./search";
import { spelled } from "../../entities/sheet/sheet-index";

const matchesWords = (row: Row, q: string): boolean =>
  q
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "")
    .every((word) => row.words.includes(word));

export const matches = (row: Row, search: ComparisonSearch): boolean =>
  (search.outcome === undefined || search.outcome.includes(row.entry.outcome)) &&
  (search.standing === undefined || row.entry.standing === search.standing) &&
  (search.severity === undefined || row.entry.severity === search.severity) &&
  (search.section === undefined || row.section?.id === search.section) &&
  (search.station === undefined || row.station === search.station) &&
  (search.mark === undefined || row.entry.marks.includes(search.mark)) &&
  (search.q === undefined || matchesWords(row, search.q));

/** Every filter taken away; the order stays. */
export const noFilter: Partial<ComparisonSearch> = {
  outcome: undefined,
  standing: undefined,
  severity: undefined,
  section: undefined,
  station: undefined,
  mark: undefined,
  matter: undefined,
  q: undefined,
};

export const isFiltered = (search: ComparisonSearch): boolean =>
  [
    search.outcome,
    search.standing,
    search.severity,
    search.section,
    search.station,
    search.mark,
    search.matter,
    search.q,
  ].some((one) => one !== undefined);

/** The lines of the matter that is asked for by its place; `undefined` where none is. */
export const linesOfMatter = (
  { matters, unknown }: Pick<Answer, "matters" | "unknown">,
  place: number | undefined,
): ReadonlySet<number> | undefined => {
  const one = place === undefined ? undefined : [...matters, ...unknown][place];
  return one === undefined ? undefined : new Set(one.matter.lines);
};

/** What is seen, sound and was not stated counts in coverage only and is not listed. */
export const visibleRows = (
  rows: readonly Row[],
  search: ComparisonSearch,
  ofMatter?: ReadonlySet<number>,
): readonly Row[] =>
  rows.filter(
    (row) =>
      row.entry.coverageOnly !== true &&
      matches(row, search) &&
      (ofMatter === undefined || ofMatter.has(row.at)),
  );

/** How many lines of each outcome. */
export const countsOf = (rows: readonly Row[]): Partial<Record<Outcome, number>> => {
  const counts: Partial<Record<Outcome, number>> = {};
  for (const { entry } of rows) counts[entry.outcome] = (counts[entry.outcome] ?? 0) + 1;
  return counts;
};

export interface Group {
  readonly id: string;
  readonly title: string;
  readonly number: number | null;
  readonly rows: readonly Row[];
}

/** As on the sheet: sections in walking order. */
export const bySection = (rows: readonly Row[]): readonly Group[] => {
  const groups = new Map<string, { title: string; number: number | null; rows: Row[] }>();
  for (const row of rows) {
    const id = row.section?.id ?? "";
    const group = groups.get(id) ?? {
      title: row.section?.words.american ?? spelled(id),
      number: row.section?.number ?? null,
      rows: [],
    };
    group.rows.push(row);
    groups.set(id, group);
  }
  return [...groups].map(([id, group]) => ({ id, ...group }));
};

/** Most pressing first; what is no discrepancy follows in sheet order. */
export const byPressing = (
  rows: readonly Row[],
): { readonly pressing: readonly Row[]; readonly rest: readonly Row[] } => ({
  pressing: rows.filter((row) => row.rank !== null).sort((one, other) => (one.rank ?? 0) - (other.rank ?? 0)),
  rest: rows.filter((row) => row.rank === null),
});
