import type { Comparison } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { type NotReleasable, whyNotReleasable } from "../releasable/index.ts";
import { type ReleaseSnapshot, snapshotOf } from "../release-snapshot/index.ts";

export type Compared = { readonly comparison: Comparison; readonly a: Report; readonly b: Report };
export type ChosenEntry = { readonly index: number; readonly snapshot: ReleaseSnapshot };
/** `place`: where it stands among the entries asked for. */
export type RefusedEntry = { readonly place: number; readonly why: NotReleasable | "no-such-entry" };

/**
 * Sorts the entries a buyer wants to lay before the dealer into those that can be, each once, and those that cannot, with why.
 *
 * @param entries indexes of the comparison's entries, as asked for
 */
export function chooseEntries(
  { comparison, a, b }: Compared,
  entries: readonly number[],
): { readonly chosen: readonly ChosenEntry[]; readonly refused: readonly RefusedEntry[] } {
  const chosen = new Map<number, ChosenEntry>();
  const refused: RefusedEntry[] = [];
  for (const [place, index] of entries.entries()) {
    const snapshot = snapshotOf(comparison, index, a, b);
    const why = snapshot === null ? "no-such-entry" : whyNotReleasable(snapshot.entry);
    if (why !== null) refused.push({ place, why });
    else if (snapshot !== null) chosen.set(index, { index, snapshot });
  }
  return { chosen: [...chosen.values()], refused };
}
