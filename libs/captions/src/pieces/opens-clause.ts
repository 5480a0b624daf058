import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { BETWEEN, LEADS } from "./leads.ts";

export const CLAUSE_BEFORE =
  /^(?:if|when|that|as|way|what|how|where|since|before|after|until|till|once|while|because|think|believe|say|said|guess|hope|know|like|and|but|or|so|than|which|who|the|a|is|are|on|in|of|to|for|with|at)$/u;

const CLAUSE_VERB =
  /^(?:is|are|was|were|has|have|had|do|does|did|will|can|need|start|run|drive|look|feel|go|come|stop|pull|hold|shift|idle|open|close|fire|track|work|leak|smoke|burn|weep|drip|pop|sit|read|show)$/u;

export const opensClause = (pronoun: string, verb: string): boolean =>
  /^(?:we|i)$/u.test(pronoun)
    ? /^(?:put|bought|rebuilt|replaced|had)$/u.test(verb)
    : /^(?:it|they|she|he)$/u.test(pronoun) && CLAUSE_VERB.test(verb);

/** "… does not leak | runs about one eighty". */
export const isRunAt = (tokens: readonly RepairedToken[], at: number): boolean =>
  tokens[at]?.stem === "run" && /^(?:at|about|around|right)$/u.test(tokens[at + 1]?.stem ?? "");

const FINITE = /^(?:is|are|was|were|s|has|have|had|do|does|did|got|get|will|can|work|run|need|show|look)$/u;

/** "They got most of the tread | the spare is flat": a part that a verb follows opens a clause, where one with a verb of its own stands before. */
export const opensClauseAt = (
  tokens: readonly RepairedToken[],
  { from, to, is }: Mention,
  begun: number,
  said: Mention | undefined,
): number => {
  // "The left one | turn signals work": which one it was belongs to what was said before.
  if (
    tokens[from - 1]?.stem === "one" &&
    /^(?:left|right|front|rear|other)$/u.test(tokens[from - 2]?.stem ?? "")
  )
    return from;
  if (!isFiniteAt(tokens, pastSide(tokens, to))) return -1;
  let at = from;
  // "… at the front | the back's like new": a side by itself has no other before it.
  while (
    at > begun &&
    // "… on the passenger side | the hood has": nothing stands before a part's article but "all" and "both".
    (at === from ||
      !/^(?:the|an?|my|its)$/u.test(tokens[at]?.stem ?? "") ||
      /^(?:all|both)$/u.test(tokens[at - 1]?.stem ?? "")) &&
    (is === "side"
      ? /^(?:the|my|its|both|all)$/u.test(tokens[at - 1]?.stem ?? "")
      : isBetween(tokens, at - 1))
  )
    at -= 1;
  const before = tokens[at - 1]?.stem ?? "";
  // "… on the driver's side | headliner's good": a part there is one of has no side before it.
  if (stemIs(tokens, from - 1, "side") && ONLY_ONE.test(tokens[from]?.stem ?? ""))
    return from > begun + 1 ? from : -1;
  const isLedTo =
    LEADS.has(before) &&
    // "No play to speak of | rear springs are tired"
    tokens[at - 2]?.stem !== "speak" &&
    (/^(?:of|with|for|by)$/u.test(before) || hasArticle(tokens, at, from));
  // "I have photos of that | front door has a dent"
  const isObject = /^(?:that|it|them)$/u.test(before) && LEADS.has(tokens[at - 2]?.stem ?? "");
  const isHeld = CLAUSE_BEFORE.test(before) && !LEADS.has(before) && !isObject;
  if (at <= begun + 1 || isHeld || isLedTo || FINITE.test(before)) return -1;
  const isSaid = said !== undefined && said.is === "said" && said.to < at;
  return isSaid || tokens.slice(begun, at).some(({ stem }) => FINITE.test(stem)) ? at : -1;
};

const ONLY_ONE =
  /^(?:headliner|headlining|dash|dashboard|hood|bonnet|roof|trunk|boot|radio|heater|horn|wiper|windshield|windscreen|carpet|interior|engine|motor|title|exhaust|frame|battery|clock|speedometer|gas|fuel|temp|clutch|steering|tailgate|grille|console|odometer|mileage|transmission|gearbox|chassis)$/u;

const stemIs = (tokens: readonly RepairedToken[], at: number, stem: string): boolean =>
  tokens[at]?.stem === stem;

/** "Rocker panel on this side has": the verb stands behind the side. */
const pastSide = (tokens: readonly RepairedToken[], at: number): number => {
  if (!/^(?:on|at)$/u.test(tokens[at]?.stem ?? "")) return at;
  let next = at + 1;
  while (
    /^(?:the|this|that|my|left|right|driver|passenger|other|s|front|rear|back|near|off|nearside|offside|hand)$/u.test(
      tokens[next]?.stem ?? "",
    )
  )
    next += 1;
  return /^(?:side|front|rear|back|end)$/u.test(tokens[next]?.stem ?? "")
    ? next + 1
    : /^(?:front|rear|back|nearside|offside|left|right)$/u.test(tokens[next - 1]?.stem ?? "")
      ? next
      : at;
};

/** "The belts are", "belts and hoses are". */
const isFiniteAt = (tokens: readonly RepairedToken[], at: number): boolean =>
  FINITE.test(tokens[at]?.stem ?? "") ||
  // "The heater | i think its valve is stuck": a topic.
  (/^(?:i|we)$/u.test(tokens[at]?.stem ?? "") &&
    !/^(?:four|five|six|eight|\d+)$/u.test(tokens[at - 2]?.stem ?? "") &&
    /^(?:think|put|had|got|reckon|believe|bought|replaced|have)$/u.test(tokens[at + 1]?.stem ?? "")) ||
  (tokens[at]?.stem === "and" &&
    tokens.slice(at + 2, at + 4).some(({ stem }) => /^(?:are|were|have|do)$/u.test(stem)));

/** "Put in | back window has a crack": what leads to a part of its own kind has an article, or a side, behind it. */
const hasArticle = (tokens: readonly RepairedToken[], from: number, to: number): boolean =>
  tokens
    .slice(from, to)
    .some(({ stem }) => /^(?:the|an?|my|its|that|this|your|our|both|all|each|every|s)$/u.test(stem));

const isBetween = (tokens: readonly RepairedToken[], at: number): boolean => {
  const stem = tokens[at]?.stem ?? "";
  if (stem === "one")
    return !/^(?:the|left|right|this|that|other|either|each|every|any|good|same)$/u.test(
      tokens[at - 1]?.stem ?? "",
    );
  if (stem === "s") return isGenitive(tokens, at);
  if (stem === "all") return tokens[at - 1]?.stem !== "at";
  return (BETWEEN.test(stem) || stem === "other") && !/^(?:of|that|two|four)$/u.test(stem);
};

/** "The driver's door": an "s" before a part is a genitive only behind a side. */
const isGenitive = (tokens: readonly RepairedToken[], at: number): boolean =>
  /^(?:driver|passenger)$/u.test(tokens[at - 1]?.stem ?? "");
