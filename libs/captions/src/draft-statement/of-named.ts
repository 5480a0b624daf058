import { LEADS } from "../pieces/index.ts";
import { isOver } from "../spans/index.ts";
import { apply } from "./apply.ts";
import type { Breath } from "./breath.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { bringIntoView } from "./in-view.ts";
import { isWholeOf } from "./phrases.ts";
import { sayAgain, sayTurnedRound, takeBack } from "./said-again.ts";

/** Only a name: it joins the names before it, or opens a new view; "the same" and "isn't" say of it what was said last. */
export const nameOnly = (draft: Draft, breath: Breath): readonly string[] => {
  const { state } = draft;
  const joins =
    breath.piece.join !== "start" && breath.piece.join !== "colon" && state.open && !state.correcting;
  if (
    breath.ellipsis === "no" &&
    lastIsPresence(draft) &&
    breath.entries.every((one) => isOfPresence(draft, one))
  ) {
    bringIntoView(draft, breath.entries);
    return apply(
      draft,
      breath.entries.map((entry) => ({ ...entry, none: true })),
      breath,
      false,
    );
  }
  if (breath.ellipsis !== undefined && state.words.length > 0) {
    bringIntoView(draft, breath.entries);
    return sayTurnedRound(draft, breath, breath.entries);
  }
  // "The gearbox got rebuilt too" says something of its own.
  const { mentions } = breath.piece;
  const saysOwn = mentions.some(
    (one) => one.is === "said" && !mentions.some((other) => other.is === "subject" && isOver(other, one)),
  );
  const isSameKind = !/\ball (?:of )?the same\b|\bsame (?:make|brand|age|type|kind)\b/u.test(breath.text);
  if (
    breath.same &&
    isSameKind &&
    !saysOwn &&
    !state.askedOfModel &&
    (state.words.length > 0 || state.numbers.length > 0)
  ) {
    bringIntoView(draft, breath.entries);
    return sayAgain(draft, breath, breath.entries);
  }
  if (state.correcting && breath.text.includes("not")) {
    takeBack(draft, breath);
    return [];
  }
  const isWhere = LEADS.has(draft.tokens[breath.piece.from]?.stem ?? "") || startsAtPart(draft, breath);
  if (
    breath.piece.join === "and" &&
    state.applied &&
    state.wasLed &&
    isWhere &&
    isAlike(draft, breath.entries)
  )
    return sayAgain(draft, breath, breath.entries);
  const bare = breath.entries.map((entry) => ({ ...entry, none: false }));
  state.entries = joins ? (whereOf(draft, state.entries, bare) ?? [...state.entries, ...bare]) : bare;
  const kinds = new Set(state.last.map((key) => key.split("@")[0]));
  if (breath.piece.join === "start" && !joins)
    state.isStale ||= bare.every(({ subjects }) => subjects.every(({ items }) => !kinds.has(items[0])));
  state.applied = false;
  // "The sills were done in 2009": a clause of its own, which no other name joins.
  state.open = !/\b(?:is|are|was|were|has|have|had|do|does|did|got)\b/u.test(breath.text);
  state.row = undefined;
  return [];
};

/** "Hinge play, driver's door, …": a part that is only where the one named before is looked at. */
export const whereOf = (
  draft: Draft,
  named: readonly Entry[],
  wheres: readonly Entry[],
): readonly Entry[] | undefined => {
  const [what, ...others] = named;
  const [where, ...more] = wheres;
  const at = where?.subjects.flatMap((one) => one.at ?? []) ?? [];
  if (what === undefined || where === undefined || others.length > 0 || more.length > 0) return undefined;
  const item = draft.items.get(what.subjects[0]?.items[0] ?? "");
  const places = draft.sets.get(item?.positions ?? "")?.positions.map(({ id }) => id) ?? [];
  const isWhere =
    item?.answer === "reading" &&
    what.subjects.every((one) => one.at === undefined && !where.subjects.includes(one)) &&
    at.length > 0 &&
    at.every((place) => places.includes(place));
  return isWhere ? [{ ...what, sides: where.sides, plural: where.plural, within: at }] : undefined;
};

/** "Original on the roof and the trunk lid": another of the same kind. */
export const isAlike = (draft: Draft, entries: readonly Entry[]): boolean => {
  const kinds = new Set(draft.state.entries.flatMap(({ subjects }) => subjects.map(({ items }) => items[0])));
  return entries.every(({ subjects, none }) => !none && subjects.some(({ items }) => kinds.has(items[0])));
};

/** "… and the roof", and not "… and touch-ups on the roof". */
const startsAtPart = (draft: Draft, { entries: [first], piece: { from, mentions } }: Breath): boolean => {
  const to = first?.from ?? from;
  return draft.tokens
    .slice(from, to)
    .every(
      ({ stem }, index) =>
        /^(?:the|an?|my|its|s|also|both|all|of|side|on|in|at)$/u.test(stem) ||
        mentions.some((one) => one.is !== "said" && one.from <= from + index && one.to > from + index),
    );
};

const lastIsPresence = (draft: Draft): boolean => {
  return (
    draft.state.words.length === 0 ||
    draft.state.last.some((key) => draft.remarks.get(key)?.answer.kind === "presence")
  );
};

const isOfPresence = (draft: Draft, { subjects }: Entry): boolean => {
  return subjects.every(({ items }) => draft.items.get(items[0] ?? "")?.answer === "presence");
};

/** "Seats, driver's seat is torn": the topic, all of its kind, and then the one that is meant. */
const areOfTopic = ({ state }: Draft, entries: readonly Entry[]): boolean => {
  const items = new Set(state.entries.flatMap(({ subjects }) => subjects.map((one) => one.items[0])));
  const isTopic =
    state.entries.length > 0 && state.entries.every(({ plural, sides }) => plural && !isSided(sides));
  return (
    isTopic &&
    entries.length > 0 &&
    entries.every(({ sides, subjects }) => isSided(sides) && subjects.every((one) => items.has(one.items[0])))
  );
};

const isSided = ({ adds, index }: Entry["sides"]): boolean => adds.length > 0 || index !== undefined;

/** "Brake lights, headlights, and the only thing out is the plate light": said of the one, and of nothing named before it. */
const ALONE = /^(?:and )?(?:the )?only\b/u;

export const sayOfNamed = (draft: Draft, breath: Breath): readonly string[] => {
  const { state } = draft;
  const { piece, entries } = breath;
  const joins =
    piece.join !== "start" &&
    piece.join !== "colon" &&
    piece.join !== "but" &&
    state.open &&
    !state.correcting &&
    !(piece.join === "inner" && /^(?:it|they|there|that|we|i|he|she)\b/u.test(breath.text)) &&
    state.entries.length > 0 &&
    !ALONE.test(breath.text) &&
    !areOfTopic(draft, entries);
  const group = joins ? [...state.entries.filter((one) => !isWholeOf(one, entries)), ...entries] : entries;
  bringIntoView(draft, group);
  const made = apply(draft, group, breath, false);
  state.applied = made.length > 0;
  const [first] = entries;
  state.wasLed = first !== undefined && breath.words.some(({ to }) => to <= first.from);
  return made;
};
