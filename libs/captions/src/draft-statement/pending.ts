import { LEADS } from "../pieces/index.ts";
import { apply } from "./apply.ts";
import type { Breath } from "./breath.ts";
import { isPlaced } from "./draft.ts";
import type { Draft } from "./draft.ts";
import { bringIntoView } from "./in-view.ts";
import { IS_ONE } from "./phrases.ts";
import { saysFault } from "./says-something.ts";
import { replaced } from "./sides.ts";
import { PENDING } from "./state.ts";

/** "There's a dent right there, …, on the fender"; "one is out, that's the right one": the part or the side follows. */
export const claimsOfPending = (draft: Draft, breath: Breath): readonly string[] | undefined => {
  const { pending } = draft.state;
  if (pending === undefined || breath.words.length > 0 || breath.numbers.length > 0) return undefined;
  const isNamed = breath.entries.length > 0 && leadsIn(draft, breath);
  const isSided =
    breath.entries.length === 0 && isPlaced(breath) && pending.entries.length > 0 && IS_ONE.test(breath.text);
  if (!isNamed && !isSided) return undefined;
  const group = isNamed
    ? breath.entries
    : pending.entries.map((entry) => ({
        ...entry,
        sides: { ...replaced(entry.sides, breath.sides), one: false },
      }));
  const made = apply(draft, group, { ...breath, words: pending.words }, isSided);
  if (made.length === 0) return undefined;
  bringIntoView(draft, group);
  draft.state.pending = undefined;
  return made;
};

const leadsIn = (draft: Draft, { entries: [entry], piece, text }: Breath): boolean => {
  if (entry === undefined || entry.none) return false;
  return (
    /\b(?:it|that|they) (?:is|s|are|look|come|be)\b|(?<!\b(?:is|are|s|was|were|be) )\bfrom\b|\bcoming\b/u.test(
      text,
    ) ||
    LEADS.has(draft.tokens[piece.from]?.stem ?? "") ||
    LEADS.has(draft.tokens[piece.from + 1]?.stem ?? "")
  );
};

export const keepPending = (draft: Draft, breath: Breath, made: readonly string[]): void => {
  const { state } = draft;
  const isNot = breath.ellipsis === "no" && breath.entries.some(({ sides }) => sides.one === true);
  const isNew = made.length === 0 && (isNot || saysFault(draft, breath));
  if (isNew)
    state.pending = {
      words: isNot ? state.words : breath.words,
      entries: breath.entries.length > 0 ? breath.entries : state.entries,
      left: PENDING,
    };
  else if (made.length > 0 || (state.pending !== undefined && (state.pending.left -= 1) <= 0))
    state.pending = undefined;
};
