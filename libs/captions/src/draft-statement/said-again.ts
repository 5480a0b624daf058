import { sided } from "../places-of/index.ts";
import { apply } from "./apply.ts";
import type { Breath } from "./breath.ts";
import { isPlaced, keyOf, wordsOf } from "./draft.ts";
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
  const whole = state.last;
  // "All but the left dipper": of something that is not known nothing is taken out.
  if (breath.entries.length === 0 && breath.words.length === 0 && !isOnlyPlace(draft, breath)) return [];
  const group =
    breath.entries.length > 0
      ? breath.entries
      : state.entries.map((entry) => ({ ...entry, sides: replaced(entry.sides, breath.sides) }));
  const isWorking =
    last.some(({ answer }) => answer.kind === "working" && answer.value === "yes") ||
    ALL_WORKS.test(wordsOf(draft, { from: Math.max(0, breath.piece.from - 12), to: breath.piece.from }));
  forget(draft, group, breath, whole);
  if (breath.entries.length === 0) forgetAround(draft, breath, whole);
  bringIntoView(draft, group);
  state.applied = false;
  const says = saysSomething(draft, breath) && breath.words.length > 0;
  if (says) {
    state.applied = true;
    return apply(draft, group, breath, false);
  }
  if (!isWorking || isExplained(draft, breath)) return [];
  const words = state.words.map((word) => ({ ...word, negated: !word.negated }));
  state.excepted = { last: whole, words };
  return apply(draft, group, { ...breath, words, numbers: [] }, false);
};

/** "Everything works except the clock": no part is named of which it is taken out. */
const ALL_WORKS =
  /\b(?:everything|it all|all of it|the lot)(?: (?!not\b|no\b)[a-z]+){0,4} (?:work|working|function|functioning|operational)(?: [a-z]+){0,2}? (?:except|but|apart|aside|bar|save|other|with)\b/u;

/** "Except the fan, which only has one speed": what is wrong with it is said behind it, and not that it does nothing. */
const isExplained = (draft: Draft, { piece: { to } }: Breath): boolean =>
  /^, (?:which|that|it|they) (?:(?:is|s|has|does|do|will|run) )?(?:only|just|slow|work|stick|come)\b/u.test(
    wordsOf(draft, { from: to, to: to + 5 }),
  );

const forget = (draft: Draft, group: readonly Entry[], breath: Breath, keys: readonly string[]): void => {
  for (const entry of group)
    for (const { item, places } of draft.targets.of(entry, breath))
      for (const place of places)
        if (keys.includes(keyOf(item.id, place))) draft.remarks.delete(keyOf(item.id, place));
};

const OPPOSITES: readonly (readonly [string, string])[] = [
  ["left", "right"],
  ["front", "rear"],
  ["upper", "lower"],
];

/** "All the lights work except the left rear": the left tail lamp may be meant, and the left headlamp's name does not say that it is in front. */
const forgetAround = (draft: Draft, { sides: { adds } }: Breath, keys: readonly string[]): void => {
  const said = new Set<string>(adds.map((add) => sided(add, draft.context.form)));
  const others = OPPOSITES.flatMap(([a, b]) => [
    ...(said.has(a) && !said.has(b) ? [b] : []),
    ...(said.has(b) && !said.has(a) ? [a] : []),
  ]);
  for (const key of keys) {
    const words = key.slice(key.indexOf("@") + 1).split("-");
    if (words.some((word) => said.has(word)) && !words.some((word) => others.includes(word)))
      draft.remarks.delete(key);
  }
};

/** "… except the clock and the fuel gauge": the list of what is taken out goes on. */
export const takeOutAlso = (
  draft: Draft,
  breath: Breath,
  { last, words }: NonNullable<Draft["state"]["excepted"]>,
): readonly string[] => {
  forget(draft, breath.entries, breath, last);
  bringIntoView(draft, breath.entries);
  draft.state.excepted = { last, words };
  if (isExplained(draft, breath)) return [];
  return apply(draft, breath.entries, { ...breath, words, numbers: [] }, false);
};

export const takeBack = (draft: Draft, breath: Breath): void => {
  for (const key of draft.state.last) {
    const item = key.split("@")[0] ?? "";
    if (breath.entries.some(({ subjects }) => subjects.some((one) => one.items.includes(item))))
      draft.remarks.delete(key);
  }
};
