import { sortHome } from "@evenhand/case/case-home";
import type { CaseHome, CaseRow } from "@evenhand/shared/http/cases";

type HomeAs = {
  readonly open: number;
  /** The newest first; of those that are not open one more than the page holds, where there are more. */
  readonly items: readonly { readonly open: boolean; readonly row: CaseRow }[];
};

/** The page of several homes as one: no more of what is not open than fits, whichever home it comes from. */
export function pageOf(homes: readonly HomeAs[], limit: number): Omit<CaseHome, "desk"> {
  const items = homes.flatMap((home) => home.items);
  const closed = items
    .filter(({ open }) => !open)
    .map(({ row }) => row)
    .toSorted((a, b) => (a.id < b.id ? 1 : -1));
  const last = closed.length > limit ? closed[limit - 1]?.id : undefined;
  const shown = last === undefined ? closed : closed.filter(({ id }) => id >= last);
  const opened = items.filter(({ open }) => open).map(({ row }) => row);
  // Taken for open, and found to be at rest: these stand among the rest.
  const atRest = opened.filter(({ standing }) => standing.next === null).length;
  return {
    ...sortHome([...opened, ...shown]),
    open: homes.reduce((sum, { open }) => sum + open, -atRest),
    next: last ?? null,
  };
}
