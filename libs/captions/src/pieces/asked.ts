import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { stemAt } from "@evenhand/lexicon/token-text";
import { LEADS } from "./leads.ts";

type Tokens = readonly RepairedToken[];

/** What somebody asks where no mark says so: its tokens, the answer not among them; `to` is not known of all. */
export type Asked = { readonly from: number; readonly to: number | undefined };

/** Words behind which a verb before its subject, or "how" and "any", asks nothing. */
const HELD =
  /^(?:what|where|how|why|which|who|when|so|or|as|than|that|because|if|nor|neither|only|thing|say|not|is|are|was|were|s|i|you|we|they|it|he|she|to|can|will|would|could|know|tell|see|show|remember|matter|wonder|just|whether|does|do|did)$/u;
const NO_ANY =
  /^(?:not|no|have|has|had|see|saw|seen|got|get|without|of|find|found|is|are|was|were|s|if|hardly|barely|in|notice|noticed|with|for|to|do|does|did|there|never|need|from|at|on|like|by|know|hear|feel|want|than|show|having|remember|put|use|leak|smoke|burn|make|lose|take|nor|or|and|as|about|since|hold|sign)$/u;

/** "I got it | does it", "pitting on it | is the glass": a pronoun that a verb or a leading word has for its object is done. */
const isHeld = (tokens: Tokens, at: number): boolean => {
  const [lead, before] = [stemAt(tokens, at - 2), stemAt(tokens, at - 1)];
  if (
    before === "it" &&
    (LEADS.has(lead) || /^(?:got|bought|had|see|like|love|did|owned|painted|about)$/u.test(lead))
  )
    return false;
  // "The clock does not | what about the radio"
  if (before === "not" && /^(?:do|does|is|are|has|have|did|was|will|can)$/u.test(lead)) return false;
  return HELD.test(before);
};

/** "Does the …", "did you": a verb that only asks or denies, before what it is asked of. */
const doAt = (tokens: Tokens, at: number): boolean =>
  /^(?:do|does|did)$/u.test(stemAt(tokens, at)) &&
  /^(?:the|all|any|that|this|those|these|you|she|he|it|they|everything|both|your|my|each|every)$/u.test(
    stemAt(tokens, at + 1),
  ) &&
  !/^(?:job|trick|same|rest|work|time|way|best|most|thing)$/u.test(stemAt(tokens, at + 2)) &&
  !isHeld(tokens, at);

/** "Is it dry", "have they been changed". */
const pronounAt = (tokens: Tokens, at: number): boolean =>
  /^(?:is|are|has|have|was|were)$/u.test(stemAt(tokens, at)) &&
  /^(?:it|they)$/u.test(stemAt(tokens, at + 1)) &&
  !isHeld(tokens, at) &&
  !/^(?:and|all)$/u.test(stemAt(tokens, at - 1));

const wonders = (tokens: Tokens, at: number): boolean => {
  const [one, two, three] = [stemAt(tokens, at), stemAt(tokens, at + 1), stemAt(tokens, at + 2)];
  if (isHeld(tokens, at) || /^(?:idea|about|of|me|exactly|on|with|no)$/u.test(stemAt(tokens, at - 1)))
    return false;
  if (one === "how") return /^(?:about|is|are|s|many|old|long|much)$/u.test(two) && three !== "it";
  return (
    one === "what" &&
    (/^(?:about|happened)$/u.test(two) || (/^(?:is|s|are)$/u.test(two) && /^(?:the|on|your)$/u.test(three)))
  );
};

const isAsking = (tokens: Tokens, mentions: readonly Mention[], at: number, first: number): boolean => {
  if (doAt(tokens, at) || pronounAt(tokens, at) || wonders(tokens, at)) return true;
  const [one, two] = [stemAt(tokens, at), stemAt(tokens, at + 1)];
  const before = stemAt(tokens, at - 1);
  if (one === "any" && !NO_ANY.test(before)) {
    const next = mentions[first];
    return next !== undefined && next.from <= at + 2;
  }
  if (one === "have" && two === "you") return !isHeld(tokens, at);
  if (!/^(?:is|are|was|were)$/u.test(one) || isHeld(tokens, at)) return false;
  if (two === "there")
    return (
      /^(?:any|a|some|much|anything)$/u.test(stemAt(tokens, at + 2)) && !isNoun(tokens, mentions, at, first)
    );
  // "Are those the actual miles"
  if (
    /^(?:those|these|that)$/u.test(two) &&
    /^(?:the|all|your|new|original|real)$/u.test(stemAt(tokens, at + 2))
  )
    return !isNoun(tokens, mentions, at, first);
  if (/^(?:the|those|these|your|all)$/u.test(two))
    return isPredicated(mentions, at, first) && !isNoun(tokens, mentions, at, first);
  return false;
};

/** "The radio is the original": a name right before the verb has it for its own. */
const isNoun = (tokens: Tokens, mentions: readonly Mention[], at: number, first: number): boolean => {
  for (let index = first - 1; index >= 0 && index > first - 4; index -= 1) {
    const mention = mentions[index];
    if (mention?.is === "subject" && mention.to === at) return true;
  }
  return /^(?:one|here|there|this|those|these|here|part|bit|rest)$/u.test(stemAt(tokens, at - 1));
};

/** "Is the glass okay", and not "is the original glass": what is said stands behind the part. */
const isPredicated = (mentions: readonly Mention[], at: number, first: number): boolean => {
  const part = mentions.slice(first, first + 4).find(({ is }) => is === "subject");
  if (part === undefined || part.from > at + 4) return false;
  return mentions
    .slice(first, first + MOST_MENTIONS)
    .some((one) => one.is === "said" && one.from >= part.to && one.from <= part.to + 1);
};

const MOST_MENTIONS = 12;
/** Tokens from the beginning of a question within which it names its part and what is asked. */
const MOST_ASKED = 9;

const TAILS =
  /^(?:at all|in it|on it|for it|in there|in here|under there|or anything|like that|to it|with it|of it)$/u;
const TAIL = /^(?:okay|anywhere|underneath|too|now|inside|yet|still|well|right|good)$/u;

/** Words that hang behind what is asked: "does it leak at all", "is the frame good underneath". */
const withTail = (tokens: Tokens, mentions: readonly Mention[], at: number): number => {
  const [next, behind] = [stemAt(tokens, at), stemAt(tokens, at + 1)];
  // "Any water get in here"
  if (/^(?:get|come|coming|getting)$/u.test(next) && behind === "in")
    return /^(?:here|there)$/u.test(stemAt(tokens, at + 2)) ? at + 3 : at + 2;
  const to = TAILS.test(`${next} ${behind}`) ? at + 2 : TAIL.test(next) ? at + 1 : at;
  return mentions.find((one) => one.is === "said" && one.from < to && one.to > to)?.to ?? to;
};

const toOf = (
  tokens: Tokens,
  mentions: readonly Mention[],
  from: number,
  first: number,
): number | undefined => {
  const near = mentions.slice(first, first + MOST_MENTIONS).filter((one) => one.from <= from + MOST_ASKED);
  const part = near.find(({ is }) => is === "subject");
  const said = near.filter((one) => one.is === "said");
  const isOfPart = /^(?:how|what)$/u.test(stemAt(tokens, from)) || stemAt(tokens, from) === "any";
  if (isOfPart) {
    const one = part ?? said[0];
    return one === undefined ? undefined : withTail(tokens, near, one.to);
  }
  const [opening] = said.filter((one) => part === undefined || one.from >= part.to || one.from < part.from);
  const behind =
    part === undefined
      ? undefined
      : said.find(
          (one) =>
            one.from >= part.to &&
            one.from <= part.to + 3 &&
            !/^(?:no|yes|not)$/u.test(stemAt(tokens, one.from)),
        );
  // "Does it have any rust", "is it the original engine".
  if (opening !== undefined && (part === undefined || opening.from < part.from)) {
    const isBefore = part !== undefined && part.from <= opening.to + 1;
    return withTail(tokens, near, isBefore && part !== undefined ? part.to : opening.to);
  }
  const end = behind ?? part;
  return end === undefined ? undefined : withTail(tokens, near, end.to);
};

/**
 * The question that begins with a token of talk without marks, if one does: "does it smoke at all | no smoke at all".
 *
 * @param first the first mention that begins there or behind it
 */
export const askedAt = (
  tokens: Tokens,
  mentions: readonly Mention[],
  at: number,
  first: number,
): Asked | undefined =>
  isAsking(tokens, mentions, at, first) ? { from: at, to: toOf(tokens, mentions, at, first) } : undefined;
