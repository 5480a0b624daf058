import { doubleMetaphone } from "double-metaphone";
import { distance } from "fastest-levenshtein";
import type { CompiledLexicon } from "../compile-lexicon/index.ts";
import { numberWords } from "../number-words/index.ts";
import { tokenize } from "../tokenize/index.ts";
import type { Token } from "../tokenize/index.ts";

/** A token as it is taken; `heard` is what stood there where that was something else. */
export type RepairedToken = Token & { readonly heard?: string };

type Slip = { readonly heard: readonly string[]; readonly meant: readonly string[] };

const slipsOf = new WeakMap<CompiledLexicon, ReadonlyMap<string, readonly Slip[]>>();

const stems = (text: string): string[] => tokenize(text).map((token) => token.stem);

const slipsByFirst = (compiled: CompiledLexicon): ReadonlyMap<string, readonly Slip[]> => {
  const known = slipsOf.get(compiled);
  if (known !== undefined) return known;
  const groups = new Map<string, Slip[]>();
  for (const [heard, meant] of Object.entries(compiled.lexicon.slips)) {
    const slip = { heard: stems(heard), meant: stems(meant) };
    const first = slip.heard[0] ?? "";
    groups.set(
      first,
      [...(groups.get(first) ?? []), slip].toSorted((a, b) => b.heard.length - a.heard.length),
    );
  }
  slipsOf.set(compiled, groups);
  return groups;
};

type Kept = { readonly known: ReadonlySet<string>; readonly ordinary: ReadonlySet<string> };

const keptOf = new WeakMap<CompiledLexicon, Kept>();
const keptIn = (compiled: CompiledLexicon): Kept => {
  const { known, ordinary } = compiled.lexicon;
  const kept = keptOf.get(compiled) ?? { known: new Set(known), ordinary: new Set(ordinary) };
  keptOf.set(compiled, kept);
  return kept;
};

const SHORTEST = 6;
const SHORTEST_BY_SOUND = 5;
const LONG = 9;
/** Two words sound alike enough, after a word that leads to one of them, where so much of their letters is the same. */
const ALIKE = 0.4;

const near = (heard: string, compiled: CompiledLexicon): string | undefined => {
  const shape = compiled.byShape.get(`${heard.charAt(0)}${heard.length}`) ?? [];
  const allowed = heard.length >= LONG ? 2 : 1;
  const byShape = heard.length < SHORTEST ? [] : shape.filter((word) => distance(word, heard) <= allowed);
  const bySound =
    heard.length < SHORTEST_BY_SOUND
      ? []
      : doubleMetaphone(heard)
          .flatMap((sound) => compiled.bySound.get(sound) ?? [])
          .filter((word) => word.charAt(0) === heard.charAt(0) && distance(word, heard) <= 2);
  return [...byShape, ...bySound].toSorted((a, b) => distance(a, heard) - distance(b, heard))[0];
};

/** What may follow the word before, where one of it looks and sounds like what was heard. */
const expected = (before: string, heard: string, compiled: CompiledLexicon): string | undefined => {
  if (heard.length < SHORTEST_BY_SOUND) return undefined;
  const sound = doubleMetaphone(heard)[0];
  return [...(compiled.root.next.get(before)?.next.keys() ?? [])].find(
    (word) =>
      word.length >= SHORTEST_BY_SOUND &&
      word.charAt(0) === heard.charAt(0) &&
      distance(word, heard) <= ALIKE * word.length &&
      distance(doubleMetaphone(word)[0], sound) <= 1,
  );
};

const isWord = (token: Token | undefined): token is Token => token?.kind === "word";

const slipAt = (tokens: readonly Token[], at: number, compiled: CompiledLexicon): Slip | undefined =>
  slipsByFirst(compiled)
    .get(tokens[at]?.stem ?? "")
    ?.find(({ heard }) => heard.every((word, index) => tokens[at + index]?.stem === word));

const joinedAt = (tokens: readonly Token[], at: number, compiled: CompiledLexicon): string | undefined => {
  const [one, two] = [tokens[at], tokens[at + 1]];
  if (!isWord(one) || !isWord(two)) return undefined;
  const joined = `${one.stem}${two.stem}`;
  const apart = compiled.root.next.get(one.stem)?.next.has(two.stem) === true;
  return !apart &&
    joined.length >= SHORTEST_BY_SOUND &&
    one.stem.length > 1 &&
    compiled.vocabulary.has(joined)
    ? joined
    : undefined;
};

const singleAt = (tokens: readonly Token[], at: number, compiled: CompiledLexicon): string | undefined => {
  const token = tokens[at];
  if (!isWord(token) || compiled.vocabulary.has(token.stem) || numberWords.has(token.stem)) return undefined;
  const { known, ordinary } = keptIn(compiled);
  if (known.has(token.stem)) return undefined;
  const meant = expected(tokens[at - 1]?.stem ?? "", token.stem, compiled);
  return meant ?? (ordinary.has(token.stem) ? undefined : near(token.stem, compiled));
};

/**
 * Puts right what was misheard or mistyped: by the list of slips, by words cut in two, by sound and by spelling; each kept with what was
 * heard, so that it can be shown. Ordinary words are left alone.
 *
 * @example
 * repair(tokenize("the rock her panel"), compiled).map(({ stem }) => stem); // ["the", "rocker", "panel"]
 */
export const repair = (tokens: readonly Token[], compiled: CompiledLexicon): RepairedToken[] => {
  const made: RepairedToken[] = [];
  for (let at = 0; at < tokens.length;) {
    const token = tokens[at];
    if (token === undefined) break;
    const slip = slipAt(tokens, at, compiled);
    const joined = slip === undefined ? joinedAt(tokens, at, compiled) : undefined;
    const single = slip === undefined && joined === undefined ? singleAt(tokens, at, compiled) : undefined;
    const count = slip?.heard.length ?? (joined === undefined ? 1 : 2);
    const meant = slip?.meant ?? [joined ?? single ?? token.stem];
    const last = tokens[at + count - 1] ?? token;
    const heard = tokens.slice(at, at + count).map(({ stem }) => stem);
    const same = heard.join("") === meant.join("");
    for (const stem of meant)
      made.push({
        ...token,
        stem,
        end: last.end,
        plural: last.plural,
        ...(same ? {} : { heard: heard.join(" ") }),
      });
    at += count;
  }
  return made;
};
