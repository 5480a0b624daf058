import { whyNotReleasable } from "@evenhand/case/releasable";
import type { Entry } from "@evenhand/shared/comparison";

type Judged = Pick<
  Entry,
  "item" | "position" | "atom" | "outcome" | "standing" | "direction" | "severity" | "calls" | "coverageOnly"
>;

/** A line of a matter that may be laid before the dealer, by its place among the comparison's entries. */
export interface LayableLine {
  readonly at: number;
  readonly entry: Judged;
  /** Only if the buyer wants. */
  readonly doubtful: boolean;
}

export interface WholeMatter {
  readonly lines: readonly LayableLine[];
  /** How many of its lines may not be laid: not seen, found as stated, or found better. */
  readonly left: number;
}

/**
 * What laying a whole matter before the dealer comes to: its lines that may be laid and do not lie there already.
 *
 * @param lines indexes of the matter's lines
 * @param laid indexes of what lies before the dealer
 * @example wholeMatter(entries, [2, 5], new Set([5])).lines.map(({ at }) => at) // [2]
 */
export const wholeMatter = (
  entries: readonly Judged[],
  lines: readonly number[],
  laid: ReadonlySet<number>,
): WholeMatter => {
  const open = lines.filter((at) => !laid.has(at));
  const may = open.flatMap((at): LayableLine[] => {
    const entry = entries[at];
    if (entry === undefined || whyNotReleasable(entry) !== null) return [];
    return [
      {
        at,
        entry,
        doubtful: entry.outcome === "doubtful" && entry.standing !== "contradicted-by-figures",
      },
    ];
  });
  return { lines: may, left: open.length - may.length };
};

/** What is ticked before anybody ticks: everything but what is in doubt. */
export const firstTicked = ({ lines }: WholeMatter): ReadonlySet<number> =>
  new Set(lines.filter(({ doubtful }) => !doubtful).map(({ at }) => at));
