import type { Entry } from "@evenhand/shared/comparison";
import type { CompiledItem } from "@evenhand/sheet/compile-sheet";
import type { Kind } from "../kinds/index.ts";
import type { Zone } from "../zone/index.ts";

/** A line that belongs to some matter. */
export type Line = {
  readonly index: number;
  readonly entry: Entry;
  /** Its item as the sheet has it. */
  readonly compiled: CompiledItem | undefined;
  readonly weight: number;
  readonly kind: Kind;
};

/** Lines of one cause, in no order. */
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

/** Lines of which something holds, and the others, each list in the order they came. */
export const partLines = (
  lines: readonly Line[],
  holds: (line: Line) => boolean,
): { readonly held: Line[]; readonly others: Line[] } => {
  const held: Line[] = [];
  const others: Line[] = [];
  for (const line of lines) (holds(line) ? held : others).push(line);
  return { held, others };
};

/** Where the first of a group's lines stands in the comparison. */
export const firstIndex = ({ lines }: Pick<Group, "lines">): number => {
  let first = Infinity;
  for (const { index } of lines) if (index < first) first = index;
  return first;
};

/** Gravest first; of two alike in the order of the comparison. */
export const worstFirst = (lines: readonly Line[]): readonly Line[] =>
  lines.toSorted((a, b) => a.weight - b.weight || a.index - b.index);
