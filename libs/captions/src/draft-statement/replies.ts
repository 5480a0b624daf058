import type { Breath } from "./breath.ts";

/** The whole of what was asked. */
export const ALL_OF_THEM =
  /^(?:all|everything|everything (?:work|do|does)|all of (?:them|it|em)|every (?:single )?one|every (?:single )?one of (?:them|em)|the lot|the whole lot|both|both of them|they all do|they do)$/u;

const WHO = "(?:it|they|(?:this|that) (?:one|car)|mine|ours|[a-z]+ s|she|he|that|this|both|you|i|we|there)";
const DOES = "(?:is|s|has|does|do|are|have|will|did|was|were|had|can|should)";

const YES = new RegExp(
  `^(?:(?:yes|oh|well|sure|always|of course|certainly|definitely|absolutely|indeed|very much) ?)*` +
    `(?:yes|everything|everything (?:work|does)|all of it|sure|sure (?:is|does|do|has)|of course|certainly|absolutely|definitely|indeed|correct|exactly|always|right enough|you bet|once|twice|all|all of them|every one|both|both of them|` +
    `(?:that|it) (?:is|s) (?:right|correct|true)|` +
    `(?:it|they|she|he) (?:sure|certainly|still|always|all|both) ${DOES}|` +
    `(?:always|still|both|all|mostly) ${DOES}|${WHO}? ?${DOES}|` +
    `(?:i|we) (?:think|believe|guess|would say|reckon|should think|hope|would think) so|very well|very nicely|perfectly well|should do|probably|(?:as )?far as (?:i|we) know|i (?:believe|think) (?:it|they) ${DOES})$`,
  "u",
);

/** "Yeah, about fifteen years ago", "yes, before I got it". */
const YES_WHEN =
  /^yes (?:(?:about|around|maybe|back|like|in|oh) )*(?:(?:[a-z-]+ ){1,3}(?:year|month|week)s? (?:ago|back)|\d{4}|(?:nineteen|twenty)[a-z -]*|last (?:year|month|week|summer|spring|fall|winter|autumn)|before (?:i|we|my time)\b.*|(?:once|twice))$/u;

/** "Three. Little ones.", "some", "just the one". */
const SOME =
  /^(?:(?:yes|just|only|about|maybe|oh) )*(?:the )?(?:one|two|three|four|five|a few|few|a couple|couple|several|some|plenty|lots|loads|one or two|two or three|a bit|a little|a little bit|a touch)(?: (?:small|little|tiny|big|of them|one|of))*$/u;

const NOT_ANY =
  "(?:none|nothing|not|never)(?: (?:a bit|any|at all|whatsoever|one|a thing|once|really|yet|to my knowledge|with me|in my time|in our time|under me|lately|recently|anymore|any more|a drop|a trace|a chance))?";
const NO = new RegExp(
  `^(?:(?:no|oh|well|god|certainly|definitely|absolutely|of course) ?)*` +
    `(?:no|no way|not me|${NOT_ANY}|(?:not|none|nothing) that (?:i|we) (?:can see|know of|know|have seen|have noticed|have found|am aware of|could see|could find|recall)|not as far as (?:i|we) know|not since (?:i|we) (?:have )?(?:had|owned|bought|got) it|` +
    `(?:never|hardly ever) (?:has|did|does|have|will)(?: been)?|` +
    `${WHO}? ?${DOES} not(?: any| one| so)?|(?:i|we) (?:do|would) not (?:think|believe|reckon) so|` +
    `there (?:is|s|are) (?:none|no|not any)|(?:i|we) (?:have )?(?:not )?(?:seen|found|see|find|had) (?:none|not any)|(?:i|we) (?:have|did) not (?:seen|found|see|find|noticed|notice) (?:any|one|it)|far from it|i wish)$`,
  "u",
);

/** "As far as I know, yeah" */
const BEHIND = /(?<=.) (?:yes|all right|okay|right|then|though|anyway|actually|really)$/u;

/** What a person on the other side of the car, or of the telephone, begins an answer with. */
const ADDRESSED =
  / (?:mate|sir|dad|mom|mum|son|boss|love|pal|buddy|man|honey|chief|ma am|madam|sweetheart|friend)$/u;

/**
 * "It does", "not in my time", "I don't think so": that what was asked is so, or is not; nothing where more is said than that.
 *
 * @param text stems of the piece of talk
 * @param countsAsYes what was asked is whether there are any, so that "three" is a yes
 * @example
 * replyOf("not that i know of"); // "no"
 */
export const replyOf = (text: string, countsAsYes = false): "yes" | "no" | undefined => {
  const plain = text.replace(ADDRESSED, "").replace(BEHIND, "");
  if (NO.test(plain)) return "no";
  return YES.test(plain) || YES_WHEN.test(plain) || (countsAsYes && SOME.test(plain)) ? "yes" : undefined;
};

const ONLY_YES =
  /^(?:(?:oh|well|yes|sure|of course|certainly|absolutely|definitely|indeed|correct|exactly) ?)+$/u;

/**
 * The words that were asked, as an answer leaves them. A no to "it doesn't leak?" still is that it does not, and so is a bare yes; "it
 * does" is that it does. A no to "no liens?" is that there are none.
 *
 * @param denies whether a word denies by itself
 */
export const askedAs = (
  words: Breath["words"],
  reply: "yes" | "no",
  text: string,
  denies: (word: Breath["words"][number]) => boolean,
): Breath["words"] =>
  reply === "yes" && ONLY_YES.test(text)
    ? words
    : words.map((word) => ({ ...word, negated: (reply === "no") !== denies(word) }));
