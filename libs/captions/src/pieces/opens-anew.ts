import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { LEADS, leadsTo } from "./leads.ts";
import { CLAUSE_BEFORE, isRunAt, opensClause } from "./opens-clause.ts";

/** "There's" opens what is said of something, where something was said before. */
export const opensThere = (tokens: readonly RepairedToken[], from: number, to: number): number => {
  for (let at = from; at < to; at += 1)
    if (tokens[at]?.stem === "there" && /^(?:is|are|s|was)$/u.test(tokens[at + 1]?.stem ?? "")) return at;
  return -1;
};

/** "… is good | it opens and closes fine": somebody goes on with a new clause, with no mark between. */
const opensWithPronoun = (tokens: readonly RepairedToken[], from: number, to: number): number => {
  for (let at = Math.max(1, from); at < to; at += 1)
    if (
      (opensClause(tokens[at]?.stem ?? "", tokens[at + 1]?.stem ?? "") || isRunAt(tokens, at)) &&
      !CLAUSE_BEFORE.test(tokens[at - 1]?.stem ?? "")
    )
      return at;
  return -1;
};

/** "… repainted some time ago | inside the seat has a cover", "… works | under the hood it is the original": the next scene. */
const opensScene = (tokens: readonly RepairedToken[], from: number, to: number): number => {
  for (let at = Math.max(1, from); at < to; at += 1) {
    const [one, two, three] = [
      tokens[at]?.stem ?? "",
      tokens[at + 1]?.stem ?? "",
      tokens[at + 2]?.stem ?? "",
    ];
    const isUnderHood = one === "under" && two === "the" && /^(?:hood|bonnet|car)$/u.test(three);
    const isInside =
      /^(?:inside|underneath)$/u.test(one) &&
      /^(?:the|it|we|i|there|driver|seat|front|on|you|all)$/u.test(two) &&
      !CLAUSE_BEFORE.test(tokens[at - 1]?.stem ?? "") &&
      !/^(?:rust|rusty|clean|dry|wet|damp)$/u.test(tokens[at - 1]?.stem ?? "");
    if (isUnderHood || isInside) return at;
  }
  return -1;
};

/** "The fluid is red | now the body": somebody goes on to what comes next. */
export const opensNow = (tokens: readonly RepairedToken[], at: number): boolean =>
  opensEverything(tokens, at) ||
  (tokens[at]?.stem === "now" &&
    /^(?:the|for|on|we|let|i|inside|underneath|under)$/u.test(tokens[at + 1]?.stem ?? "") &&
    !/^(?:is|are|s|was|right|up|until|till|by|for|as|from|just|even|that|now|and|but|so|do|does|it|they)$/u.test(
      tokens[at - 1]?.stem ?? "",
    ));

/** "… on the right side | everything works on it". */
const opensEverything = (tokens: readonly RepairedToken[], at: number): boolean =>
  tokens[at]?.stem === "everything" &&
  /^(?:work|else|is|s|function|on|in|under)$/u.test(tokens[at + 1]?.stem ?? "") &&
  !/^(?:and|that|but|where|so|is|are|if|because|when|like|almost|not|of|with|about|know|say|think|sure|does|do|did|make|keep|nearly)$/u.test(
    tokens[at - 1]?.stem ?? "",
  );

/** "A new starter in it | doesn't smoke at all | doesn't get hot": a verb that denies, with nothing before it that could be denied. */
export const opensBare = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  { from, to }: Mention,
): number => {
  for (let at = Math.max(1, from - 1); at < to; at += 1) {
    if (!/^(?:do|does)$/u.test(tokens[at]?.stem ?? "") || tokens[at + 1]?.stem !== "not") continue;
    const [before, lead] = [tokens[at - 1]?.stem ?? "", tokens[at - 2]?.stem ?? ""];
    const isNamed = mentions.some((one) => one.is !== "said" && one.from < at && one.to >= at);
    const isObject = /^(?:it|them|that)$/u.test(before) && LEADS.has(lead);
    const isAll = before === "all" && lead === "at";
    if (!isNamed && (isObject || isAll)) return at;
  }
  return -1;
};

/** Where, between what was said and what follows, something new begins; the last place of several, −1 where none does. */
export const opensAnew = (tokens: readonly RepairedToken[], from: number, to: number): number =>
  Math.max(opensThere(tokens, from, to), opensWithPronoun(tokens, from, to), opensScene(tokens, from, to));

/** "New seats | new carpet | new headliner": the same word again opens the next of a list. */
export const repeats = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  at: number,
): number => {
  const mention = mentions[at];
  if (mention?.is !== "subject") return -1;
  const own = mentions.findLast((one) => one.is === "said" && one.to === mention.from);
  if (own === undefined || own.to - own.from !== 1) return -1;
  const stem = tokens[own.from]?.stem;
  if (
    !/^(?:new|original|fresh|nice|good|rebuilt|replaced)$/u.test(stem ?? "") ||
    /^(?:is|are|s|was|were|look)$/u.test(tokens[own.from - 1]?.stem ?? "")
  )
    return -1;
  const named = mentions.slice(0, at).findLast((one) => one.is === "subject" && one.to <= own.from);
  return named !== undefined &&
    mentions.some((one) => one.is === "said" && one.to === named.from && tokens[one.from]?.stem === stem)
    ? own.from
    : -1;
};

/** "… stone chips | no rust in the rockers": a denial that leads to its own part opens anew. */
export const deniesAnew = (
  tokens: readonly RepairedToken[],
  [mention, ...later]: readonly Mention[],
  about: readonly Mention[],
): number => {
  if (mention === undefined || about.length === 0) return -1;
  const from =
    tokens[mention.from]?.stem === "no"
      ? mention.from
      : /^(?:no|little|slight|small|tiny|minor)$/u.test(tokens[mention.from - 1]?.stem ?? "")
        ? mention.from - (/^(?:a|very)$/u.test(tokens[mention.from - 2]?.stem ?? "") ? 2 : 1)
        : -1;
  const part = later.find(({ is }) => is === "subject");
  return from >= 0 && part !== undefined && part.from >= mention.to && leadsTo(tokens, mention.to, part.from)
    ? from
    : -1;
};
