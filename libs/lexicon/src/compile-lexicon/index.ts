import type { Sheet, Words } from "@evenhand/shared/sheet";
import { doubleMetaphone } from "double-metaphone";
import { expandPattern } from "../expand-pattern/index.ts";
import type { Lexicon } from "../lexicon-version-1/index.ts";
import type { Subject } from "../version-1/subject.ts";

/** What one phrase may mean. */
export type Meaning =
  | { readonly is: "subject"; readonly subject: Subject }
  | { readonly is: "side"; readonly side: string; readonly adds: readonly string[] }
  | { readonly is: "unit"; readonly unit: string; readonly factor: number }
  | { readonly is: "condition"; readonly condition: number }
  | { readonly is: "option"; readonly item: string; readonly option: string; readonly alone: boolean };

type Node = { readonly next: Map<string, Node>; meanings: Meaning[] };

/** A lexicon made ready for searching: phrases as a tree of words, and the words in it by their sound. */
export type CompiledLexicon = {
  readonly lexicon: Lexicon;
  readonly root: Node;
  readonly vocabulary: ReadonlySet<string>;
  /** Words of the trade by their sound, and by their first letter and length, for what was misheard or mistyped. */
  readonly bySound: ReadonlyMap<string, readonly string[]>;
  readonly byShape: ReadonlyMap<string, readonly string[]>;
  readonly subjects: ReadonlyMap<string, Subject>;
};

const node = (): Node => ({ next: new Map(), meanings: [] });

const add = (root: Node, phrase: readonly string[], meaning: Meaning): void => {
  let at = root;
  for (const word of phrase) {
    const next = at.next.get(word) ?? node();
    at.next.set(word, next);
    at = next;
  }
  at.meanings.push(meaning);
};

const addAll = (root: Node, patterns: readonly string[], meaning: Meaning): void => {
  const phrases = new Map(patterns.flatMap(expandPattern).map((phrase) => [phrase.join(" "), phrase]));
  for (const phrase of phrases.values()) add(root, phrase, meaning);
};

const isKnown = (root: Node, phrase: readonly string[]): boolean => {
  let at: Node | undefined = root;
  for (const word of phrase) at = at?.next.get(word);
  return at !== undefined && at.meanings.length > 0;
};

/** "Wheel of steering", "cover of the valves": names of two words, as who speaks the language as a second one may say them. */
const turnedRound = (root: Node, { words }: Subject): string[] =>
  words
    .flatMap(expandPattern)
    .filter(({ length }) => length === 2)
    .flatMap(([whose = "", what = ""]) => [`${what} of ${whose}`, `${what} of the ${whose}`])
    .filter((name) => /^[a-z ]+$/u.test(name) && !isKnown(root, name.split(" ")));

const namesOf = ({ american, british, synonyms }: Words): string[] => [
  american,
  ...(british === undefined ? [] : [british]),
  ...synonyms,
];

/** Characters that patterns give a meaning to are plain in the sheet's words. */
const plain = (name: string): string => name.replaceAll(/[/(),]/gu, " ");

/** Items no subject speaks of by itself: their own names are their subjects. */
const namesOfItems = (sheet: Sheet, lexicon: Lexicon): Subject[] => {
  const said = new Set(
    lexicon.subjects.flatMap(({ words }) => words.flatMap(expandPattern).map((one) => one.join(" "))),
  );
  const spoken = new Set(lexicon.subjects.flatMap(({ items }) => items));
  return sheet.items.flatMap((item) => {
    const { american, british = american } = item.words;
    if (spoken.has(item.id) && item.answer !== "reading" && item.answer !== "code") return [];
    const words = (spoken.has(item.id) ? [american, british] : namesOf(item.words))
      .map(plain)
      .filter((name) =>
        expandPattern(name).every((phrase) => phrase.length > 1 && !said.has(phrase.join(" "))),
      );
    return words.length === 0 ? [] : [{ id: item.id, items: [item.id], words }];
  });
};

const grouped = (
  words: Iterable<string>,
  keysOf: (word: string) => readonly string[],
): Map<string, string[]> => {
  const groups = new Map<string, string[]>();
  for (const word of words)
    for (const key of keysOf(word)) groups.set(key, [...(groups.get(key) ?? []), word]);
  return groups;
};

/** First letter and length, the lengths beside it included. */
const shapesOf = (word: string): string[] =>
  [-1, 0, 1].map((more) => `${word.charAt(0)}${word.length + more}`);

const vocabularyOf = (root: Node): Set<string> => {
  const words = new Set<string>();
  const walk = (at: Node): void => {
    for (const [word, next] of at.next) {
      words.add(word);
      walk(next);
    }
  };
  walk(root);
  return words;
};

/** Items whose options the sheet calls by words that mean anything: "in", "second", "wet", "original". */
const NOT_BY_SHEET = /^(?:road\.(?:lock-up|gear)|visit\.|identity\.title-kind)/u;

const optionsOfSheet = (sheet: Sheet): { item: string; option: string; words: string[] }[] =>
  sheet.items
    .filter(({ id }) => !NOT_BY_SHEET.test(id))
    .flatMap((item) =>
      (item.choice?.options ?? [])
        .filter(({ id }) => id !== "not-known")
        .map((option) => ({
          item: item.id,
          option: option.id,
          words: namesOf(option.words)
            .map(plain)
            .filter((name) => name.trim() !== "other"),
        })),
    );

/**
 * Makes a lexicon ready to be searched, with the names the sheet itself gives its items and options. Done once; `findMentions` asks for it.
 *
 * @example
 * compileLexicon(lexiconVersion1, sheetVersion1).vocabulary.has("rocker"); // true
 */
export const compileLexicon = (lexicon: Lexicon, sheet: Sheet): CompiledLexicon => {
  const root = node();
  const subjects = [...lexicon.subjects, ...namesOfItems(sheet, lexicon)];
  for (const subject of subjects) addAll(root, subject.words, { is: "subject", subject });
  for (const subject of subjects) addAll(root, turnedRound(root, subject), { is: "subject", subject });
  for (const { id, adds, words } of lexicon.sides) addAll(root, words, { is: "side", side: id, adds });
  for (const { unit, factor, words } of lexicon.units) addAll(root, words, { is: "unit", unit, factor });
  for (const [index, { words }] of lexicon.conditions.entries())
    addAll(root, words, { is: "condition", condition: index });
  for (const { item, option, words, alone } of lexicon.options)
    addAll(root, words, { is: "option", item, option, alone });
  for (const { item, option, words } of optionsOfSheet(sheet))
    addAll(root, words, { is: "option", item, option, alone: false });
  const vocabulary = vocabularyOf(root);
  const long = [...vocabulary].filter((word) => word.length >= 5 && /^[a-z]+$/u.test(word));
  return {
    lexicon,
    root,
    vocabulary,
    bySound: grouped(long, (word) => [...new Set(doubleMetaphone(word))]),
    byShape: grouped(long, shapesOf),
    subjects: new Map(subjects.map((subject) => [subject.id, subject])),
  };
};
