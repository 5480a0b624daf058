import type { Breath } from "./breath.ts";
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
  if (first !== undefined && /^(?:gauges|lamps|glass)$/u.test(named?.id ?? "")) draft.state.whole = first;
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
