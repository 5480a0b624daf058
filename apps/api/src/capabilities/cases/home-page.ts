import { sortHome } from "@evenhand/case/case-home";
import type { CaseHome, CaseRow, UnsealedDraft } from "@evenhand/shared/http/cases";

type HomeAs = {
  readonly open: number;
  readonly drafts: readonly UnsealedDraft[];
  readonly drafting: number;
  /** The newest first; of those that are not open one more than the page holds, where there are more. */
  readonly items: readonly { readonly open: boolean; readonly row: CaseRow }[];
};

/** Reports that are not sealed, without those that sealing is the next step of a case for: the same deed stands once. */
function draftsOf(
  homes: readonly HomeAs[],
  yours: readonly CaseRow[],
): Pick<CaseHome, "drafts" | "drafting"> {
  const led = new Set(yours.map(({ standing }) => standing.next?.subject));
  const all = homes.flatMap(({ drafts }) => drafts);
  const drafts = all.filter(({ id }) => !led.has(id));
  const drafting = homes.reduce((sum, home) => sum + home.drafting, 0);
  return { drafts, drafting: drafting - (all.length - drafts.length) };
}

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
  const sorted = sortHome([...opened, ...shown]);
  return {
    ...sorted,
    ...draftsOf(homes, sorted.yours),
    open: homes.reduce((sum, { open }) => sum + open, -atRest),
    next: last ?? null,
  };
}
