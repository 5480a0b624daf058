import { apply } from "./apply.ts";
import type { Breath } from "./breath.ts";
import { isPlaced, keyOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { bringIntoView, isOnlyPlace } from "./in-view.ts";
import { saysSomething } from "./says-something.ts";
import { replaced } from "./sides.ts";

export const sayTurnedRound = (
  draft: Draft,
  breath: Breath,
  entries: readonly Entry[],
): readonly string[] => {
  const { state } = draft;
  const words = state.words.map((word) => ({
    ...word,
    negated: breath.ellipsis === "no" ? !word.negated : false,
  }));
  const placed = isPlaced(breath) && breath.entries.length === 0;
  const group = placed
    ? entries.map((entry) => ({ ...entry, sides: replaced(entry.sides, breath.sides) }))
    : entries;
  return apply(draft, group, { ...breath, words, numbers: [] }, breath.entries.length === 0);
};

export const sayAgain = (draft: Draft, breath: Breath, entries: readonly Entry[]): readonly string[] => {
  return apply(
    draft,
    entries,
    { ...breath, words: draft.state.allWords, numbers: draft.state.numbers },
    false,
  );
};

/** "All but the clock": what follows is taken out, and where the rest works it does not. */
export const takeOut = (draft: Draft, breath: Breath): readonly string[] => {
  const { state } = draft;
  const last = state.last.map((key) => draft.remarks.get(key)).filter((one) => one !== undefined);
  // "All but the left dipper": of something that is not known nothing is taken out.
  if (breath.entries.length === 0 && breath.words.length === 0 && !isOnlyPlace(draft, breath)) return [];
  const group =
    breath.entries.length > 0
      ? breath.entries
      : state.entries.map((entry) => ({ ...entry, sides: replaced(entry.sides, breath.sides) }));
  const isWorking = last.some(({ answer }) => answer.kind === "working" && answer.value === "yes");
  for (const entry of group)
    for (const { item, places } of draft.targets.of(entry, breath))
      for (const place of places)
        if (last.some((one) => one.item === item.id && one.position === place))
          draft.remarks.delete(keyOf(item.id, place));
  bringIntoView(draft, group);
  state.applied = false;
  const says = saysSomething(draft, breath) && breath.words.length > 0;
  if (says) {
    state.applied = true;
    return apply(draft, group, breath, false);
  }
  if (!isWorking) return [];
  const words = state.words.map((word) => ({ ...word, negated: !word.negated }));
  return apply(draft, group, { ...breath, words, numbers: [] }, false);
};

export const takeBack = (draft: Draft, breath: Breath): void => {
  for (const key of draft.state.last) {
    const item = key.split("@")[0] ?? "";
    if (breath.entries.some(({ subjects }) => subjects.some((one) => one.items.includes(item))))
      draft.remarks.delete(key);
  }
};
