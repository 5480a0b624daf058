import { isLore } from "../no-claim/index.ts";
import { apply } from "./apply.ts";
import type { Breath } from "./breath.ts";
import { isPlaced, wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import { bringIntoView, noteWhole, placedIn } from "./in-view.ts";
import { NEGATORS } from "./negation.ts";
import { askedAs } from "./replies.ts";
import { OF_ITSELF, isLeaks } from "./phrases.ts";
import { saysFault } from "./says-something.ts";
import { replaced } from "./sides.ts";

/** A question claims nothing; it brings its part into view, and a yes after it says what it asked. */
export const noteQuestion = (draft: Draft, breath: Breath): void => {
  const { state } = draft;
  const { from, to } = breath.piece;
  // "These usually rust here, don't they?"
  state.askedOfModel =
    isLore(draft.spoken.text, draft.tokens, from, to) ||
    (breath.piece.join !== "start" && state.askedOfModel && breath.entries.length === 0);
  if (breath.entries.length > 0) {
    const others = breath.entries.filter((entry) => !isLeaks(entry));
    const named = (others.length > 0 ? others : breath.entries).map((entry) => ({
      ...entry,
      none: false,
      asked: true,
    }));
    // "Wipers and horn?"
    const kinds = new Set(state.entries.flatMap(({ subjects }) => subjects.map(({ id }) => id)));
    state.isStale ||= named.every(({ subjects }) => subjects.every(({ id }) => !kinds.has(id)));
    const isListed = breath.piece.join !== "start" && state.asked !== undefined && state.open;
    state.entries = isListed ? [...state.entries, ...named] : named;
    noteWhole(draft, state.entries);
    state.applied = false;
    state.open = true;
    state.row = undefined;
  } else if (isPlaced(breath) && state.entries.length > 0) {
    state.entries = state.entries.map((entry) => ({
      ...entry,
      sides: replaced(entry.sides, breath.sides),
    }));
    state.applied = false;
  } else if (breath.piece.join === "start" && !saysFault(draft, breath) && !OF_ITSELF.test(breath.text))
    state.entries = [];
  // "Spare too?" asks what was said just before.
  const isAgain = breath.same && breath.entries.length > 0 && breath.words.length === 0;
  state.asked = isAgain ? { ...breath, words: state.words, numbers: state.numbers } : breath;
  // "What works and what doesn't?"
  const isGoingOn = breath.piece.join !== "start" && breath.entries.length === 0;
  state.query = breath.words.length > 0 ? breath : isGoingOn ? state.query : undefined;
};

/** "Does it not leak?": the denial is a part of the word. */
const deniesItself = (draft: Draft, { from, to }: Breath["words"][number]): boolean =>
  draft.tokens.slice(from, to).some(({ stem }) => NEGATORS.has(stem));

/** "They all rust there, this one doesn't": what is true of the model is as good as asked of this one, and brings its part into view. */
export const noteLore = (draft: Draft, breath: Breath): void => {
  if (breath.entries.length > 0) noteQuestion(draft, breath);
  else if (breath.words.length > 0) draft.state.asked = breath;
  draft.state.askedOfModel = true;
};

/** "Any rust? Not in the floors, the left fender has some": what was asked, said part by part. */
export const replyOfPart = (draft: Draft, breath: Breath): readonly string[] | undefined => {
  const { query } = draft.state;
  const { entries, words, numbers, text } = breath;
  const isSide = entries.length === 0 && isPlaced(breath) && breath.ellipsis !== undefined;
  if (query === undefined || (entries.length === 0 && !isSide) || numbers.length > 0) return undefined;
  const denies = /^(?:no|not|none|nothing)\b|\b(?:no|not|none)$/u.test(text);
  const isYes = isSide && breath.ellipsis === "yes";
  const affirms =
    isYes ||
    /^there (?:is|s) (?:some|a bit|a little|a spot|one)\b|^(?:just )?(?:a )?(?:little|bit|some|touch|tiny)(?: bit| of it)? (?:in|on|at|around|under)\b|\b(?:has|have|got|is|there (?:is|s)) (?:some|a bit|a little)$|\byes$/u.test(
      text,
    );
  if (words.some((word) => wordsOf(draft, word) !== "there") || (!denies && !affirms)) {
    draft.state.query = undefined;
    return undefined;
  }
  const named = isSide ? placedIn(draft, breath) : entries.map((entry) => ({ ...entry, none: false }));
  // "So no rust?" "There's some in the floors."
  const asked = isYes
    ? query.words
    : askedAs(query.words, denies ? "no" : "yes", text, (word) => deniesItself(draft, word));
  const made = apply(
    draft,
    named,
    {
      ...query,
      entries: named,
      sides: breath.sides,
      words: asked,
      piece: breath.piece,
      text: `${query.text} ${breath.text}`,
    },
    false,
  );
  if (made.length > 0) {
    bringIntoView(draft, named);
    draft.state.list = denies ? { of: query, denies } : undefined;
  }
  return made.length > 0 ? made : undefined;
};
