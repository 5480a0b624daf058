import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { firmnessOf } from "../firmness/index.ts";
import type { Piece } from "../pieces/index.ts";
import type { Breath } from "./breath.ts";
import { keyOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { secondAt } from "./phrases.ts";
import { joined } from "./remark.ts";
import type { Remark } from "./remark.ts";

/** Tokens between a part's name and what is said of it, up to which both are shown together. */
const MOST_SPAN = 25;
const REMEMBERED_CONFIDENCE = 0.75;
const CERTAIN = 0.95;

export const record = (
  draft: Draft,
  item: Item,
  places: readonly string[],
  answer: Answer | undefined,
  breath: Breath,
  inferred: boolean,
  confidence: number,
  heard: readonly string[],
  entry?: Entry,
): readonly string[] => {
  if (answer === undefined) return [];
  const { firmness, about } = firmnessOf(draft.tokens, breath.piece.from, breath.piece.to);
  if (
    item.answer === "choice" &&
    breath.words.every(({ negated }) => negated) &&
    breath.words.length > 0 &&
    places.some((place) => draft.state.last.includes(keyOf(item.id, place))) &&
    !draft.state.correcting
  )
    return [];
  if (item.id === "identity.originality" && isOnlyNotOriginal(draft, item, places, answer, breath)) return [];
  // "Power windows?" "No, they crank, and they all go up and down": what is not fitted does not work either.
  const isLacking = entry !== undefined && entry.from < breath.piece.from && !draft.state.correcting;
  const has = places.filter(
    (place) => !isLacking || draft.remarks.get(keyOf(item.id, place))?.answer.kind !== "not-fitted",
  );
  const roughly =
    about &&
    (answer.kind === "reading" ||
      item.id === "wheels.tire-age" ||
      (answer.kind === "faults" && answer.found.some(({ extent }) => extent !== undefined)));
  const told = firmness === "second-hand" || draft.state.toldForSentence;
  const hedged = firmness === "hedged" || roughly || draft.state.hedgeNext;
  const span = spanOf(draft, breath.piece, entry);
  return has.map((position) => {
    const key = keyOf(item.id, position);
    const remark: Remark = {
      item: item.id,
      position,
      answer,
      firmness: told ? "second-hand" : hedged ? "hedged" : "asserted",
      ...span,
      confidence: Number((CERTAIN * confidence * (inferred ? REMEMBERED_CONFIDENCE : 1)).toFixed(2)),
      inferred,
      heard,
    };
    if (item.id === "road.cold-start") draft.state.startedAt = breath.piece.from;
    const before = draft.remarks.get(key);
    if (before === undefined || draft.state.correcting || !stays(draft, before, answer))
      draft.remarks.set(key, joined(before, remark, draft.state.correcting, places.length));
    return key;
  });
};

/** "It ticks cold, then it's quiet" stays a tick when cold. */
const stays = (draft: Draft, { item, answer: before }: Remark, answer: Answer): boolean =>
  before.kind === "choice" &&
  answer.kind === "choice" &&
  draft.context.compiled.lexicon.answering.keeps[item]?.[before.option]?.includes(answer.option) === true;

/** "The right type, but not the original one" stays the right type. */
const isOnlyNotOriginal = (
  draft: Draft,
  item: Item,
  places: readonly string[],
  answer: Answer,
  { words, text }: Breath,
): boolean => {
  const isNotOriginal =
    words.every(({ negated }) => negated) ||
    /\bnot (?:the )?original\b|\bnot the one (?:it|the)\b/u.test(text);
  if (answer.kind !== "choice" || answer.option !== "other-type" || !isNotOriginal) return false;
  return places.some((place) => {
    const before = draft.remarks.get(keyOf(item.id, place))?.answer;
    return before?.kind === "choice" && before.option.startsWith("right-type");
  });
};

/** Words from where the part was named, in the same sentence, to what was said of it. */
export const spanOf = (
  draft: Draft,
  { from, to, join }: Piece,
  entry: Entry | undefined,
): Pick<Remark, "second" | "start" | "end" | "words"> => {
  const isNear =
    entry !== undefined && join !== "start" && entry.from < from && from - entry.from <= MOST_SPAN;
  const start = draft.tokens[isNear ? entry.from : from]?.start ?? 0;
  const end = draft.tokens[to - 1]?.end ?? start;
  const { at, text } = draft.spoken;
  return { second: Math.floor(secondAt(at, start)), start, end, words: text.slice(start, end) };
};
