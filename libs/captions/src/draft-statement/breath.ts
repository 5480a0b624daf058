import type { Mention } from "@evenhand/lexicon/find-mentions";
import { numberAt } from "@evenhand/lexicon/number-words";
import type { Subject } from "@evenhand/lexicon/lexicon-version-1";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { SaidNumber, SaidWord } from "../answer-of/index.ts";
import type { Piece } from "../pieces/index.ts";
import { LEADS } from "../pieces/index.ts";
import type { SaidSides } from "../places-of/index.ts";

/** A part in view: what was named, and where. */
export type Entry = {
  readonly subjects: readonly Subject[];
  readonly sides: SaidSides;
  readonly plural: boolean;
  /** It was said not to be there. */
  readonly none: boolean;
  readonly from: number;
  readonly to: number;
  readonly confidence: number;
  readonly heard: readonly string[];
  /** Words of the piece it was named in. */
  readonly context: string;
  /** Places named after it: "on the tailgate". */
  readonly within: readonly string[];
  /** What was named after it, where it is that which is spoken of: "the engine has a leak at the oil pan". */
  readonly instead?: Entry;
};

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

const NEGATORS = new Set([
  "no",
  "not",
  "never",
  "without",
  "nor",
  "neither",
  "nothing",
  "none",
  "nobody",
  "barely",
  "hardly",
  "scarcely",
]);
const STOPS_NEGATION = new Set(["just", "but", "only", "except"]);
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

const indexOf = (tokens: readonly RepairedToken[], { from, value, unit }: SaidNumber): number | undefined => {
  const before = tokens[from - 1]?.stem ?? "";
  const whole = Number.isInteger(value) && value >= 1 && value <= 16 && unit === undefined;
  return whole && /^(?:on|number|cylinder|no|#)$/u.test(before) ? value : undefined;
};

/** "The right one", "another one": no number. */
const isPronoun = (tokens: readonly RepairedToken[], { from, to, unit, value }: SaidNumber): boolean =>
  value === 1 &&
  unit === undefined &&
  to - from === 1 &&
  tokens[from]?.stem === "one" &&
  (tokens[to]?.stem === "of" ||
    (!/^(?:on|number|cylinder|and|,)$/u.test(tokens[from - 1]?.stem ?? "") &&
      numberAt(tokens, from - 1) === undefined));

/** "Cylinders one through six" counts them. */
const isRange = (tokens: readonly RepairedToken[], { from, to, value, unit }: SaidNumber): boolean =>
  Number.isInteger(value) &&
  value <= 16 &&
  unit === undefined &&
  (/^(?:through|to|thru)$/u.test(tokens[to]?.stem ?? "") ||
    /^(?:through|thru)$/u.test(tokens[from - 1]?.stem ?? ""));

/** "Limit eight", "minimum of eight": what a thing should be, and not what it is. */
const isLimit = (tokens: readonly RepairedToken[], { from }: SaidNumber): boolean =>
  /^(?:limit|minimum|min|maximum|max|spec|specification)$/u.test(
    tokens[/^(?:of|is|s|:|are)$/u.test(tokens[from - 1]?.stem ?? "") ? from - 2 : from - 1]?.stem ?? "",
  );

const sidesOf = (mentions: readonly Mention[], index: number | undefined, text: string): SaidSides => {
  const sides = mentions.filter((one) => one.is === "side");
  const adds = sides.flatMap((one) => (/^(?:all|both|other|this|spare)$/u.test(one.side) ? [] : one.adds));
  const has = (side: string): boolean => sides.some((one) => one.side === side);
  const five = /\b(?:all five|five of them|including the spare)\b/u.test(text);
  return { adds, all: has("all") || has("both"), other: has("other"), spare: has("spare") || five, index };
};

const isNegated = (tokens: readonly RepairedToken[], from: number, least: number): boolean => {
  for (let at = from - 1; at >= least; at -= 1) {
    const stem = tokens[at]?.stem ?? "";
    if (STOPS_NEGATION.has(stem) || /^(?:it|they|she|he|there)$/u.test(stem)) return false;
    if (stem === "get" && tokens[at + 1]?.stem === "to") return false;
    if (stem === "free" && /^(?:of|from)$/u.test(tokens[at + 1]?.stem ?? "")) return true;
    if (NEGATORS.has(stem)) return tokens[at + 1]?.stem !== "only";
  }
  return false;
};

type SaidMention = Extract<Mention, { is: "said" }>;

const within = (one: { from: number; to: number }, other: { from: number; to: number }): boolean =>
  other !== one && other.from <= one.from && other.to >= one.to && other.to - other.from > one.to - one.from;

/** "No dents, scratches": a list goes on with words of condition, and not with another part or a phrase of its own. */
const goesOnWith = (
  tokens: readonly RepairedToken[],
  { mentions }: Piece,
  { from, meanings }: SaidMention,
): boolean =>
  !NEGATORS.has(tokens[from]?.stem ?? "") &&
  !LEADS.has(tokens[from]?.stem ?? "") &&
  meanings.some((meaning) => meaning.is === "condition") &&
  !mentions.some(({ is }) => is === "subject");

/** Each word with its negation: a "no" before it, carried on by "or" and by words of one list. */
const wordsOf = (tokens: readonly RepairedToken[], piece: Piece, carried: boolean): SaidWord[] => {
  const said = piece.mentions.filter((one): one is SaidMention => one.is === "said");
  const words: SaidWord[] = [];
  let end = piece.from;
  let last = carried;
  for (const mention of said) {
    const inside = said.some((other) => within(mention, other));
    const isOverlaid = said.some((other) => other.from < mention.from && other.to > mention.from);
    const start = inside || isOverlaid ? piece.from : end;
    // "Don't do nothing": what denies already is not denied anew.
    const denies = tokens.slice(mention.from, mention.to).some(({ stem }) => NEGATORS.has(stem));
    const own =
      isDeniedBehind(tokens, mention.to) ||
      (!denies && isNegated(tokens, mention.from, Math.min(start, mention.from)));
    const listed =
      last &&
      /^(?:or|nor|,|and)$/u.test(tokens[mention.from - 1]?.stem ?? "") &&
      mention.from - 1 >= piece.from;
    const first =
      carried && words.length === 0 && mention.from - piece.from <= 1 && goesOnWith(tokens, piece, mention);
    const negated = own || listed || first;
    words.push({ meanings: mention.meanings, negated, from: mention.from, to: mention.to });
    if (!inside) {
      end = Math.max(end, mention.to);
      last = negated;
    }
  }
  return words;
};

/** "Delamination none", "corrosion: nil". */
const isDeniedBehind = (tokens: readonly RepairedToken[], to: number): boolean => {
  const at = /^[:,]$/u.test(tokens[to]?.stem ?? "") ? to + 1 : to;
  return (
    /^(?:none|nil|zero)$/u.test(tokens[at]?.stem ?? "") && /^(?:[.;,]|)$/u.test(tokens[at + 1]?.stem ?? "")
  );
};

type SubjectMention = Extract<Mention, { is: "subject" }>;

const before = (tokens: readonly RepairedToken[], at: number): string =>
  tokens
    .slice(Math.max(0, at - 3), at)
    .map(({ stem }) => stem)
    .join(" ");

/** A subject inside a longer thing that is said ("oil pressure" in "holds oil pressure") still is one; of two over one another the longer. */
const entriesOf = (
  tokens: readonly RepairedToken[],
  piece: Piece,
  sides: SaidSides,
  context: string,
): Entry[] =>
  piece.mentions
    .filter((one): one is SubjectMention => one.is === "subject")
    .map((one) => ({
      subjects: one.subjects,
      context,
      within: [],
      sides: {
        ...sides,
        adds: [...sides.adds, ...sidesInside(tokens, one)],
        one:
          tokens[one.from - 1]?.stem === "one" ||
          /\bone of (?:the|my|its|these|those)$/u.test(before(tokens, one.from)),
      },
      plural: one.plural || (sides.all && !/^(?:each|every)$/u.test(tokens[one.from - 1]?.stem ?? "")),
      none:
        isNegated(tokens, one.from, Math.max(piece.from, one.from - 4)) && nothingBetween(tokens, piece, one),
      from: one.from,
      to: one.to,
      confidence: one.confidence,
      heard: one.heard === undefined ? [] : [one.heard],
    }));

const sidesInside = (tokens: readonly RepairedToken[], { from, to, subjects }: SubjectMention): string[] =>
  tokens
    .slice(from, to)
    .flatMap(({ stem }) =>
      /^(?:left|right)$/u.test(stem) ||
      (/^(?:front|rear)$/u.test(stem) && subjects.some(({ id }) => id === "lamps"))
        ? [stem]
        : [],
    );

/** A part that is led to from another says where on it, or is the one spoken of if the other cannot be. */
const ledTo = (tokens: readonly RepairedToken[], entries: readonly Entry[]): Entry[] =>
  entries.reduceRight<Entry[]>((later, entry) => {
    const [next, ...rest] = later;
    if (next === undefined || !isLed(tokens, entry.to, next.from)) return [entry, ...later];
    // "No leaks from the radiator" speaks of the radiator.
    if (entry.subjects.every(({ id }) => id === "leaks")) return [{ ...next, none: false }, ...rest];
    return [{ ...entry, within: next.subjects.flatMap(({ at = [] }) => at), instead: next }, ...rest];
  }, []);

const isLed = (tokens: readonly RepairedToken[], from: number, to: number): boolean => {
  for (let at = to - 1; at >= from; at -= 1) {
    const stem = tokens[at]?.stem ?? "";
    if (LEADS.has(stem)) return true;
    if (!/^(?:the|a|an|my|its|your|left|right|front|rear|driver|passenger|s|side)$/u.test(stem)) return false;
  }
  return false;
};

/** "no rust in the floors" says nothing of floors that are not there. */
const nothingBetween = (tokens: readonly RepairedToken[], piece: Piece, one: SubjectMention): boolean => {
  for (let at = one.from - 1; at >= piece.from; at -= 1) {
    const stem = tokens[at]?.stem ?? "";
    if (NEGATORS.has(stem)) return true;
    if (LEADS.has(stem) && stem !== "of") return false;
    // "Does not match the registration document"
    if (/^(?:match|fit|agree|show|touch|reach|check|like|know|see|need|want|say)$/u.test(stem)) return false;
    if (
      !/^(?:have|has|got|get|come)$/u.test(stem) &&
      piece.mentions.some(
        (mention) => mention.is === "said" && mention.from <= at && mention.to > at && mention.to <= one.from,
      )
    )
      return false;
  }
  return false;
};

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
    (one): one is SaidNumber => one.is === "number" && !isRange(tokens, one) && !isPronoun(tokens, one),
  );
  const index = allNumbers.map((one) => indexOf(tokens, one)).find((one) => one !== undefined);
  const numbers = allNumbers.filter((one) => indexOf(tokens, one) === undefined && !isLimit(tokens, one));
  const sides = sidesOf(piece.mentions, index, whole);
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
    same: /\b(?:same|likewise|ditto|that one too|another(?: one)?|so (?:is|are|does|do)|as well|too)\b/u.test(
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
