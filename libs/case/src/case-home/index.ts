import type { CaseRow, CaseStanding } from "@evenhand/shared/http/cases";

type Row = Pick<CaseRow, "id" | "as"> & { readonly standing: CaseStanding };

/** The earliest deadline first; what has none comes after, the oldest case first. */
function byDeadline(a: Row, b: Row): number {
  const [x, y] = [a.standing.next?.until ?? "~", b.standing.next?.until ?? "~"];
  if (x !== y) return x < y ? -1 : 1;
  return a.id < b.id ? -1 : 1;
}

const newestFirst = (a: Row, b: Row): number => (a.id < b.id ? 1 : -1);

export type Sorted<R> = { readonly yours: R[]; readonly others: R[]; readonly rest: R[] };

/**
 * A first screen: cases whose next step is the person's own, those in which another's is awaited, both by deadline, and those in
 * which nothing is open, the newest first.
 *
 * @example sortHome([]) // { yours: [], others: [], rest: [] }
 */
export const sortHome = <R extends Row>(rows: readonly R[]): Sorted<R> => {
  const open = rows.filter(({ standing }) => standing.next !== null).toSorted(byDeadline);
  return {
    yours: open.filter((row) => row.standing.next?.of === row.as),
    others: open.filter((row) => row.standing.next?.of !== row.as),
    rest: rows.filter(({ standing }) => standing.next === null).toSorted(newestFirst),
  };
};
