import type { CompiledLexicon, Meaning } from "../compile-lexicon/index.ts";
import { numberAt } from "../number-words/index.ts";
import { repair } from "../repair/index.ts";
import type { RepairedToken } from "../repair/index.ts";
import { tokenize } from "../tokenize/index.ts";
import type { Subject } from "../version-1/subject.ts";

/** Where a mention stands: tokens `from` up to `to`, characters `start` up to `end` of the text. */
type Place = {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
  /** 1 as it stands in the lexicon; less where a word was put right. */
  readonly confidence: number;
  /** What was heard, where it was put right. */
  readonly heard?: string;
};

export type Mention =
  /** A part, paper, reading or sound. `plural`: said of several. */
  | (Place & { readonly is: "subject"; readonly subjects: readonly Subject[]; readonly plural: boolean })
  /** A side, end, corner, or how many of them. `adds`: the parts of a position's id it asks for. */
  | (Place & {
      readonly is: "side";
      readonly side: string;
      readonly adds: readonly string[];
      readonly plural: boolean;
    })
  /** What is said of a thing: conditions by their place in the lexicon, options of items. */
  | (Place & { readonly is: "said"; readonly meanings: readonly Said[] })
  | (Place & { readonly is: "number"; readonly value: number; readonly unit?: string })
  /** A unit by itself, as in the head of a column; "in" is often none. */
  | (Place & { readonly is: "unit"; readonly unit: string });

export type Said = Extract<Meaning, { is: "condition" | "option" }>;

export type Found = { readonly tokens: readonly RepairedToken[]; readonly mentions: readonly Mention[] };

const REPAIRED = 0.8;

type Match = { readonly from: number; readonly to: number; readonly meanings: readonly Meaning[] };

/** Every phrase that begins at a token; the "s" of a genitive or of "is" may stand between its words. */
const matchesAt = (tokens: readonly RepairedToken[], from: number, { root }: CompiledLexicon): Match[] => {
  const found: Match[] = [];
  let at = root;
  for (let to = from; to < tokens.length; to += 1) {
    const stem = tokens[to]?.stem ?? "";
    const next =
      at.next.get(stem) ?? (at !== root && /^(?:he|she)$/u.test(stem) ? at.next.get("it") : undefined);
    if (next === undefined) {
      if (at !== root && (stem === "s" || stem === "-")) continue;
      break;
    }
    at = next;
    if (at.meanings.length > 0) found.push({ from, to: to + 1, meanings: at.meanings });
  }
  return found;
};

const placeOf = (tokens: readonly RepairedToken[], from: number, to: number): Place => {
  const heard = [...new Set(tokens.slice(from, to).flatMap((token) => token.heard ?? []))].join(" ");
  return {
    from,
    to,
    start: tokens[from]?.start ?? 0,
    end: tokens[to - 1]?.end ?? 0,
    confidence: heard === "" ? 1 : REPAIRED,
    ...(heard === "" ? {} : { heard }),
  };
};

const longest = <Kind extends Meaning["is"]>(
  matches: readonly Match[],
  kind: Kind,
): (Match & { of: Extract<Meaning, { is: Kind }>[] }) | undefined => {
  const isKind = (meaning: Meaning): meaning is Extract<Meaning, { is: Kind }> => meaning.is === kind;
  const last = matches.findLast(({ meanings }) => meanings.some(isKind));
  return last === undefined ? undefined : { ...last, of: last.meanings.filter(isKind) };
};

const isSaid = (meaning: Meaning): meaning is Said => meaning.is === "condition" || meaning.is === "option";

/** A unit stands right after its number, a hyphen or "of" between them or not. */
const unitAt = (tokens: readonly RepairedToken[], at: number, compiled: CompiledLexicon) => {
  const from = tokens[at]?.stem === "-" ? at + 1 : at;
  return longest(matchesAt(tokens, from, compiled), "unit");
};

/** "An inch and a half". */
const halfAt = (tokens: readonly RepairedToken[], at: number) => {
  if (tokens[at]?.stem !== "and") return undefined;
  const part = numberAt(tokens, at + 1);
  return part !== undefined && part.value < 1 ? part : undefined;
};

/** "A couple of inches": two, where a unit stands behind. */
const coupleAt = (tokens: readonly RepairedToken[], at: number, compiled: CompiledLexicon) => {
  const from = tokens[at]?.stem === "a" ? at + 1 : at;
  if (tokens[from]?.stem !== "couple") return undefined;
  const to = tokens[from + 1]?.stem === "of" ? from + 2 : from + 1;
  const measure = unitAt(tokens, to, compiled);
  return measure === undefined || tokens[to]?.stem.startsWith("inch") !== true
    ? undefined
    : { value: 2, from: at, to };
};

const numberMention = (
  tokens: readonly RepairedToken[],
  at: number,
  compiled: CompiledLexicon,
): Mention | undefined => {
  if (/^(?:minus|negative)$/u.test(tokens[at]?.stem ?? "")) {
    const below = numberMention(tokens, at + 1, compiled);
    return below?.is === "number"
      ? { ...below, value: -below.value, from: at, start: tokens[at]?.start ?? 0 }
      : undefined;
  }
  const article = /^an?$/u.test(tokens[at]?.stem ?? "") ? at + 1 : at;
  const measure = unitAt(tokens, article, compiled);
  const isOne = measure !== undefined && (article > at || halfAt(tokens, measure.to) !== undefined);
  const number =
    numberAt(tokens, at) ??
    coupleAt(tokens, at, compiled) ??
    (isOne ? { value: 1, from: at, to: article } : undefined);
  if (number === undefined) return undefined;
  const next =
    unitAt(tokens, number.to, compiled) ?? unitAt(tokens, afterArticle(tokens, number.to), compiled);
  const unit = next !== undefined && isPreposition(tokens, next) ? undefined : next;
  const [meaning] = unit?.of ?? [];
  const half = unit === undefined ? undefined : halfAt(tokens, unit.to);
  const value = (number.value + (half === undefined ? 0 : half.value)) * (meaning?.factor ?? 1);
  return {
    is: "number",
    value,
    ...(meaning === undefined ? {} : { unit: meaning.unit }),
    ...placeOf(tokens, at, half?.to ?? unit?.to ?? number.to),
  };
};

/** "Nine in the rear" is no nine inches. */
const isPreposition = (tokens: readonly RepairedToken[], { from, to }: Match): boolean =>
  to - from === 1 &&
  tokens[from]?.stem === "in" &&
  tokens[to]?.kind === "word" &&
  tokens[to]?.stem !== "long";

/** "half an inch", "three eighths of an inch". */
const afterArticle = (tokens: readonly RepairedToken[], at: number): number => {
  const words = tokens.slice(at, at + 2).map(({ stem }) => stem);
  if (words[0] === "of" && words[1] === "an") return at + 2;
  return /^an?$/u.test(words[0] ?? "") ? at + 1 : at;
};

const saidAt = (tokens: readonly RepairedToken[], matches: readonly Match[]): Mention[] =>
  matches.flatMap(({ from, to, meanings }) => {
    const said = meanings.filter(isSaid);
    return said.length === 0 ? [] : [{ is: "said" as const, meanings: said, ...placeOf(tokens, from, to) }];
  });

/** "Rear light wear" speaks of no lamp. */
const isLightWear = (tokens: readonly RepairedToken[], to: number): boolean =>
  tokens[to - 1]?.stem === "light" &&
  /^(?:wear|surface|rust|corrosion|scratch|pitting)$/u.test(tokens[to]?.stem ?? "");

/** "At the rear main": the last word of a side begins a longer name. */
const isOpening = (
  tokens: readonly RepairedToken[],
  from: number,
  to: number,
  compiled: CompiledLexicon,
): boolean => {
  for (let at = from + 1; at < to; at += 1)
    if (
      matchesAt(tokens, at, compiled).some(
        (match) => match.to > to && match.meanings.some((meaning) => meaning.is === "subject"),
      )
    )
      return true;
  return false;
};

/** Subjects, sides and numbers do not lie over one another: the longer one that begins first stays. */
const namedAt = (
  tokens: readonly RepairedToken[],
  at: number,
  matches: readonly Match[],
  compiled: CompiledLexicon,
): Mention | undefined => {
  const subject = longest(
    matches.filter(({ to }) => !isLightWear(tokens, to)),
    "subject",
  );
  const side = longest(matches, "side");
  const unit = longest(matches, "unit");
  const number = numberMention(tokens, at, compiled);
  const end = Math.max(subject?.to ?? 0, side?.to ?? 0, unit?.to ?? 0, number?.to ?? 0);
  if (end === 0) return undefined;
  const plural = tokens[end - 1]?.plural === true;
  if (subject?.to === end)
    return {
      is: "subject",
      subjects: subject.of.map((one) => one.subject),
      plural,
      ...placeOf(tokens, at, end),
    };
  const [first] = side?.of ?? [];
  if (side?.to === end && /^(?:at|in)$/u.test(tokens[at]?.stem ?? "") && isOpening(tokens, at, end, compiled))
    return undefined;
  if (side?.to === end && first !== undefined)
    return { is: "side", side: first.side, adds: first.adds, plural, ...placeOf(tokens, at, end) };
  const [alone] = unit?.of ?? [];
  if (unit?.to === end && alone !== undefined)
    return { is: "unit", unit: alone.unit, ...placeOf(tokens, at, end) };
  return number;
};

/**
 * What a text speaks of, in order: subjects, sides, numbers with their units, and what is said of them, each with where it stands. What
 * is said may lie over a subject ("clean title" says it of the title), and shorter phrases stand beside the longer ones that hold them.
 *
 * @example
 * findMentions("Both rocker panels are solid", compiled).mentions.map(({ is }) => is); // ["side", "subject", "said"]
 */
export const findMentions = (text: string, compiled: CompiledLexicon): Found => {
  const tokens = repair(tokenize(text), compiled);
  return { tokens, mentions: mentionsIn(tokens, compiled) };
};

/**
 * What tokens speak of, where they are at hand already.
 *
 * @example
 * mentionsIn(repair(tokenize("thirty psi"), compiled), compiled)[0]?.is; // "number"
 */
export const mentionsIn = (tokens: readonly RepairedToken[], compiled: CompiledLexicon): Mention[] => {
  const mentions: Mention[] = [];
  let free = 0;
  for (let at = 0; at < tokens.length; at += 1) {
    const matches = matchesAt(tokens, at, compiled);
    const named = at >= free ? namedAt(tokens, at, matches, compiled) : undefined;
    if (named !== undefined) {
      mentions.push(named);
      free = named.to;
    }
    mentions.push(...saidAt(tokens, matches));
  }
  return mentions;
};
