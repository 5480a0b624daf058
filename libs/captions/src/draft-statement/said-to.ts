import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { answerOf } from "../answer-of/index.ts";
import type { SaidNumber, SaidOf, SaidWord } from "../answer-of/index.ts";
import type { Breath } from "./breath.ts";
import { wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { behindFirst } from "./phrases.ts";

export const saidTo = (
  draft: Draft,
  breath: Breath,
  words: readonly SaidWord[],
  entry: Entry | undefined,
  item: Item,
): SaidOf => {
  const isFirst = entry?.subjects.some((one) => one.items[0] === item.id) === true;
  const same = draft.context.compiled.lexicon.answering.sameWords[item.id];
  return {
    words:
      same === undefined
        ? words
        : words.map((word) => ({
            ...word,
            meanings: word.meanings.map((one) =>
              one.is === "option" && one.item === same ? { ...one, item: item.id } : one,
            ),
          })),
    numbers: behindFirst(breath.numbers, entry).map((number) => withUnit(draft, number, item)),
    isFirst,
    faultsElsewhere:
      entry?.subjects.flatMap((one) =>
        one.items.filter((id) => id !== item.id).flatMap((id) => draft.items.get(id)?.faults?.kinds ?? []),
      ) ?? [],
    named: entry !== undefined && entry.from >= breath.piece.from && entry.to <= breath.piece.to,
    bare: isBare(draft, entry, item),
    noSubject: entry?.none === true && isFirst,
    has: breath.has && isFirst,
    yesOrNo: isFirst || entry === undefined || areAllWorking(draft, entry) ? breath.yesOrNo : undefined,
    text: breath.text,
    ofPaint: draft.state.paint || /\b(?:paint|finish)\b/u.test(breath.text),
    year: draft.context.year,
  };
};

/** "Gauges?" "Every one of them": a name for several that all work or do not. */
const areAllWorking = ({ items }: Draft, { subjects }: Entry): boolean =>
  subjects.every(
    (one) => one.items.length > 1 && one.items.every((id) => items.get(id)?.answer === "working"),
  );

/** A number without a unit has the one of the number said before it of the same item. */
export const withUnit = (draft: Draft, number: SaidNumber, item: Item): SaidNumber => {
  const last = draft.state.reading;
  if (number.unit !== undefined || last?.item !== item.id) return number;
  const { unit, value } = last;
  const alike = number.value <= value * 5 && number.value * 5 >= value;
  return alike ? { ...number, unit } : number;
};

/** A number without a unit is meant for the reading a subject means first. */
export const isBare = (draft: Draft, entry: Entry | undefined, item: Item): boolean => {
  if (entry === undefined) return false;
  if (draft.state.reading?.item === item.id) return true;
  if (item.id === "body.paint-thickness" && draft.state.paint) return true;
  return entry.subjects.some((one) => {
    const at = one.items.indexOf(item.id);
    return one.items
      .slice(0, Math.max(0, at))
      .every((id) => draft.items.get(id)?.answer === "reading" || id === "electrics.oil-gauge");
  });
};

export const answerByNumber = (draft: Draft, item: Item, breath: Breath): Answer | undefined => {
  return answerOf(
    item,
    { ...saidTo(draft, breath, breath.words, undefined, item), bare: true },
    draft.context.compiled,
    (word) => wordsOf(draft, word),
  );
};
