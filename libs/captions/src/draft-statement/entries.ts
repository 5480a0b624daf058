import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { Subject } from "@evenhand/lexicon/lexicon-version-1";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { LEADS } from "../pieces/index.ts";
import type { Piece } from "../pieces/index.ts";
import type { SaidSides } from "../places-of/index.ts";
import { NEGATORS, isNegated } from "./negation.ts";

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
  /** It was named in a question. */
  readonly asked?: boolean;
  /** Places named after it: "on the tailgate". */
  readonly within: readonly string[];
  /** What was named after it, where it is that which is spoken of: "the engine has a leak at the oil pan". */
  readonly instead?: Entry;
};

type SubjectMention = Extract<Mention, { is: "subject" }>;

export const before = (tokens: readonly RepairedToken[], at: number): string =>
  tokens
    .slice(Math.max(0, at - 3), at)
    .map(({ stem }) => stem)
    .join(" ");

/** A subject inside a longer thing that is said ("oil pressure" in "holds oil pressure") still is one; of two over one another the longer. */
export const entriesOf = (
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
        // "Everything else on the dash"
        other:
          sides.other || tokens.slice(one.from, one.to).some(({ stem }) => /^(?:else|rest)$/u.test(stem)),
        one:
          sides.one === true ||
          tokens[one.from - 1]?.stem === "one" ||
          /\bone of (?:the|my|its|these|those)$/u.test(before(tokens, one.from)),
      },
      plural: one.plural || (sides.all && !/^(?:each|every)$/u.test(tokens[one.from - 1]?.stem ?? "")),
      none:
        // "No air": the denial is a word of the name.
        (tokens[one.from]?.stem === "no" && one.subjects.every(({ id }) => id === "air-conditioning")) ||
        (isNegated(tokens, one.from, Math.max(piece.from, one.from - 4)) &&
          nothingBetween(tokens, piece, one)),
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
export const ledTo = (tokens: readonly RepairedToken[], entries: readonly Entry[]): Entry[] =>
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
