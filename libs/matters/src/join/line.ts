import type { Entry } from "@evenhand/shared/comparison";
import type { Kind } from "../kinds/index.ts";
import type { OfItem } from "./of-sheet.ts";
import type { Zone } from "../zone/index.ts";

/** A line that belongs to some matter. */
export type Line = {
  readonly index: number;
  readonly entry: Entry;
  /** What every line of its item is joined by; `undefined` where the sheet has no such item. */
  readonly of: OfItem | undefined;
  /** Nobody knows, and nobody kept it from the inspector. */
  readonly gap: boolean;
  readonly weight: number;
  readonly kind: Kind;
};

/** Lines of one cause, in no order. */
export type Group = {
  readonly kind: Kind;
  readonly zone: Zone | null;
  /** Lines of other places were folded into it. */
  readonly elsewhere?: true | undefined;
  readonly lines: readonly Line[];
  /** How far down it stands: its weightiest line's. */
  readonly weight: number;
  /** Where the first of its lines stands in the comparison. */
  readonly first: number;
};

/** How far down the weightiest of some lines stands. */
export const leastWeight = (lines: readonly Line[]): number => {
  let least = Infinity;
  for (const { weight } of lines) if (weight < least) least = weight;
  return least;
};

const firstIndex = (lines: readonly Line[]): number => {
  let first = Infinity;
  for (const { index } of lines) if (index < first) first = index;
  return first;
};

/** A group of some lines. */
export const groupOf = (kind: Kind, zone: Zone | null, lines: readonly Line[], elsewhere?: true): Group => ({
  kind,
  zone,
  elsewhere,
  lines,
  weight: leastWeight(lines),
  first: firstIndex(lines),
});

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

/** Adds a line to those that have its key. */
export const addTo = <Key>(map: Map<Key, Line[]>, key: Key, line: Line): void => {
  const lines = map.get(key);
  if (lines === undefined) map.set(key, [line]);
  else lines.push(line);
};

/** Weights differ by quarters. */
const PARTS = 4;

/** All lines of some groups, the group of each, and from 1 which of them stands at each place of the comparison; 0 where none does. */
type AllLines = {
  readonly lines: readonly Line[];
  readonly owners: readonly number[];
  readonly at: Int32Array;
};

const allLines = (groups: readonly Group[]): AllLines => {
  let last = -1;
  for (const { lines } of groups) for (const { index } of lines) if (index > last) last = index;
  const lines: Line[] = [];
  const owners: number[] = [];
  const at = new Int32Array(last + 1);
  for (let group = 0; group < groups.length; group += 1) {
    for (const line of groups[group]?.lines ?? []) {
      owners.push(group);
      at[line.index] = lines.push(line);
    }
  }
  return { lines, owners, at };
};

/**
 * The lines of each group, gravest first; of two alike in the order of the comparison. All groups at once: every line is laid on the
 * shelf of its weight, and from there to its group, so that nothing is sorted.
 *
 * @param groups each line in one of them
 */
export const worstFirst = (groups: readonly Group[]): Line[][] => {
  const { lines, owners, at } = allLines(groups);
  const shelves: number[][] = [];
  for (const one of at) {
    const line = one === 0 ? undefined : lines[one - 1];
    if (line !== undefined) (shelves[line.weight * PARTS] ??= []).push(one - 1);
  }
  const sorted = groups.map((): Line[] => []);
  for (const shelf of shelves) {
    for (const one of shelf ?? []) {
      const line = lines[one];
      if (line !== undefined) sorted[owners[one] ?? -1]?.push(line);
    }
  }
  return sorted;
};
