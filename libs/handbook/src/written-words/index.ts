/** Numbers that people write in words where they describe a thing. */
const IN_FIGURES: Readonly<Record<string, string>> = {
  ONE: "1",
  TWO: "2",
  THREE: "3",
  FOUR: "4",
  FIVE: "5",
  SIX: "6",
  SEVEN: "7",
  EIGHT: "8",
  NINE: "9",
  TEN: "10",
};

/**
 * The words and figures of a text, in capitals and without its marks; a point between two digits stays.
 *
 * @example wordsOf("Four-speed, 3.55") // ["4", "SPEED", "3.55"]
 */
export const wordsOf = (text: string): readonly string[] =>
  (text.toUpperCase().match(/\d+(?:\.\d+)*|\p{L}+/gu) ?? []).map((word) => IN_FIGURES[word] ?? word);

const SHORTEST_ABBREVIATION = 3;

/** `BLK` of `BLACK`: begins alike, and every further letter follows in its order. */
const isAbbreviation = (short: string, long: string): boolean => {
  if (short.length < SHORTEST_ABBREVIATION || short.length >= long.length || short[0] !== long[0])
    return false;
  let at = 0;
  for (const letter of long) if (letter === short[at]) at += 1;
  return at === short.length;
};

const isSameWord = (a: string, b: string): boolean => {
  if (a === b) return true;
  if (/\d/.test(a + b)) return false;
  return isAbbreviation(a, b) || isAbbreviation(b, a);
};

const holds = (words: readonly string[], word: string): boolean =>
  words.some((each) => isSameWord(each, word));

const holdsAll = (words: readonly string[], others: readonly string[]): boolean =>
  others.length > 0 && others.every((word) => holds(words, word));

const sorted = (words: readonly string[]): string => [...new Set(words)].toSorted().join(" ");

/**
 * Whether two texts are of the same words and figures, whatever their order and marks: `4-speed manual` and `manual, four speed`, `95H`
 * and `95 H`.
 *
 * @example areSameWords("95H", "95 h") // true
 */
export const areSameWords = (a: string, b: string): boolean => {
  const [one, other] = [wordsOf(a), wordsOf(b)];
  if (one.length === 0 || other.length === 0) return false;
  return sorted(one) === sorted(other);
};

/**
 * Whether everything the one text says is in the other, which says more, or abbreviates it: `green` and `dark green`, `GH` and `GH 3.55`.
 *
 * @example saysLess("green", "dark green") // true
 */
export const saysLess = (a: string, b: string): boolean => {
  const [one, other] = [wordsOf(a), wordsOf(b)];
  return holdsAll(one, other) || holdsAll(other, one);
};

/** What a thing cannot be at once. */
const OPPOSITES: readonly (readonly [string, string])[] = [
  ["MANUAL", "AUTOMATIC"],
  ["MANUAL", "AUTO"],
  ["COLUMN", "FLOOR"],
];

const figuresIn = (words: readonly string[]): readonly string[] => words.filter((word) => /^\d+$/.test(word));

/**
 * Whether two descriptions of one thing cannot both be true: they give other figures, or words that exclude each other.
 *
 * @example excludeEachOther("4-speed manual", "five speed") // true
 */
export const excludeEachOther = (a: string, b: string): boolean => {
  const [one, other] = [wordsOf(a), wordsOf(b)];
  const [figures, others] = [figuresIn(one), figuresIn(other)];
  if (figures.length > 0 && others.length > 0 && !figures.some((figure) => others.includes(figure)))
    return true;
  return OPPOSITES.some(
    ([left, right]) =>
      (one.includes(left) && other.includes(right)) || (one.includes(right) && other.includes(left)),
  );
};
