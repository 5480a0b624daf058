import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { SaidNumber, SaidWord } from "../answer-of/index.ts";
import type { Piece } from "../pieces/index.ts";
import type { SaidSides } from "../places-of/index.ts";
import { entriesOf, ledTo } from "./entries.ts";
import type { Entry } from "./entries.ts";
import { wordsOf } from "./negation.ts";
import { indexOf, isCountOf, isDistance, isLimit, isPronoun, isRange } from "./numbers.ts";

/** One piece of talk, taken apart. */
export type Breath = {
  readonly piece: Piece;
  readonly entries: readonly Entry[];
  readonly sides: SaidSides;
  readonly words: readonly SaidWord[];
  readonly numbers: readonly SaidNumber[];
  readonly text: string;
  readonly yesOrNo: "yes" | "no" | undefined;
  readonly has: boolean;
  /** "The same": what was said last is said of this too. */
  readonly same: boolean;
  /** Only "it doesn't", "the right one isn't": what was said last, the other way round; or "it does". */
  readonly ellipsis: "yes" | "no" | undefined;
  /** What was said just before is taken back. */
  readonly corrects: boolean;
};

const FILLERS = new Set([
  "um",
  "uh",
  "er",
  "erm",
  "like",
  "you",
  "know",
  "well",
  "so",
  "yeah",
  "yes",
  "okay",
  "ok",
  "now",
  "and",
  "the",
  "sir",
  "madam",
  "mate",
  "buddy",
  "man",
]);

/** "The driver's", and not "the driver's side". */
const isSeat = (tokens: readonly RepairedToken[], { from, to }: Mention): boolean =>
  /^(?:driver|passenger)$/u.test(tokens[from]?.stem ?? "") &&
  tokens.slice(from, to).every(({ stem }) => stem !== "side");

const sidesOf = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  index: number | undefined,
  text: string,
): SaidSides => {
  const sides = mentions.filter((one) => one.is === "side");
  const adds = sides.flatMap((one) => (/^(?:all|both|other|this|spare)$/u.test(one.side) ? [] : one.adds));
  const has = (side: string): boolean => sides.some((one) => one.side === side);
  const five = /\b(?:all five|five of them|including the spare)\b/u.test(text);
  const seat = sides.some((one) => isSeat(tokens, one));
  return {
    adds,
    all: has("all") || has("both"),
    other: has("other"),
    spare: has("spare") || five,
    ...(seat ? { seat } : {}),
    ...(ONE_OF.test(text) ? { one: true } : {}),
    index,
  };
};

/** "One of the rears is", "one of the front shocks leaks": and nobody says which. */
const ONE_OF =
  /^(?:(?:and|but|yes|well|oh|only|just|maybe|there is|it is) )*one of (?:the|my|its|these|those) (?:front|rear|back|left|right|driver|passenger|upper|lower|inner|outer)\b/u;

const HAS =
  /\b(?:has|have|had|got|there (?:is|s|are)|(?:is|s|are) (?:in|under|behind|on board|still)|come with|include|found|retain|keep|with|here|it has|both|two|all there|present|can smell|(?:i|we) (?:smell|find|see))\b/u;

const CORRECTS =
  /^(?:no |wait |oh |oop |actually |well )*(?:no sorry|sorry|hang on|hold on|scratch that|i mean|make that|correction|or rather|rather|my mistake|wait no|no wait|let me correct|strike that|no no|excuse me|i meant)\b/u;

const ELLIPSIS = /^(?:.* )?(?:is|are|was|do|does|did|has|have|will|can|s) (not)(?: either| any ?more| so)?$/u;

const AFFIRMS = /^(?:.* )?(?:(?:does|do|is|are|did)(?: too| so| as well)?|(?:has|have) (?:too|so|as well))$/u;

const withoutFillers = (stems: readonly string[]): readonly string[] => {
  let [from, to] = [0, stems.length];
  while (from < to && FILLERS.has(stems[from] ?? "") && stems[from] !== "yes") from += 1;
  if (from === to) return stems;
  while (
    to > from &&
    /^(?:um|uh|er|though|yeah|mind|anyway|right|sir|madam|mate|buddy|ma|am|,)$/u.test(stems[to - 1] ?? "")
  )
    to -= 1;
  return stems.slice(from, to);
};

export const ellipsisOf = (text: string, isBare: boolean): "yes" | "no" | undefined => {
  if (!isBare || text.endsWith("believe it or not")) return undefined;
  if (ELLIPSIS.test(text) || /^(?:\S+ ){0,4}not$/u.test(text)) return "no";
  return AFFIRMS.test(text) ? "yes" : undefined;
};

/** Takes a piece apart. `carried`: the piece before denied, and this one only goes on with its list. */
export const breathOf = (tokens: readonly RepairedToken[], piece: Piece, carried: boolean): Breath => {
  const stems = withoutFillers(tokens.slice(piece.from, piece.to).map(({ stem }) => stem));
  const text = stems.join(" ");
  const whole = tokens
    .slice(piece.from, piece.to)
    .map(({ stem }) => stem)
    .join(" ");
  const allNumbers = piece.mentions.filter(
    (one): one is SaidNumber =>
      one.is === "number" && !isRange(tokens, one) && !isPronoun(tokens, one) && !isCountOf(tokens, one),
  );
  const index = allNumbers.map((one) => indexOf(tokens, one)).find((one) => one !== undefined);
  const numbers = allNumbers.filter(
    (one) => indexOf(tokens, one) === undefined && !isLimit(tokens, one) && !isDistance(tokens, one),
  );
  const sides = sidesOf(tokens, piece.mentions, index, whole);
  const isOnlyFiller = stems.every((stem) => FILLERS.has(stem) && stem !== "yes");
  const words = isOnlyFiller ? [] : wordsOf(tokens, piece, carried);
  const entries = ledTo(tokens, entriesOf(tokens, piece, sides, text));
  const isBare =
    numbers.length === 0 &&
    words.every(({ from, to, negated }) => to - from === 1 && !negated && isFiller(tokens[from]?.stem ?? ""));
  const bare = bareOf(tokens, piece, entries, stems);
  const answer = /^(?:nothing(?: at all)?|not a thing|not (?:at all|a bit|hot|warm|cold))$/u.test(bare)
    ? "no"
    : /^(yes|no)$/u.exec(bare)?.[1];
  return {
    piece,
    entries,
    sides,
    words,
    numbers,
    text,
    yesOrNo: answer === "yes" || answer === "no" ? answer : undefined,
    has: HAS.test(text),
    same: /\b(?:same|likewise|ditto|that one too|another(?: one)?|so (?:is|are|does|do)|as well|also(?= ?$)|too(?! [a-z]))\b/u.test(
      whole,
    ),
    ellipsis: ellipsisOf(text, isBare && words.length === 0),
    corrects: CORRECTS.test(whole),
  };
};

/** "Yes", and what is left of "wipers yes": the answer behind the name. */
const bareOf = (
  tokens: readonly RepairedToken[],
  { from, to }: Piece,
  entries: readonly Entry[],
  stems: readonly string[],
): string => {
  const [first] = entries;
  const isBehind = first !== undefined && entries.length === 1 && first.to === to - 1;
  const lead = isBehind ? tokens.slice(from, first.from).map(({ stem }) => stem) : [];
  return isBehind && lead.every((stem) => /^(?:the|and|,|but)$/u.test(stem))
    ? (tokens[to - 1]?.stem ?? "")
    : stems.filter((stem) => stem !== "s").join(" ");
};

const isFiller = (stem: string): boolean => FILLERS.has(stem);
