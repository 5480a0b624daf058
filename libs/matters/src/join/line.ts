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

const NO_LINES: readonly Line[] = [];

/** Several groups made one, which stands where the weightiest of them stands: no line need be looked at again. */
export const groupOfGroups = (
  kind: Kind,
  zone: Zone | null,
  groups: readonly Group[],
  elsewhere?: true,
): Group => ({
  kind,
  zone,
  elsewhere,
  lines: NO_LINES.concat(...groups.map(({ lines }) => lines)),
  weight: Math.min(...groups.map(({ weight }) => weight)),
  first: Math.min(...groups.map(({ first }) => first)),
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

/** More lines, and more ways in which weights differ, than there are: what stands before what fits into one number. */
const MOST = 2 ** 20;
/** Weights differ by quarters. */
const PARTS = 4;

const placeOf = ({ weight, index }: Line): number => weight * PARTS * MOST + index;

/** Lines of one cause are often as grave as each other, and then they stand so already. */
const isWorstFirst = (lines: readonly Line[]): boolean => {
  let last = -1;
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at];
    const place = line === undefined ? last : placeOf(line);
    if (place < last) return false;
    last = place;
  }
  return true;
};

/** Gravest first; of two alike in the order of the comparison. */
export const worstFirst = (lines: readonly Line[]): readonly Line[] => {
  if (isWorstFirst(lines)) return lines;
  const keys = new Float64Array(lines.length);
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at];
    if (line !== undefined) keys[at] = placeOf(line) * MOST + at;
  }
  keys.sort();
  const sorted: Line[] = [];
  for (let at = 0; at < keys.length; at += 1) {
    const line = lines[(keys[at] ?? 0) % MOST];
    if (line !== undefined) sorted.push(line);
  }
  return sorted;
};
