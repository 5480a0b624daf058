import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { BETWEEN, LEADS } from "./leads.ts";

export const isAbout = (mention: Mention): boolean => mention.is === "said" || mention.is === "number";

export const isPlace = (mention: Mention): boolean =>
  mention.is === "side" && !/^(?:all|both|other|this)$/u.test(mention.side);

/** "Everything else is original": the others begin anew. */
export const isRest = (tokens: readonly RepairedToken[], mention: Mention): boolean =>
  mention.is === "side" &&
  mention.side === "other" &&
  (/^(?:everything|rest)$/u.test(tokens[mention.from]?.stem ?? "") ||
    // "… is torn | the rest are fine"
    (tokens[mention.from + 1]?.stem === "rest" &&
      /^(?:is|are|work|s)$/u.test(tokens[mention.to]?.stem ?? "")));

/** "… one is torn carpets": what follows "is" of a noun is said of that noun; "they're" opens anew. */
const isCopulaOfNoun = (tokens: readonly RepairedToken[], at: number): boolean =>
  /^(?:is|are|s|was|were|look|seem)$/u.test(tokens[at - 1]?.stem ?? "") &&
  !PRONOUN.test(tokens[at - 2]?.stem ?? "");

const PRONOUN = /^(?:it|they|that|she|he|this|these|those|there|them)$/u;

/** What is said of something that a pronoun stands for is done when another part is named. */
export const ofPronoun = (tokens: readonly RepairedToken[], from: number, to: number): boolean =>
  tokens.slice(from, to).some(({ stem }) => PRONOUN.test(stem));

/** "It has | its spare", "it doesn't have | a sunroof": what is had belongs to the verb. */
export const isOwned = (tokens: readonly RepairedToken[], from: number, to: number): boolean =>
  /^(?:has|have|had|got|get)$/u.test(tokens[from - 1]?.stem ?? "") &&
  tokens.slice(from, to).every(({ stem }) => BETWEEN.test(stem) || /^(?:any|no|got|still|new)$/u.test(stem));

const MOST_COUNTED = 6;

/** "The only thing that doesn't | work". */
const isOfOnly = (tokens: readonly RepairedToken[], from: number): boolean => {
  for (let at = from - 1; at >= Math.max(0, from - MOST_COUNTED); at -= 1)
    if (tokens[at]?.stem === "only") return /^(?:thing|one|bit|part)$/u.test(tokens[at + 1]?.stem ?? "");
  return false;
};

/** "The only thing out is the plate light". */
export const isOnlyOne = (tokens: readonly RepairedToken[], said: Mention, { from }: Mention): boolean =>
  (tokens[said.from]?.stem === "only" || isOfOnly(tokens, said.from)) &&
  /^(?:is|are|was|s)$/u.test(tokens[said.to]?.stem ?? "") &&
  tokens.slice(said.to + 1, from).every(({ stem }) => BETWEEN.test(stem));

/** "Put them on last year | wheels are …": so many words say something by themselves. */
export const LONG_SAID = 3;

/** "I backed out and scraped | the right rear door": what somebody did, and to what. */
export const isDoneTo = (tokens: readonly RepairedToken[], { from, to }: Mention, part: Mention): boolean =>
  /^(?:scraped|scratched|dented|dinged|cracked|chipped|scuffed|curbed|bumped|bashed|tore|ripped|bent|broke|hit|creased)$/u.test(
    tokens[from]?.stem ?? "",
  ) &&
  to === from + 1 &&
  /^(?:i|he|she|they|we|and|somebody|someone|who|wife|kid|son|daughter|husband|once|guy|it)$/u.test(
    tokens[from - 1]?.stem ?? "",
  ) &&
  /^(?:the|my|that|this|his|her)$/u.test(tokens[to]?.stem ?? "") &&
  tokens.slice(to, part.from).every(({ stem }) => BETWEEN.test(stem));

const MOST_KINDS = 2;
const IS_KIND =
  /^(?:rally|steel|alloy|wire|mag|magnesium|aluminum|chrome|spoked|styled|disc|pressed|factory|leather|vinyl|cloth|wool|rubber|glass|plastic|electric|mechanical|am|fm|big|small|little|old|straight|inline|flat|v6|v8|black|white|red|blue|green|tan)$/u;

/** "The original rally | wheels": what kind of part stands between. */
const areBetween = (tokens: readonly RepairedToken[], from: number, to: number): boolean =>
  to - from <= MOST_KINDS && tokens.slice(from, to).every(({ stem }) => IS_KIND.test(stem));

/** "Not the original | motor": what has an article has its part behind it. */
const isDetermined = (tokens: readonly RepairedToken[], { from, to }: Mention): boolean =>
  tokens.slice(from - 1, to).some(({ stem }) => /^(?:the|an?)$/u.test(stem));

/** "They're bias ply tires": what stands right before a part, where nothing more is said of that part, belongs to it. */
export const belongsTo = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  said: Mention,
  mention: Mention,
): boolean => {
  if (isDetermined(tokens, said) && said.to < mention.from && areBetween(tokens, said.to, mention.from))
    return true;
  if (said.to !== mention.from || (said.is === "number" && LEADS.has(tokens[mention.to]?.stem ?? "")))
    return false;
  const next = mentions.find((one) => one.from >= mention.to && (one.is === "subject" || isAbout(one)));
  if (isCopulaOfNoun(tokens, said.from)) return false;
  // "One key", "two keys": so many of them.
  if (
    said.is === "number" &&
    said.unit === undefined &&
    said.value <= MOST_COUNTED &&
    said.to === mention.from
  )
    return true;
  return (
    (isDetermined(tokens, said) || !(next !== undefined && isAbout(next) && next.from - mention.to <= 4)) &&
    !/^(?:is|are|s|has|have|do|does|did|was|were|will|can|not|work)$/u.test(tokens[mention.to]?.stem ?? "")
  );
};

/** "… doesn't | horn works": what was named is done with where the word before is left hanging. */
export const hangs = (tokens: readonly RepairedToken[], at: number): boolean => {
  let before = at - 1;
  while (/^(?:um|uh|er|the|a|my|,)$/u.test(tokens[before]?.stem ?? "")) before -= 1;
  return (
    tokens[before]?.stem === "not" &&
    /^(?:do|does|is|are|has|have|did|was|will|can)$/u.test(tokens[before - 1]?.stem ?? "")
  );
};

export const isCount = (mention: Mention, part: Mention): boolean =>
  part.is === "subject" &&
  mention.is === "number" &&
  mention.unit === undefined &&
  mention.to === part.from &&
  mention.value <= MOST_COUNTED &&
  mention.value > 1 === part.plural;

/** "On the driver's side | left front fender": a second left or right belongs to what follows. */
export const isAnotherSide = (tokens: readonly RepairedToken[], mention: Mention): boolean =>
  mention.is === "side" &&
  mention.adds.some((add) => /^(?:left|right|driver|passenger)$/u.test(add)) &&
  tokens[mention.from - 1]?.stem === "side";

/** "All but the left taillight | wipers work": a name that no "and" joins to the one that was taken out. */
export const isUnjoined = (tokens: readonly RepairedToken[], { from }: Mention): boolean =>
  !/^(?:and|or|nor|,|the|in|on|of|for|at|plus)$/u.test(tokens[from - 1]?.stem ?? "");

/** "No radio or heater": the list of what is not there goes on. */
export const isListedOn = (tokens: readonly RepairedToken[], next: Mention | undefined): boolean =>
  next !== undefined && /^(?:or|nor|and|,|no)$/u.test(tokens[next.from - 1]?.stem ?? "");
