import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { Answer } from "@evenhand/shared/answer";
import type { SaidNumber } from "../answer-of/index.ts";
import type { SpokenText } from "../spoken-text/index.ts";
import type { Entry } from "./entries.ts";

/** Words by themselves that could be said of anything. */
export const ANYTHING =
  /^(?:straight|none|even|smooth|clean|good|fine|quiet|slip|pull|drift|wind|white|black|miss|rough|steady|stiff|crisp|sweet|smoothly|uneven|vague|rich|blue|wanders?|hunt|nothing|damp|rebuilt|single|dual|rod|cable|slight|restored|tick)$/u;

export const gearboxKind = (words: string): string =>
  words
    .replaceAll(" - ", "-")
    .replace(/^(?:an|is) /u, "")
    .replace(/^auto\b/u, "automatic")
    .replace(/^automatic .*$/u, "automatic")
    .replace(/ (?:gearbox|gear box)$/u, "")
    .replace(/^(\w+) gear$/u, "$1-speed")
    .replace(/^(\w+)[ -]speed/u, "$1-speed");

/** Second of the last word that begins at or before a character. */
export const secondAt = (at: SpokenText["at"], start: number): number => {
  let [low, high] = [0, at.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((at[middle]?.start ?? 0) <= start) low = middle;
    else high = middle - 1;
  }
  return at[low]?.second ?? 0;
};

/** "Week thirty-two of twenty nineteen, mileage a hundred thousand": the number behind a part is sooner of it. */
export const behindFirst = (
  numbers: readonly SaidNumber[],
  entry: Entry | undefined,
): readonly SaidNumber[] =>
  entry === undefined
    ? numbers
    : [...numbers.filter(({ from }) => from >= entry.to), ...numbers.filter(({ from }) => from < entry.to)];

/** "Exhaust, hole in the muffler": of the whole and a part of it the part is meant. */
export const isWholeOf = ({ subjects: [whole] }: Entry, entries: readonly Entry[]): boolean =>
  whole !== undefined &&
  entries.some(({ subjects: [part] }) =>
    whole.id === "door"
      ? part?.id === "door-bottom"
      : whole.at === undefined && part?.at !== undefined && part.items[0] === whole.items[0],
  );

const BRITISH =
  /^(?:windscreen|boot|sill|nearside|offside|handbrake|headlamp|logbook|tickover|silencer|bulkhead|propshaft|v5|headlining|gearbox|damper|dynamo|indicator|petrol)$/u;
const LEAST_BRITISH = 4;

/** Who says bonnet, or sill, boot and handbrake. */
export const isBritish = (tokens: readonly RepairedToken[]): boolean => {
  const said = new Set(tokens.map(({ stem }) => stem));
  return said.has("bonnet") || [...said].filter((stem) => BRITISH.test(stem)).length >= LEAST_BRITISH;
};

export const isPanel = ({ subjects }: Entry): boolean =>
  subjects.some(({ id, items }) => id !== "all-panels" && items.includes("body.paint-history"));

/** Back from another car to this one. */
export const THIS_ONE = /^(?:these (?!day)|this one|this car|mine|ours|not this|but this|here)/u;

/** "It doesn't", "they are": said of what is in view, and not of something the lexicon does not know. */
export const OF_VIEW =
  /^(?:(?:but|and|no|yes|well|so|sadly|unfortunately) )*(?:it|they|that|this|those|these|she|he|neither|none|one|mine)?\s?(?:(?:still|also|really|just) )?(?:is|are|was|do|does|did|has|have|will|can|s|not)\b/u;

export const OF_CAR =
  /^(?:(?:and|so|now|but) )*(?:it|she|he|(?:the )?car|this car|(?:the )?whole car|(?:the )?(?:whole )?(?:truck|body|thing)|this one|(?:the )?old girl) (?:is|s|was|has|have|had|got|been)\b/u;

/** "I had it painted", "my uncle repainted it". */
export const HAD_IT_DONE =
  /\b(?:had (?:it|her|the car|the body|the whole thing) (?:re)?(?:painted|sprayed|resprayed|refinished|redone)|(?:i|we|he|she|they|uncle|father|dad|husband|owner) (?:re)?(?:painted|sprayed|resprayed) (?:it|her|the car))\b/u;

/** "Has it ever been painted?" */
export const CAR_ASKED = /\b(?:has|have|had|was|is) (?:it|she|he|this|the car) (?:ever )?(?:been|had)\b/u;

/** "Any cracks in it?": a question of what is in view. */
export const OF_ITSELF = /\b(?:it|that|this|they|them|those|these|sure|really|honestly|serious)\b/u;

/** "The armrest is", "one chain has": a noun of its own before the verb. */
export const UNKNOWN =
  /^(?:(?:and|but|so|then) )?(?:the|an?|one|my|his|its|their) (?<noun>(?!(?:one|rest|other|car|whole|lot|thing|only|same|two|three|four|first|second|last|both|all|pair|part|bottom|top|edge|inside|outside|surface|metal|paint|condition|shape|left|right|front|rear|back|next|color|problem|issue|trouble|bit|reading|figure|number|current|old|original|new|factory|level|material|cover|fabric|skin|lining|leather|vinyl|stitching|release|needle|lens|bulb|rubber|seam|glass|stuff|mechanism|handle|switch|bank|owner|dealer|guy|man|mechanic|shop|family|seller|previous|state|fellow|chap|son|wife|father)\b)[a-z]+ )(?:is|are|s|was|were|has|have)\b/u;

/** "Underneath it's clean": somebody looks elsewhere. */
export const SCENE = /^(?:from )?(?:underneath\b|under the (?:hood|bonnet|car)\b)/u;

/** "It is the left one": which of them it was, after what was said of one. */
export const IS_ONE =
  /^(?:(?:it|that|they|this) (?:is|s|are|would be|will be) )?(?:(?:on |in |at |just |only )?the\b|(?:(?:left|right|front|rear|back|nearside|offside|driver|passenger|s|hand|side) )*(?:one|left|right|front|rear|back|nearside|offside|side)$)/u;

/** "Otherwise dry": what is in view is what it is not said of. */
export const OF_THE_REST =
  /\b(?:otherwise|other than that|apart from that|aside from that|besides that|except for that)$/u;
export const NONE_OF_THAT = /\b(?:has|have|had) none(?: of (?:that|it|them))?$/u;

export const isDry = (answer: Answer): boolean => answer.kind === "choice" && answer.option === "none";

export const isLeaks = ({ subjects }: Entry): boolean => subjects.every(({ id }) => id === "leaks");

export const codeAnswer = (text: string | undefined): Answer | undefined =>
  text === undefined ? undefined : { kind: "code", text };

export const turnsOf = ({ text }: SpokenText, tokens: readonly RepairedToken[]): ReadonlySet<number> => {
  const turns = new Set<number>();
  for (let at = 1; at < tokens.length; at += 1)
    if (text.slice(tokens[at - 1]?.end ?? 0, tokens[at]?.start ?? 0).includes("\n")) turns.add(at);
  return turns;
};
