import { stem } from "../stem/index.ts";

/** A word, number or mark of a text. `stem` is how the lexicon knows it; `start` and `end` where it stands in the text. */
export type Token = {
  readonly stem: string;
  readonly kind: "word" | "number" | "mark";
  readonly start: number;
  readonly end: number;
  /** Said of several: its own form is a plural. */
  readonly plural: boolean;
};

const PIECES =
  /\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?|\.\d+|\p{L}\p{M}*(?:[\p{L}\p{M}]*)(?:['’]\p{L}+)*|>>|[.,;:?!()%"…—–-]/gu;

const CONTRACTED: Readonly<Record<string, readonly string[]>> = {
  cannot: ["can", "not"],
  doesnt: ["does", "not"],
  dont: ["do", "not"],
  didnt: ["did", "not"],
  isnt: ["is", "not"],
  arent: ["are", "not"],
  wasnt: ["was", "not"],
  hasnt: ["has", "not"],
  havent: ["have", "not"],
  wont: ["will", "not"],
  cant: ["can", "not"],
  theres: ["there", "is"],
  aint: ["is", "not"],
  wouldnt: ["would", "not"],
};
const ENDINGS: Readonly<Record<string, string>> = {
  "'s": "s",
  "'ve": "have",
  "'re": "are",
  "'ll": "will",
  "'d": "would",
  "'m": "am",
};

/** After these an "'s" is "is"; after a name it may be a genitive. */
const IS_BEFORE = new Set(["it", "that", "there", "he", "she", "what", "who", "here", "where", "everything"]);

const wordsOf = (piece: string): readonly string[] => {
  const plain = piece.toLowerCase().replaceAll("’", "'");
  const bare = plain.replaceAll("'", "");
  const contracted = Object.hasOwn(CONTRACTED, bare) ? CONTRACTED[bare] : undefined;
  if (contracted !== undefined) return contracted;
  const at = plain.lastIndexOf("'");
  if (at <= 0) return [plain];
  if (plain.endsWith("n't")) return [plain.slice(0, -3), "not"];
  const ending = plain.endsWith("'s") && IS_BEFORE.has(plain.slice(0, at)) ? "is" : ENDINGS[plain.slice(at)];
  return ending === undefined ? [plain.replaceAll("'", "")] : [plain.slice(0, at), ending];
};

const kindOf = (piece: string): Token["kind"] =>
  /^[.]?\d/u.test(piece) ? "number" : /^\p{L}/u.test(piece) ? "word" : "mark";

const isPlural = (word: string): boolean => /[^su']s$/iu.test(word) && stem(word) !== word.toLowerCase();

/**
 * Takes a text apart into words, numbers and marks. Contractions become two words ("doesn't" is "does" and "not"), so that a negation
 * is always a word of its own.
 *
 * @example
 * tokenize("The tyres don't leak.").map(({ stem }) => stem); // ["the", "tire", "do", "not", "leak", "."]
 */
export const tokenize = (text: string): Token[] =>
  Array.from(text.matchAll(PIECES)).flatMap((match) => {
    const piece = match[0];
    const kind = kindOf(piece);
    const place = { start: match.index, end: match.index + piece.length, kind };
    if (kind !== "word")
      return [{ ...place, stem: piece.replaceAll(",", piece.length > 1 ? "" : ","), plural: false }];
    return wordsOf(piece).map((word) => ({ ...place, stem: stem(word), plural: isPlural(word) }));
  });
