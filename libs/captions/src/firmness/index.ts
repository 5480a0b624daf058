import { numberAt } from "@evenhand/lexicon/number-words";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { Firmness } from "@evenhand/shared/finding";

/** Words that hedge, and words that give somebody else's word; by our own list (design of the sheet, "Words of firmness"). */
const HEDGES =
  "i believe; we believe; not think; not believe; not reckon; far as i know; far as we know; should do; i think; i guess; i suppose; i would say; i should think; looks; look; look like; looks like; appears; appear; seems; seem; should be; probably; maybe; perhaps; possibly; as far as i can tell; as far as we can tell; as far as i know; as far as we know; to my knowledge; pretty sure; fairly sure; i am pretty sure; kind of think; must be the; must be a; must be about; must be around; it must be; that must be; might be; may be; could be; i would call; i would guess; i imagine; likely; to the best of my knowledge; from what i can see; from what i can tell; that i can feel; that i can see; that i know of; i reckon; we think; we reckon; i assume; not sure; i would not swear; sort of; more or less; in my opinion; i figure; presumably; call it; they must be; guess";
const ABOUT =
  "about; around; roughly; approximately; approx; nearly; almost; ish; somewhere around; give or take; and something; and a bit; and change; close to; perhaps; maybe; in the region of; some; or so; or thereabouts; something like";
const TOLD =
  "i was told; we were told; was told; were told; told me; told us; they tell me; they told me; he told me; she told me; always told me; the seller says; seller says; seller said; owner said; owner says; owner told; old owner said; previous owner said; previous owner told; vendor believe; vendor state; vendor report; vendor advise; vendor inform; vendor say; owner believe; seller believe; owner state; seller state; owner report; seller report; consignor state; consignor report; consignor believe; as advised by; as stated by; stated by; represented by; reported by; understood to; it is understood; i gather; according to; the previous owner claimed; the previous owner reckoned; supposedly; reportedly; apparently; allegedly; he said; she said; they said; he writes; she writes; he wrote; she wrote; his notes say; her notes say; the notes say; his note say; her note say; he says; she says; they say; says the; wife says; husband says; wife tells; mechanic says; mechanic told; mechanic said; dad says; says he; says she; previous chap said; last owner said; last owner told; last owner says; the guy said; guy said; the fella; they claim; he claims; claimed to be; said to be; is said; so i am told; i am told; we are told; word is; from what i hear; i have heard; he swears; the paperwork says; the ad says; family says; family said; so he told me; from what they say; the consignor says; the owner tells me; tells me; told it; i hear";

const phrases = (words: string): readonly (readonly string[])[] =>
  words.split(";").map((one) => one.trim().split(" "));
const [hedges, abouts, told] = [phrases(HEDGES), phrases(ABOUT), phrases(TOLD)];

/** Plurals and verb endings off, as the lexicon's stems have them. */
const plain = (word: string): string =>
  word.replace(/^(look|appear|seem|say|claim|swear|tell|believe|state|report|advise|write)s$/u, "$1");

const standsAt = (tokens: readonly RepairedToken[], at: number, phrase: readonly string[]): boolean =>
  phrase.every((word, index) => plain(tokens[at + index]?.stem ?? "") === plain(word));

const has = (
  tokens: readonly RepairedToken[],
  from: number,
  to: number,
  among: readonly (readonly string[])[],
): boolean => {
  for (let at = from; at < to; at += 1)
    if (
      !isGlance(tokens, at) &&
      !isCountAhead(tokens, at) &&
      among.some((phrase) => at + phrase.length <= to && standsAt(tokens, at, phrase))
    )
      return true;
  return false;
};

const MOST_APART = 3;

/** "About forty", "forty or so": "new tires all around" is no number, and no rough one. */
const isByNumber = (tokens: readonly RepairedToken[], from: number, to: number): boolean => {
  for (let at = to; at <= to + MOST_APART; at += 1) if (numberAt(tokens, at) !== undefined) return true;
  const isBehind = /^(?:or|give|and|ish|maybe|perhaps|roughly|about|approximately|approx)$/u.test(
    tokens[from]?.stem ?? "",
  );
  for (let at = from - 1; at >= (isBehind ? from - MOST_APART : from); at -= 1)
    if (numberAt(tokens, at) !== undefined) return true;
  return /^an?$/u.test(tokens[to]?.stem ?? "");
};

/** "Maybe six little dings": how many they are is unsure, and not that they are; a rough length is told by `about`. */
const isCountAhead = (tokens: readonly RepairedToken[], at: number): boolean =>
  /^(?:maybe|perhaps|probably)$/u.test(tokens[at]?.stem ?? "") &&
  numberAt(tokens, at + 1) !== undefined &&
  !/^(?:one|a|an)$/u.test(tokens[at + 1]?.stem ?? "");

/** "Have a look", "look here": nobody says how a thing looks. */
const isGlance = (tokens: readonly RepairedToken[], at: number): boolean =>
  /^looks?$/u.test(tokens[at]?.stem ?? "") &&
  (/^(?:a|to|me|u|let|we|you|i|quick|good|close|closer|just|another)$/u.test(tokens[at - 1]?.stem ?? "") ||
    /^(?:at|here|under|underneath|around|inside|over|there|after)$/u.test(tokens[at + 1]?.stem ?? ""));

/** "That's about it" makes no number a rough one. */
const hasAbout = (tokens: readonly RepairedToken[], from: number, to: number): boolean => {
  for (let at = from; at < to; at += 1) {
    if (
      tokens[at]?.stem === "about" &&
      /^(?:it|that|this|all|the|how|what)$/u.test(tokens[at + 1]?.stem ?? "")
    )
      continue;
    const phrase = abouts.find((one) => at + one.length <= to && standsAt(tokens, at, one));
    if (phrase !== undefined && isByNumber(tokens, at, at + phrase.length)) return true;
  }
  return false;
};

/** What is said firmly though a hedging word stands there: "looks like new" still is hedged, "looks" of a person at the camera is not asked. */
export type FirmnessFound = { readonly firmness: Firmness; readonly about: boolean };

/**
 * How firmly the tokens `from` up to `to` say what they say. `about`: a number in them is a rough one.
 *
 * @example
 * firmnessOf(tokens("it looks new"), 0, 3).firmness; // "hedged"
 */
export const firmnessOf = (tokens: readonly RepairedToken[], from: number, to: number): FirmnessFound => {
  const about = hasAbout(tokens, from, to);
  if (has(tokens, from, to, told)) return { firmness: "second-hand", about };
  return { firmness: has(tokens, from, to, hedges) ? "hedged" : "asserted", about };
};
