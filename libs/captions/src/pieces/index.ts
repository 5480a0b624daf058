import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { askedAt } from "./asked.ts";
import { opensNow } from "./opens-anew.ts";
import type { Asked } from "./asked.ts";
import { SENTENCE_ENDS, cutAt, isLateExcept } from "./cuts-at-marks.ts";
import type { Cut } from "./cuts-at-marks.ts";
import { innerCuts } from "./inner-cuts.ts";
import type { Join, Piece } from "./piece.ts";

export type { Piece } from "./piece.ts";
export { LEADS } from "./leads.ts";

const insideMention = (mentions: readonly Mention[], covered: Uint8Array): void => {
  for (const { from, to } of mentions) for (let at = from + 1; at < to; at += 1) covered[at] = 1;
};

const TAG =
  /^(?:see|you see|see (?:that|it|there|here)|you see (?:that|it)|can you see(?: (?:that|it))?|right|okay|ok|huh|you know|you know what i mean|eh|yeah|you hear that|hear that|all right)$/u;
const MOST_TAG = 6;

/** "I scraped the right rear door, see that?" tells, and asks nothing. */
const isTag = (tokens: readonly RepairedToken[], from: number, end: number): boolean => {
  for (let at = end - 1; at > from && at > end - MOST_TAG; at -= 1)
    if (tokens[at]?.stem === ",") {
      const tail = tokens.slice(at + 1, end).map(({ stem }) => stem);
      const [first] = tokens.slice(from, at);
      return (
        TAG.test(tail.join(" ")) &&
        !/^(?:is|are|does|do|did|has|have|was|were|any|what|how|can|will)$/u.test(first?.stem ?? "")
      );
    }
  return false;
};

const questionOf = (tokens: readonly RepairedToken[], from: number): boolean => {
  for (let at = from; at < tokens.length; at += 1) {
    const stem = tokens[at]?.stem ?? "";
    if (SENTENCE_ENDS.has(stem)) return stem === "?" && !isTag(tokens, from, at);
  }
  return false;
};

const strongest = (a: Join, b: Join): Join => (a === "start" ? a : b);

const tooLong = (from: number, at: number): Cut | undefined =>
  at - from >= MOST_TOKENS ? { at, skip: 0, join: "inner" } : undefined;

/** "Is it the original engine | it is | it was rebuilt". */
const isAnswered = (tokens: readonly RepairedToken[], at: number): boolean =>
  /^(?:it|they|she|he)$/u.test(tokens[at - 2]?.stem ?? "") &&
  /^(?:is|are|do|does|has|have|did|was|will|can)$/u.test(tokens[at - 1]?.stem ?? "") &&
  /^(?:it|they|she|he|i|we|the|there|that|but)$/u.test(tokens[at]?.stem ?? "");

/** Talk without a mark or joining word is cut after so many words, so that no piece grows with the file. */
const MOST_TOKENS = 120;

/**
 * Cuts talk into pieces: at the ends of sentences and turns, at commas and joining words, and where somebody goes on to another part without
 * any of these, as in captions without punctuation.
 *
 * @param turns tokens with which somebody else begins to speak
 * @param isMarked the talk has marks, so that what is asked ends with one
 */
export const piecesOf = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  turns: ReadonlySet<number>,
  isMarked = true,
): Piece[] => {
  const covered = new Uint8Array(tokens.length + 1);
  insideMention(mentions, covered);
  const pieces: Piece[] = [];
  let from = 0;
  let join: Join = "start";
  let nextMention = 0;
  let ahead = 0;
  let asked: Asked | undefined;
  const asks = (at: number): Cut | undefined => {
    if (isMarked) return undefined;
    while ((mentions[ahead]?.from ?? Infinity) < at) ahead += 1;
    if (asked?.to === at) return { at, skip: 0, join: "start" };
    if (opensNow(tokens, at) || (asked?.to === at - 2 && isAnswered(tokens, at)))
      return { at, skip: 0, join: "start" };
    const found = askedAt(tokens, mentions, at, ahead);
    if (found === undefined) return undefined;
    next = found;
    return { at, skip: 0, join: "start" };
  };
  let next: Asked | undefined;
  const close = (to: number): void => {
    const within: Mention[] = [];
    while (nextMention < mentions.length && (mentions[nextMention]?.from ?? Infinity) < to) {
      const mention = mentions[nextMention];
      if (mention !== undefined && mention.from >= from) within.push(mention);
      nextMention += 1;
    }
    if (to <= from) return;
    const isAsked = asked?.from === from;
    const isAskedWhole = isAsked && asked?.to === to;
    const question =
      isMarked &&
      (join === "start" || join === "except" ? questionOf(tokens, from) : (pieces.at(-1)?.question ?? false));
    const cuts = [...innerCuts(tokens, within, from, join), to];
    let start = from;
    for (const cut of cuts) {
      if (cut <= start) continue;
      const begin = start;
      const part = within.filter((mention) => mention.from >= begin && mention.from < cut);
      pieces.push({
        from: start,
        to: cut,
        join: start === from ? join : "inner",
        mentions: part,
        question: question || isAskedWhole || (isAsked && start === from),
      });
      start = cut;
    }
  };
  for (let at = 0; at <= tokens.length; at += 1) {
    const cut =
      at === tokens.length
        ? { at, skip: 0, join: "start" as const }
        : covered[at] === 1
          ? undefined
          : (cutAt(tokens, at, turns) ?? asks(at) ?? tooLong(from, at));
    if (cut === undefined) continue;
    if (cut.skip === 0 && at === from && at < tokens.length) {
      asked = next ?? asked;
      next = undefined;
      continue;
    }
    close(at);
    asked = next ?? asked;
    next = undefined;
    // An end of a sentence outweighs the comma or "and" right before it.
    join = at > from || isLateExcept(tokens, cut) ? cut.join : strongest(join, cut.join);
    from = at + cut.skip;
    at += Math.max(0, cut.skip - 1);
  }
  return pieces;
};
