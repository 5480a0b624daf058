import { isOver } from "../spans/index.ts";
import { apply } from "./apply.ts";
import type { Breath } from "./breath.ts";
import { isPlaced } from "./draft.ts";
import type { Draft } from "./draft.ts";
import { lastIsFault, sizeOfFault } from "./extent.ts";
import type { Entry } from "./entries.ts";
import { bringIntoView, restOfWhole } from "./in-view.ts";
import { isOilPressure } from "./number-alone.ts";
import { SCENE, UNKNOWN } from "./phrases.ts";
import { nextInRow } from "./rows.ts";
import { replaced } from "./sides.ts";
import { tireSizeIn } from "./tire-codes.ts";

/** Words of a phrase that may stand for itself beside a noun that is not known. */
const LEAST_WHOLE = 3;

/** No part is named: it is said of the one last in view. */
export const sayOfView = (draft: Draft, breath: Breath): readonly string[] => {
  const { state } = draft;
  if (breath.piece.join !== "and" && SCENE.test(breath.text)) state.entries = [];
  if (isOfUnknown(draft, breath)) {
    // "The papers are in my name" says by itself what it is of.
    const whole = breath.words.filter(({ from, to }) => to - from >= LEAST_WHOLE);
    return whole.length === 0 ? [] : apply(draft, [], { ...breath, words: whole, numbers: [] }, false);
  }
  const sized = sizeOrAgeOfTires(draft, breath);
  if (sized !== undefined) return sized;
  if (isOilPressure(draft, breath)) return apply(draft, [], breath, false);
  const rowed = nextInRow(draft, breath);
  if (rowed !== undefined) return rowed;
  if (breath.words.length === 0 && breath.numbers.length === 1 && lastIsFault(draft)) {
    const extended = sizeOfFault(draft, breath, []);
    if (extended.length > 0) return extended;
  }
  const placed = isPlaced(breath);
  const isOne =
    /^(?:(?:and|but) )?(?:(?:this|that) one|(?:one|two|three) (?:is|s|has|are|have|of them)|(?:mine|hers|his|yours) (?:is|s|has|does|need|want))\b/u.test(
      breath.text,
    );
  const whole = restOfWhole(draft, breath);
  const group = (whole === undefined ? byNumber(state.entries, breath) : [whole]).map((entry) =>
    isOne
      ? { ...entry, sides: { ...entry.sides, one: true, all: false }, none: false }
      : placed
        ? {
            ...entry,
            sides: replaced(entry.sides, breath.sides),
            plural: entry.plural || breath.sides.adds.length > 0,
            none: false,
          }
        : { ...entry, none: false },
  );
  const own = { ...breath, words: breath.words.filter((word) => !isOfAnother(draft, word, breath, group)) };
  const made = [
    ...apply(draft, group, own, breath.piece.join === "start"),
    ...(own.words.length < breath.words.length
      ? apply(
          draft,
          [],
          { ...breath, words: breath.words.filter((word) => !own.words.includes(word)) },
          false,
        )
      : []),
  ];
  if (made.length > 0) {
    state.applied = true;
    state.open = false;
    if (placed) state.entries = group;
  } else if (placed && breath.words.length > 0 && (breath.sides.other || breath.sides.adds.length > 0))
    state.entries = group;
  return sizeOfFault(draft, breath, made);
};

/** "Are the floors solid, and is the exhaust new?" "It's new": of the one, and not of the several. */
const byNumber = (entries: readonly Entry[], { text }: Breath): readonly Entry[] => {
  const isIt = /^(?:(?:yes|no|well|oh|and|but) )*it\b/u.test(text);
  const areThey = /^(?:(?:yes|no|well|oh|and|but) )*(?:they|these|those)\b/u.test(text);
  if (!isIt && !areThey) return entries;
  const kept = entries.filter(({ plural }) => plural === areThey);
  return kept.length > 0 ? kept : entries;
};

/** "The water is clean" after a gearbox: words within a phrase that speaks of something else by itself. */
const isOfAnother = (
  draft: Draft,
  word: Breath["words"][number],
  { words }: Breath,
  group: readonly Entry[],
): boolean => {
  if (group.some(({ asked }) => asked === true)) return false;
  const items = new Set(group.flatMap(({ subjects }) => subjects.flatMap((one) => one.items)));
  return words.some(
    (other) =>
      (other === word || isOver(other, word)) &&
      other.to - other.from > 1 &&
      other.meanings.every(
        (one) =>
          one.is === "option" && one.alone && !items.has(one.item) && !isSameWord(draft, one.item, items),
      ),
  );
};

const isSameWord = ({ context }: Draft, item: string, items: ReadonlySet<string>): boolean =>
  Object.entries(context.compiled.lexicon.answering.sameWords).some(
    ([one, same]) => same === item && items.has(one),
  );

/** "One chain is broken", "the armrest is torn": of something that is not on the sheet. */
export const isOfUnknown = (draft: Draft, { piece: { from, to, mentions } }: Breath): boolean => {
  const stems = draft.tokens.slice(from, Math.min(to, from + 6)).map(({ stem }) => stem);
  const match = UNKNOWN.exec(stems.join(" "));
  if (match === null) return false;
  const noun = match.groups?.["noun"]?.trim().split(" ") ?? [];
  const begin = from + stems.indexOf(noun[0] ?? "");
  return mentions.every((one) => one.to <= begin || one.from >= begin + noun.length);
};

/** "They're seven years old", "they're from 2019". */
const ofAge = ({ numbers, text }: Breath): boolean =>
  (numbers.some(({ unit }) => unit === "years") && /\b(?:old|age)\b/u.test(text)) ||
  (/\b(?:from|made in|dated)\b/u.test(text) && numbers.some(({ value }) => value >= 1990 && value < 2100));

/** "Plenty of tread. They're one fifty-five thirteens", "they're seven years old": of the tires, whatever of them is in view. */
const sizeOrAgeOfTires = (draft: Draft, breath: Breath): readonly string[] | undefined => {
  const tires = draft.context.compiled.subjects.get("tires");
  const inView = draft.state.entries.flatMap(({ subjects }) => subjects);
  const isAge = ofAge(breath);
  const isOfTires = inView.some(({ id }) =>
    (isAge ? /^(?:tread|pressure|tire-size)$/u : /^(?:tread|pressure|tire-code|spare)$/u).test(id),
  );
  const { from, to } = breath.piece;
  if (
    !isOfTires ||
    tires === undefined ||
    (!isAge && (breath.words.length > 0 || tireSizeIn(draft.tokens, from, to) === undefined))
  )
    return undefined;
  const group = draft.state.entries.map((entry) => ({ ...entry, subjects: [tires], plural: true }));
  bringIntoView(draft, group);
  return apply(draft, group, breath, true);
};
