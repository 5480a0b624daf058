import type { Breath } from "./breath.ts";
import { keyOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { replaced } from "./sides.ts";

export const bringIntoView = (draft: Draft, entries: readonly Entry[]): void => {
  noteWhole(draft, entries);
  draft.state.entries = entries;
  draft.state.applied = true;
  draft.state.open = false;
  draft.state.row = undefined;
};

export const noteWhole = (draft: Draft, [first]: readonly Entry[]): void => {
  const [named] = first?.subjects ?? [];
  if (first !== undefined && /^(?:gauges|lamps|exterior-lamps|glass)$/u.test(named?.id ?? ""))
    draft.state.whole = first;
};

/** A clock is gone through with the dials. */
const isOf = (items: readonly string[], item: string): boolean =>
  items.includes(item) || (items.includes("electrics.speedometer") && item.startsWith("electrics."));

/** "Gauges? The fuel gauge is dead. The rest work": the rest of what was named as a whole. */
export const restOfWhole = (draft: Draft, { sides }: Breath): Entry | undefined => {
  const { whole, entries } = draft.state;
  const items = whole?.subjects.flatMap((one) => one.items) ?? [];
  const isPart = entries.every(({ subjects }) => subjects.every((one) => isOf(items, one.items[0] ?? "")));
  return sides.other && sides.adds.length === 0 && entries.length > 0 && isPart ? whole : undefined;
};

export const placedIn = (draft: Draft, { sides }: Breath): readonly Entry[] => {
  return draft.state.entries.map((entry) => ({
    ...entry,
    sides: replaced(entry.sides, sides),
    none: false,
  }));
};

/** "Offside, …", "in the rears": nothing but where. */
export const isOnlyPlace = (
  draft: Draft,
  { piece: { from, to, mentions }, sides, entries }: Breath,
): boolean => {
  return (
    sides.adds.length > 0 &&
    entries.length === 0 &&
    draft.tokens
      .slice(from, to)
      .every(
        ({ stem }, index) =>
          /^(?:the|in|on|at|and|then|now|s|side|hand|one)$/u.test(stem) ||
          mentions.some((one) => one.is === "side" && one.from <= from + index && one.to > from + index),
      )
  );
};

/** "Floors, he's had new ones, both sides at the front.": a place by itself at the end of a sentence, of all that was just said. */
export const isPlaceBehind = (draft: Draft, breath: Breath): boolean =>
  breath.piece.join === "comma" &&
  draft.state.applied &&
  draft.state.last.length > 1 &&
  breath.words.length === 0 &&
  breath.numbers.length === 0 &&
  isOnlyPlace(draft, breath) &&
  /^[.!?;]$/u.test(draft.tokens[breath.piece.to]?.stem ?? "");

/** Leaves of what was just said only what is at the places named behind it. */
export const narrowLast = (draft: Draft, breath: Breath): readonly string[] => {
  const { state } = draft;
  const meant = new Set(
    placedIn(draft, breath)
      .flatMap((entry) => draft.targets.of({ ...entry, plural: true }, breath))
      .flatMap(({ item, places }) => places.map((place) => keyOf(item.id, place))),
  );
  if (!state.last.some((key) => meant.has(key))) return [];
  for (const key of state.last) if (!meant.has(key)) draft.remarks.delete(key);
  state.last = state.last.filter((key) => meant.has(key));
  return state.last;
};
