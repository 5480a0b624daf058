import type { Entry } from "@evenhand/shared/comparison";
import type { Kind } from "../kinds/index.ts";
import type { Zone } from "../zone/index.ts";

/** A line that belongs to some matter. */
export type Line = {
  readonly index: number;
  readonly entry: Entry;
  readonly weight: number;
  readonly kind: Kind;
};

/** Lines of one cause. */
export type Group = {
  readonly kind: Kind;
  readonly zone: Zone | null;
  /** Lines of other places were folded into it. */
  readonly elsewhere?: true;
  readonly lines: readonly Line[];
};

/**
 * How far down a group stands: its weightiest line's.
 *
 * @example weightOfGroup(brakes) // 1
 */
export const weightOfGroup = ({ lines }: Pick<Group, "lines">): number => {
  let least = Infinity;
  for (const { weight } of lines) if (weight < least) least = weight;
  return least;
};

/** Lines of groups, each list in the order of the comparison. */
export const byIndex = (lines: readonly Line[]): Line[] => lines.toSorted((a, b) => a.index - b.index);
