import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { stemText } from "@evenhand/lexicon/token-text";

type Tokens = readonly RepairedToken[];
type Check = (tokens: Tokens, mention: Mention) => boolean;

const ONCE = /^(?:was|were|used to|had|should|would|might|could|ought|may|must)\b/u;
const SUPPOSED = /^(?:is|are|s) (?:supposed|meant|probably|maybe|usually|normally)\b/u;
/** Tokens behind "there" that tell when, or how surely. */
const BEHIND = 3;

/** "There was one", "there's supposed to be one": it may be gone, or never have been. */
const isOnceThere: Check = (tokens, { from }) => {
  if (tokens[from]?.stem !== "there") return false;
  const behind = stemText(tokens, from + 1, from + 1 + BEHIND);
  return ONCE.test(behind) || SUPPOSED.test(behind);
};

const SOUNDS =
  /\bsound(?: (?:so|very|really|real|pretty|quite|just|absolutely|awful|all|to me|like it is|like it s))*$/u;
const PRAISED =
  /^(?:good|great|fine|nice|lovely|beautiful|perfect|excellent|amazing|fantastic|wonderful|healthy|okay|ok|all right|right|decent|awesome|sweet|mint|super|brilliant)$/u;
const HAS_SOUND = /^(?:sound|note|tone|rumble|burble|growl|bark)\b/u;
/** What is there to be heard: that it sounds good is that it works. */
const TO_HEAR =
  /\b(?:horn|radio|stereo|speaker|cassette|tape|cd|player|music|bell|chime|buzzer|siren|klaxon|trumpet)\b/u;
/** Tokens before a praise within which what sounds is named. */
const NAMED = 12;

/** "The exhaust sounds good", "it has a nice note": what is heard, and nothing of its metal. */
const isHeard: Check = (tokens, { from, to }) => {
  if (!PRAISED.test(stemText(tokens, to - 1, to)) && !PRAISED.test(stemText(tokens, from, to))) return false;
  const isOfSound =
    SOUNDS.test(stemText(tokens, from - BEHIND, from)) || HAS_SOUND.test(stemText(tokens, to, to + 1));
  return isOfSound && !TO_HEAR.test(stemText(tokens, from - NAMED, from));
};

const NAMES_IT = /\b(?:an?|the|that|its|some)(?: [a-z]+)?$/u;
const HOW =
  /^(?:(?:so|very|really|real|pretty|quite|just|absolutely) )*(?:good|great|fine|nice|lovely|beautiful|perfect|excellent|amazing|fantastic|healthy|sweet|right)\b/u;
const OF_SOUND = /^(?:to|from|of|out|when|at|as|you|i|it|[.,;?!])?$/u;

/** "It has a nice sound to it", "that's the sound of a straight eight": what is heard, and no sound metal. */
const isNoise: Check = (tokens, { from, to }) =>
  stemText(tokens, from, to) === "sound" &&
  ((NAMES_IT.test(stemText(tokens, from - 2, from)) && OF_SOUND.test(stemText(tokens, to, to + 1))) ||
    HOW.test(stemText(tokens, to, to + 1 + BEHIND)));

/** What was once there or should be, and what only sounds good. */
export const HEARD_OR_SUPPOSED: readonly Check[] = [isOnceThere, isHeard, isNoise];
