import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import type { Mention, Said } from "@evenhand/lexicon/find-mentions";
import type { Sense } from "@evenhand/lexicon/lexicon-version-1";
import type { Item } from "@evenhand/shared/sheet";
import { isOver } from "../spans/index.ts";

/** A word of condition as it stands in a remark: what it may mean, and whether it was said not to be so. */
export type SaidWord = {
  readonly meanings: readonly Said[];
  readonly negated: boolean;
  readonly from: number;
  readonly to: number;
};

export type SaidNumber = Extract<Mention, { is: "number" }>;

/** What was said in one breath, as far as it can answer an item. */
export type SaidOf = {
  readonly words: readonly SaidWord[];
  readonly numbers: readonly SaidNumber[];
  /** The subject was named in the same breath. */
  readonly named: boolean;
  /** The item is the first that its subject may mean. */
  readonly isFirst: boolean;
  /** A fault of its kind has an item of its own beside this one. */
  readonly faultsElsewhere: readonly string[];
  /** The subject itself was said not to be there: "no radio". */
  readonly noSubject: boolean;
  /** It was said to be there: "it has", "there's". */
  readonly has: boolean;
  readonly yesOrNo: "yes" | "no" | undefined;
  /** The bare words, for what hangs on one of them. */
  readonly text: string;
  /** What was said of a part is of its paint: "the paint on it is original". */
  readonly ofPaint: boolean;
  readonly year: number;
  /** A number without a unit may be meant for it. */
  readonly bare: boolean;
};

export const sensesOf = (word: SaidWord, { lexicon }: CompiledLexicon): readonly Sense[] =>
  word.meanings.flatMap((meaning) =>
    meaning.is === "condition" ? (lexicon.conditions[meaning.condition]?.senses ?? []) : [],
  );

export const longestFirst = (words: readonly SaidWord[]): readonly SaidWord[] =>
  words.toSorted((a, b) => b.to - b.from - (a.to - a.from) || a.from - b.from);

/** "Like new", "nearly new": within a longer word that says what it looks like, nothing is said to be new. */
export const isLikened = (word: SaidWord, said: SaidOf, compiled: CompiledLexicon): boolean =>
  said.words.some(
    (other) =>
      isOver(other, word) &&
      sensesOf(other, compiled).some((sense) => "grade" in sense && sense.grade === "as-new") &&
      !sensesOf(other, compiled).some((sense) => "general" in sense && sense.general === "new"),
  );

export type OptionSaid = { readonly option: string; readonly negated: boolean; readonly word: SaidWord };

export const optionsSaid = (item: Item, { words }: SaidOf): OptionSaid[] =>
  longestFirst(words).flatMap((word) =>
    word.meanings.flatMap((meaning) =>
      meaning.is === "option" && meaning.item === item.id
        ? [{ option: meaning.option, negated: word.negated, word }]
        : [],
    ),
  );

export const isFaultElsewhere = (word: SaidWord, said: SaidOf, compiled: CompiledLexicon): boolean =>
  sensesOf(word, compiled).some((sense) => "fault" in sense && said.faultsElsewhere.includes(sense.fault));
