import type { Comparison, Entry } from "@evenhand/shared/comparison";
import { lineKey } from "@evenhand/record/line-key";
import { whyNotReleasable } from "../releasable/index.ts";

/** What a newly sealed comparison says of a line laid before the dealer. */
export type NewLook = {
  /** Of the entry that speaks of the line now. */
  readonly index: number;
  /** The finding is borne out, or the statement; `leave` where it is in doubt still, or was not seen. */
  readonly says: "uphold" | "clear" | "leave";
};

type Line = Pick<Entry, "item" | "position" | "atom">;
type Seen = Pick<Entry, "outcome" | "direction" | "standing" | "coverageOnly" | "calls">;

function saysOf(entry: Seen): NewLook["says"] {
  if (entry.outcome === "doubtful") return "leave";
  // Nothing was stated of it: what is found good now bears nothing out against the dealer.
  if (entry.outcome === "unstated" && entry.calls.b === "good") return "clear";
  if (whyNotReleasable(entry) === null) return "uphold";
  const clear = ["agree", "consistent"].includes(entry.outcome) || entry.direction === "found-better";
  return clear ? "clear" : "leave";
}

/**
 * What a revision or another look came to for one line: told by the same line of the new comparison, or where that is gone by what
 * stands at its place now.
 *
 * @returns `null` where the comparison says nothing of the place
 * @example newLook(line, comparison) // { index: 12, says: "clear" }
 */
export function newLook(
  line: Line,
  { entries }: { readonly entries: readonly (Line & Seen)[] },
): NewLook | null {
  const same = entries.findIndex((entry) => lineKey(entry) === lineKey(line));
  const there = entries.findIndex(({ item, position }) => item === line.item && position === line.position);
  const index = same === -1 ? there : same;
  const entry = entries[index];
  return entry === undefined ? null : { index, says: saysOf(entry) };
}

/** Lines that go before the dealer as soon as they are sealed, where the buyer lets them: what was plainly found worse than stated. */
export const laidAtSeal = ({ entries }: Pick<Comparison, "entries">): number[] =>
  entries.flatMap((entry, index) =>
    entry.outcome === "differ" && entry.direction === "stated-better" && whyNotReleasable(entry) === null
      ? [index]
      : [],
  );
