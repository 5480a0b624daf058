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
  (search.q === undefined || matchesWords(row, search.q));

export const isFiltered = ({ outcome, standing, severity, section, station, q }: ComparisonSearch): boolean =>
  [outcome, standing, severity, section, station, q].some((one) => one !== undefined);

/** What is seen, sound and was not stated counts in coverage only; it is listed when asked for by search or place. */
export const visibleRows = (rows: readonly Row[], search: ComparisonSearch): readonly Row[] =>
  rows.filter((row) => row.entry.coverageOnly !== true && matches(row, search));

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
