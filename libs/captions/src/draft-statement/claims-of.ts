import { LEADS } from "../pieces/index.ts";
import type { Piece } from "../pieces/index.ts";
import { apply } from "./apply.ts";
import type { Breath } from "./breath.ts";
import { isPlaced, wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { bringIntoView, isOnlyPlace, isPlaceBehind, narrowLast, placedIn, restOfWhole } from "./in-view.ts";
import { NEGATORS } from "./negation.ts";
import { nameOnly, sayOfNamed } from "./of-named.ts";
import { sayOfView } from "./of-view.ts";
import { isOfWholeCar, spokenOf, wholeCar } from "./part-meant.ts";
import { NONE_OF_THAT, OF_THE_REST, OF_VIEW } from "./phrases.ts";
import { replyOfPart } from "./question.ts";
import { ALL_OF_THEM, askedAs, replyOf } from "./replies.ts";
import { sayAgain, sayTurnedRound, takeBack, takeOut, takeOutAlso } from "./said-again.ts";
import { isFaint, isFitted, isInList, saysFault, saysSomething } from "./says-something.ts";
import { merged, replaced } from "./sides.ts";

/** "They do": the others. */
const OF_MODEL = /^(?:yes )?(?:they|these|most) /u;

/** Another of several that were named: "and the clock", ", the clock". */
const goesOn = ({ join }: Piece): boolean => join === "and" || join === "comma";

export const claimsOf = (draft: Draft, breath: Breath): readonly string[] => {
  const { state } = draft;
  const { piece } = breath;
  const entries = spokenOf(draft, breath);
  const asked = state.asked;
  state.asked = undefined;
  const { excepted } = state;
  state.excepted = undefined;
  if (excepted !== undefined && goesOn(piece) && entries.length > 0 && !saysSomething(draft, breath))
    return takeOutAlso(draft, { ...breath, entries }, excepted);
  const { list } = state;
  state.list = undefined;
  // "The fuel gauge doesn't, and the clock"
  if (
    list !== undefined &&
    goesOn(piece) &&
    entries.length > 0 &&
    breath.words.length === 0 &&
    !/\byes$/u.test(breath.text)
  )
    return sayListed(draft, { ...breath, entries }, list);
  if (entries.length > 0 && ONLY_THING.test(breath.text)) return sayOut(draft, { ...breath, entries });
  // "Everything works, the gauges, the lights"
  if (entries.length === 0 && EVERYTHING_WORKS.test(breath.text)) state.list = { of: breath, denies: false };
  const part = replyOfPart(draft, { ...breath, entries });
  if (part !== undefined) return part;
  // "Lights?" "All of them."
  if (asked?.words.length === 0 && entries.length === 0 && ALL_OF_THEM.test(breath.text))
    return sayOfView(draft, { ...breath, sides: { ...breath.sides, all: true }, yesOrNo: "yes" });
  const reply =
    asked === undefined || entries.length > 0 ? undefined : replyOf(breath.text, saysFault(draft, asked));
  // "Doors shut nicely?" "Mine does": nobody says which that is.
  if (reply !== undefined && !state.askedOfModel && /^(?:mine|hers|his|yours) /u.test(breath.text)) return [];
  if (asked !== undefined && reply !== undefined && state.askedOfModel && OF_MODEL.test(breath.text)) {
    state.asked = asked;
    return [];
  }
  if (asked !== undefined && reply !== undefined) {
    // "Spare too?" "No."
    if (asked.words.length === 0 && asked.same) return [];
    // "Any rust?" "A bit, on the tailgate": of the part that follows.
    const isNowhere = asked.entries.length === 0 && state.entries.every(isWholePaint);
    if (reply === "yes" && isNowhere && saysFault(draft, asked)) {
      state.asked = asked;
      return [];
    }
    if (asked.words.length > 0) return sayAsked(draft, { ...breath, entries }, asked, reply);
    if (!isBareQuestion(draft, asked)) return [];
    if (breath.yesOrNo === undefined && asked.entries.length > 0 && !state.applied)
      return sayOfView(draft, { ...breath, entries, words: [], yesOrNo: reply });
  }
  if (piece.join === "except") return takeOut(draft, breath);
  if (entries.length === 0 && isOfTheRest(draft, piece)) return [];
  // "Any cracks? In the rears": there, what was asked.
  if (asked !== undefined && !state.askedOfModel && asked.words.length > 0 && isOnlyPlace(draft, breath))
    return apply(draft, placedIn(draft, breath), { ...asked, piece }, false);
  // "Any rust on the outside?" "Behind the back wheels."
  if (
    asked !== undefined &&
    entries.length > 0 &&
    !saysSomething(draft, breath) &&
    saysFault(draft, asked) &&
    LEADS.has(draft.tokens[piece.from]?.stem ?? "")
  )
    return sayListed(draft, { ...breath, entries }, { of: asked, denies: false });
  // "What doesn't work?" "The dome light."
  if (asked !== undefined && entries.length > 0 && WHAT_NOT.test(asked.text) && !saysSomething(draft, breath))
    return sayListed(draft, { ...breath, entries }, { of: asked, denies: false });
  if (isPlaceBehind(draft, breath)) return narrowLast(draft, breath);
  if (isInList(draft, breath, entries)) return sayOfNamed(draft, { ...breath, entries, has: true });
  if (NONE_OF_THAT.test(breath.text) && state.words.length > 0 && !isFitted(draft, entries))
    return entries.length > 0
      ? nameOnly(draft, { ...breath, entries, ellipsis: "no" })
      : sayTurnedRound(draft, { ...breath, ellipsis: "no" }, state.entries);
  const isSaid = saysSomething(draft, breath);
  if (
    state.correcting &&
    entries.length > 0 &&
    breath.words.length === 0 &&
    entries.every(({ none }) => none)
  ) {
    takeBack(draft, breath);
    return [];
  }
  // "Tonneau? In the boot": where it is, and no part anew.
  if (asked !== undefined && !isSaid && LEADS.has(draft.tokens[piece.from]?.stem ?? "")) return [];
  // "What doesn't work is the clock and the radio"
  if (WHAT_NOT_IS.test(breath.text)) state.list = { of: breath, denies: false };
  if (entries.length > 0) return isSaid ? sayOfNamed(draft, { ...breath, entries }) : nameOnly(draft, breath);
  if (isSaid) return sayOfView(draft, { ...breath, entries });
  if (
    asked !== undefined &&
    breath.same &&
    /^(?:the )?same\b/u.test(breath.text) &&
    state.allWords.length > 0
  )
    return apply(draft, state.entries, { ...breath, words: state.words, numbers: state.numbers }, false);
  if (
    isPlaced(breath) &&
    state.last.length > 0 &&
    (breath.same || (piece.join === "and" && breath.sides.adds.length > 0))
  )
    return sayAgain(
      draft,
      breath,
      state.entries.map((entry) => ({ ...entry, sides: replaced(entry.sides, breath.sides) })),
    );
  const isOfView = isPlaced(breath) || OF_VIEW.test(breath.text);
  if (breath.ellipsis !== undefined && state.words.length > 0 && isOfView && !state.isStale) {
    const whole = restOfWhole(draft, breath);
    return sayTurnedRound(draft, breath, whole === undefined ? state.entries : [whole]);
  }
  if (
    (breath.sides.adds.length > 0 || breath.sides.other) &&
    state.applied &&
    (piece.join !== "start" ||
      breath.sides.other ||
      draft.tokens[piece.from]?.plural === true ||
      /^(?:the )?\w+ one\b/u.test(breath.text)) &&
    /\b(?:is|are|was|were)\b/u.test(breath.text)
  )
    state.entries = state.entries.map((entry) => ({
      ...entry,
      sides: replaced(entry.sides, breath.sides),
    }));
  // "Front wings?" "Left one's had a whack, …"
  if (asked !== undefined && breath.sides.adds.length > 0 && !state.applied)
    state.entries = placedIn(draft, breath);
  else if (state.applied && isOnlyPlace(draft, breath)) {
    state.entries = placedIn(draft, breath);
    state.applied = false;
  } else if (isPlaced(breath) && !state.applied && state.entries.length > 0 && piece.join !== "start")
    state.entries = state.entries.map((entry) => ({ ...entry, sides: merged(entry.sides, breath.sides) }));
  return [];
};

/** All panels are in view, and "that bubble there" is on one of them. */
const isWholePaint = ({ subjects }: Entry): boolean => subjects.every(({ id }) => id === "all-panels");

const ASKING =
  /^(?:the|an?|any|is|are|was|there|it|its|and|how|about|what|of|does|do|did|has|have|got|get|on|in|at|with|still|all|your|my|these|those|this|that|one|two|okay|right|so|s|then|to|now|me|see|check|look|good|well|ok|you|he|she|they|ever|also|too|both|side|hand|every|each|for|from|not|no|yes|come|make|go|give|show|use|work|run|start|here|car|her|him|them|next|let|u|tell|we|i|can|will|would|say|said|think|,|-)$/u;

/** "Radio?", "is there a spare?": a question that asks nothing but whether; "windows electric?" asks what nobody knows. */
const isBareQuestion = ({ tokens }: Draft, { piece: { from, to, mentions }, text }: Breath): boolean =>
  !/ (?:electric|manual|power|hydraulic|automatic)$/u.test(text) &&
  tokens
    .slice(from, to)
    .every(
      ({ stem, kind }, index) =>
        kind !== "word" ||
        ASKING.test(stem) ||
        mentions.some((one) => one.is !== "said" && one.from <= from + index && one.to > from + index),
    );

/** "The only thing that doesn't is the clock", "the only exception is the clock". */
const ONLY_THING =
  /^(?:(?:and|but|really) )*(?:the )?only (?:thing|one|bit|part|exception)(?: (?:on (?:it|the car|here) )?(?:that|which))?(?: (?:does|do|is|are|will|did) not(?: (?:work|working|go|function|operate))?(?: right| properly)?)? (?:is|s|are|would be|being) /u;
const WHAT_NOT = /^what (?:does|do|is|s) not\b/u;

const EVERYTHING_WORKS =
  /^(?:(?:and|so|but|yes) )*(?:everything|it all|all of it)(?: on (?:it|the car|here|this car))? (?:work|function)(?: on (?:it|the car|here|this car))?(?: fine| great| like it should| as it should)?$/u;

const WHAT_NOT_IS = /^(?:and |but )?what (?:does|do) not (?:work|function) (?:is|are|s)\b/u;

/** What alone does not work, where all the rest does. */
const sayOut = (draft: Draft, breath: Breath): readonly string[] => {
  bringIntoView(draft, breath.entries);
  return apply(draft, breath.entries, { ...breath, words: [], numbers: [], yesOrNo: "no" }, false);
};

/** "On the tailgate, and the left rear door": one part after another, of which what was asked is said or denied. */
const sayListed = (
  draft: Draft,
  breath: Breath,
  list: NonNullable<Draft["state"]["list"]>,
): readonly string[] => {
  const { of, denies } = list;
  const words = askedAs(of.words, denies ? "no" : "yes", breath.text, () => false);
  draft.state.list = list;
  return sayOfNamed(draft, {
    ...of,
    words: denies ? words : of.words,
    entries: breath.entries.map((entry) => ({ ...entry, none: false })),
    sides: breath.sides,
    text: `${of.text} ${breath.text}`,
    piece: breath.piece,
  });
};

/** "Any rust?" "Not that I can see": what was asked, as it was answered. */
const sayAsked = (draft: Draft, breath: Breath, asked: Breath, reply: "yes" | "no"): readonly string[] => {
  const { state } = draft;
  const asksOfUse = /\b(?:work|function|operate|blow|cold|cool)\b/u.test(asked.text);
  const plain = breath.yesOrNo === "no" && !asksOfUse ? sayOfView(draft, breath) : [];
  if (plain.length > 0) return plain;
  const words = askedAs(
    asked.words.filter((word) => !isFaint(draft, word)),
    reply,
    breath.text,
    (word) => draft.tokens.slice(word.from, word.to).some(({ stem }) => NEGATORS.has(stem)),
  );
  const group = isOfWholeCar(draft, asked) ? wholeCar(draft, asked) : state.entries;
  const numbers = reply === "yes" ? asked.numbers : [];
  return apply(draft, group, { ...asked, words, numbers, piece: breath.piece }, false);
};

const isOfTheRest = (draft: Draft, { from, to }: Piece): boolean => {
  const before = wordsOf(draft, { from: Math.max(0, from - 4), to: from });
  return OF_THE_REST.test(before) || OF_THE_REST.test(wordsOf(draft, { from, to: Math.min(to, from + 3) }));
};
