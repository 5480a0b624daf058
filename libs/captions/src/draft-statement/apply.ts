import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { answerOf, isFaultElsewhere } from "../answer-of/index.ts";
import type { SaidOf, SaidWord } from "../answer-of/index.ts";
import { firmnessOf } from "../firmness/index.ts";
import type { Breath } from "./breath.ts";
import { codeOf, numbersFor } from "./code-of.ts";
import { keyOf, lastIs, wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { claimsOfNumberAlone, claimsOfStanding, hasReading } from "./number-alone.ts";
import { isDry } from "./phrases.ts";
import { record } from "./record.ts";
import { dealOut, openRow } from "./rows.ts";
import { saidTo } from "./said-to.ts";
import { claimsOfWordsAlone } from "./words-alone.ts";

export const apply = (
  draft: Draft,
  group: readonly Entry[],
  breath: Breath,
  remembered: boolean,
): readonly string[] => {
  const used = new Set<SaidWord>();
  const made = group.flatMap((entry) => applyTo(draft, entry, breath, remembered, used));
  const alone = claimsOfWordsAlone(draft, breath, used);
  const numbered = hasReading(draft, made)
    ? []
    : [...claimsOfNumberAlone(draft, breath), ...claimsOfStanding(draft, breath, made)];
  const all = [...made, ...alone, ...numbered];
  if (breath.words.length > 0 || breath.numbers.length > 0) {
    draft.state.allWords =
      breath.entries.length > 0 ? breath.words : [...draft.state.allWords.slice(-12), ...breath.words];
    draft.state.words = breath.words;
    draft.state.isStale = false;
    draft.state.numbers = breath.numbers;
  }
  if (all.length > 0) {
    draft.state.last = all;
    draft.state.lastAt = breath.piece.to;
  }
  return all;
};

const applyTo = (
  draft: Draft,
  entry: Entry,
  breath: Breath,
  remembered: boolean,
  used: Set<SaidWord>,
): readonly string[] => {
  const mine = new Set<SaidWord>();
  const made: string[] = [];
  let numbersTaken = false;
  for (const { item, subject, places, inferred } of draft.targets.of(entry, breath)) {
    const code =
      item.answer === "code" && (subject.items[0] === item.id || item.id === "wheels.tire-size")
        ? codeOf(draft, item, subject, entry, breath)
        : undefined;
    if (code !== undefined && item.section === "wheels") numbersTaken = true;
    if (numbersTaken && item.answer === "reading") continue;
    const { saidTogether } = draft.context.compiled.lexicon.answering;
    const words = breath.words.filter(
      (word) =>
        !mine.has(word) ||
        saidTogether.includes(item.id) ||
        // "Never been welded" denies the repair, and the patch.
        (word.negated && item.answer === "faults"),
    );
    const said = saidTo(
      draft,
      numbersFor(draft, item, subject, entry, breath, numbersTaken),
      words,
      entry,
      item,
    );
    let answer =
      code ??
      (item.answer === "code"
        ? undefined
        : answerOf(item, said, draft.context.compiled, (word) => wordsOf(draft, word)));
    if (item.id === "interior.trim-history") answer = partOfTrim(answer, entry, breath);
    if (item.id === "identity.restoration-bills" && (areOfRebuild(draft, answer, breath) || !entry.plural))
      continue;
    // "It's stained but it isn't hanging" leaves what the stain says.
    if (answer === undefined && breath.piece.join !== "but") retract(draft, item, places, words);
    if (answer === undefined || !fits(draft, item, answer, said, breath)) continue;
    if (answer.kind === "not-seen" && (item.section === "identity" || !isUnseenPart(entry, breath))) continue;
    if (isOneFault(draft, answer, entry, places, breath)) continue;
    if (places.length === 0 || (subject.id === "leaks" && !isDry(answer))) continue;
    if (item.answer !== "working")
      for (const word of words)
        if (speaksOf(draft, word, item) && !isOfOther(draft, word, item, said)) mine.add(word);
    if (item.answer === "working") for (const word of words) used.add(word);
    const keys = record(
      draft,
      item,
      places,
      answer,
      breath,
      remembered || inferred,
      entry.confidence,
      entry.heard,
      entry,
    );
    made.push(...keys);
    if (answer.kind === "faults" && answer.found.some(({ extent }) => extent !== undefined))
      numbersTaken = true;
    if (answer.kind === "reading") {
      numbersTaken = true;
      draft.state.reading = { item: item.id, unit: answer.unit, value: answer.values[0]?.value ?? 0 };
      openRow(draft, item, places, breath);
      made.push(...dealOut(draft, item, places, breath));
    }
    if (answer.kind === "not-seen" || answer.kind === "not-fitted") break;
  }
  for (const word of mine) used.add(word);
  return made.length === 0 && entry.instead !== undefined
    ? applyTo(draft, entry.instead, breath, remembered, used)
    : made;
};

/** Places beyond which one dent is not in each of them. */
const MOST_OF_ONE = 2;
const COUNTED =
  /^(?:scratch|dent|ding|chip|crack|tear|hole|bubble|blister|patch|crease|gouge|scrape|split|rip)$/u;
/** Tokens from "a" to the fault: "a nasty little scratch". */
const TO_FAULT = 4;

/** "It has a scratch", and all panels are in view: it is on one of them, and nobody says which. */
const isOneFault = (
  draft: Draft,
  answer: Answer,
  { sides }: Entry,
  places: readonly string[],
  { words, text }: Breath,
): boolean =>
  answer.kind === "faults" &&
  answer.found.length > 0 &&
  places.length > MOST_OF_ONE &&
  !sides.all &&
  !/\b(?:each|every|all|apiece)\b/u.test(text) &&
  words.some(
    ({ from, to, negated }) =>
      !negated &&
      draft.tokens[to - 1]?.plural !== true &&
      COUNTED.test(draft.tokens[to - 1]?.stem ?? "") &&
      /\b(?:an?|one|another)(?: (?!of\b|few\b|couple\b)[a-z]+)*$/u.test(
        wordsOf(draft, { from: Math.max(0, from - TO_FAULT), to: from }),
      ),
  );

/** "The front seats have been reupholstered": of one row of seats that is a part of the trim. */
const partOfTrim = (
  answer: Answer | undefined,
  { subjects, sides }: Entry,
  { text }: Breath,
): Answer | undefined =>
  answer?.kind === "choice" &&
  answer.option === "retrimmed-right" &&
  (subjects.every(({ id }) => /^(?:front-bench|front-seats|rear-seat)$/u.test(id)) ||
    (sides.adds.length > 0 && subjects.every(({ id }) => id === "seats"))) &&
  !/\b(?:pattern|correct|everything|whole|all|interior|complete)\b/u.test(text)
    ? { kind: "choice", option: "part-retrimmed" }
    : answer;

/** "Did the engine, and I have the bills": they are of what was said just before. */
const areOfRebuild = (draft: Draft, answer: Answer | undefined, { piece }: Breath): boolean => {
  const key = keyOf("engine.rebuild-claim", "");
  const remark = draft.remarks.get(key);
  const isThere = answer?.kind === "presence" && answer.value === "present";
  if (remark?.answer.kind !== "choice" || !draft.state.last.includes(key) || !isThere) return false;
  const isTold = firmnessOf(draft.tokens, piece.from, piece.to).firmness === "second-hand";
  if (remark.answer.option === "rebuilt" && !isTold)
    draft.remarks.set(key, { ...remark, answer: { kind: "choice", option: "rebuilt-with-bills" } });
  return true;
};

/** "It's not perfect" takes back that it is. */
export const retract = (
  draft: Draft,
  item: Item,
  places: readonly string[],
  words: readonly SaidWord[],
): void => {
  const { conditions } = draft.context.compiled.lexicon;
  // "Worn but not torn": that a fault is not there leaves the grade.
  const denied = words
    .flatMap(({ negated, meanings }) => (negated ? meanings : []))
    .map((one) => (one.is === "condition" ? (conditions[one.condition]?.senses ?? []) : []))
    .flatMap((senses) => (senses.some((sense) => "fault" in sense) ? [] : senses));
  for (const place of places) {
    const answer = draft.remarks.get(keyOf(item.id, place))?.answer;
    if (answer?.kind === "grade" && denied.some((sense) => "grade" in sense && sense.grade === answer.value))
      draft.remarks.delete(keyOf(item.id, place));
  }
};

/** That nobody looked is said of a part named in the same sentence, or of "it". */
const isUnseenPart = (entry: Entry, { piece, text }: Breath): boolean => {
  const isHere =
    entry.from >= piece.from || (piece.join !== "start" && !/^(?:what|all|who|which|and what)\b/u.test(text));
  return isHere || /\b(?:it|that|them|those|one)\b/u.test(text);
};

/** Tokens within which what was said last was said in the sentence before. */
const LAST_SENTENCE = 12;

/** "It goes away", "it clears up": of smoke where smoke was spoken of last, and then it is gone when warm. */
const GOES_AWAY =
  /\b(?:go(?:es)? (?:right )?away|went away|clears?(?: right)?(?: up| itself)?|cleared up|gone (?:in|after) a|disappears?|(?:is|run|burn|then)(?: it)?(?: is)? (?:clean|clear)|cleans up|(?:after|after that|afterwards|later|then) nothing)\b/u;

const LEAKS = /\b(?:leak|leaking|seep|seepage|seeping|drip|dripping|weep|weeping|dry|wet|oil)\b/u;

/** "Original" of a panel is its paint only where paint is spoken of. */
export const fits = (draft: Draft, item: Item, answer: Answer, said: SaidOf, { piece }: Breath): boolean => {
  if (item.id.startsWith("engine.smoke") && answer.kind === "choice" && answer.option === "none")
    if (
      GOES_AWAY.test(said.text) &&
      !lastIs(draft, "engine.smoke-cold") &&
      !lastIs(draft, "engine.smoke-warm")
    )
      return false;
  // "No power steering": it is not there, and nothing of its leaks.
  if (item.id.startsWith("driveline.leaks") && said.noSubject && !LEAKS.test(said.text)) return false;
  // "It's in the estate's name, but it's here" is still in another's.
  const before = draft.remarks.get(keyOf(item.id, ""))?.answer;
  if (item.id === "identity.title-holder" && before?.kind === "choice" && before.option === "other-name")
    if (lastIs(draft, item.id) && !/\b(?:name|mine|transferred|dealer|ours)\b/u.test(said.text)) return false;
  if (item.id === "body.paint-history" && answer.kind === "choice" && answer.option === "original")
    return (
      said.ofPaint ||
      said.words.some(({ negated }) => negated) ||
      (piece.join === "colon" && said.text === "original") ||
      (lastIs(draft, item.id) && piece.from - draft.state.lastAt <= LAST_SENTENCE) ||
      lastIs(draft, "body.paint-thickness")
    );
  return true;
};

/** Whether a word can have been what an item was answered by. */
export const speaksOf = (draft: Draft, word: SaidWord, item: Item): boolean => {
  const { lexicon } = draft.context.compiled;
  return word.meanings.some((meaning) => {
    if (meaning.is === "option")
      return meaning.item === item.id || meaning.item === lexicon.answering.sameWords[item.id];
    return (lexicon.conditions[meaning.condition]?.senses ?? []).some((sense) => {
      if ("fault" in sense && item.faults?.kinds.includes(sense.fault) === true) return true;
      if ("grade" in sense && item.answer === "grade") return !word.negated;
      if ("working" in sense && item.answer === "working") return true;
      if ("presence" in sense && item.answer === "presence") return true;
      const isNoPraise = item.answer === "choice" && lexicon.answering.notByPraise.test(item.id);
      return "general" in sense && !(isNoPraise && sense.general === "good");
    });
  });
};

/** "Pitted" of chrome is a fault with an item of its own, and leaves the grade alone. */
const isOfOther = (draft: Draft, word: SaidWord, item: Item, said: SaidOf): boolean => {
  return item.answer === "grade" && isFaultElsewhere(word, said, draft.context.compiled);
};
