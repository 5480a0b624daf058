import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { isOver } from "../spans/index.ts";
import { NOT_MEANT } from "./not-meant.ts";
import { isNotSaid } from "./not-said.ts";

/** Words that only say where: "below the trim strip" speaks of no trim strip. */
const WHERE = new Set([
  "near",
  "below",
  "behind",
  "beside",
  "above",
  "around",
  "under",
  "past",
  "beneath",
  "toward",
  "against",
  "over",
  "by",
  "beyond",
]);
const DETERMINERS = new Set(["the", "a", "an", "that", "this", "its", "your", "s"]);

/** The token before a part's name and its determiners. */
const beforeName = (tokens: readonly RepairedToken[], from: number): number => {
  let at = from - 1;
  while (at >= 0 && DETERMINERS.has(tokens[at]?.stem ?? "")) at -= 1;
  return at;
};

const stemBefore = (tokens: readonly RepairedToken[], from: number): string =>
  tokens[beforeName(tokens, from)]?.stem ?? "";

/** "There is a drip under the gearbox": what leaks is above. */
const isDripUnder = (tokens: readonly RepairedToken[], from: number): boolean => {
  const at = beforeName(tokens, from);
  return (
    /^(?:under|below|beneath|around|by|near)$/u.test(tokens[at]?.stem ?? "") &&
    /^(?:drip|leak|puddle|spot|weep|seep|seepage|seeping|weeping|leaking|dripping|drop|oil|stain|damp|wet)$/u.test(
      tokens[at - 1]?.stem ?? "",
    )
  );
};

const notMeant = (
  tokens: readonly RepairedToken[],
  { subjects, from, to }: Extract<Mention, { is: "subject" }>,
): boolean => {
  const before = stemBefore(tokens, from);
  const after = tokens[to]?.stem ?? "";
  return NOT_MEANT.some(
    (rule) =>
      subjects.every(({ id }) => rule.subject.test(id)) &&
      (rule.before?.test(before) ?? true) &&
      (rule.rightBefore?.test(tokens[from - 1]?.stem ?? "") ?? true) &&
      (rule.after?.test(after) ?? true),
  );
};

/** Subjects that stand in what is said of another thing by themselves. */
const KEPT = new Set(["leaks", "smoke", "smell", "vibration", "fuel-smell"]);

const insideSaid = (
  mentions: readonly Mention[],
  at: number,
  subject: Extract<Mention, { is: "subject" }>,
): boolean =>
  !subject.subjects.some(({ id }) => KEPT.has(id)) &&
  mentions
    .slice(Math.max(0, at - 8), at + 8)
    .some(
      (one) =>
        one.is === "said" && isOver(one, subject) && one.meanings.every(({ is }) => is === "condition"),
    );

const GOES_BACK =
  /^(?:come|coming|came|go|going|went|get|got|bring|brought|cut|peel|look|date|dated|give|gave|hold)$/u;

/** "Right here", "right at the edge", "five millimeters left" are no sides. */
const isNoPlace = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  position: number,
): boolean => {
  const mention = mentions[position];
  if (mention?.is !== "side" || mention.to - mention.from > 1) return false;
  // "The right pattern": a word of what is said.
  if (
    mentions
      .slice(Math.max(0, position - 4), position + 5)
      .some((one) => one.is === "said" && isOver(one, mention))
  )
    return true;
  const stem = tokens[mention.from]?.stem ?? "";
  const isOfPart = mentions
    .slice(position + 1, position + 4)
    .some((one) => one.is === "subject" && one.from === mention.to);
  if (isOfPart && stem === "left") return false;
  const after = tokens[mention.to]?.stem ?? "";
  // "Rust coming back", "I put it back".
  if (stem === "back" && GOES_BACK.test(tokens[mention.from - 1]?.stem ?? "")) return true;
  // "Rust at the rear edge": where on the panel.
  if (/^(?:front|rear)$/u.test(stem) && /^(?:edge|lip|half|face)$/u.test(after)) return true;
  if (stem === "behind") return /^(?:the|a|an|that|my|it|both|each|your|those)$/u.test(after);
  if (stem === "right")
    return (
      (after === "?" && tokens[mention.from - 1]?.stem === ",") ||
      /^(?:at|here|there|away|up|now|along|in|off|on|through|down|into|about|out|size|make|type|pattern|color|shade|kind|way|year|sort|spec|thing|place|height|amount|number|period|era|material|stuff|bits|money|date|price|one for)$/u.test(
        after,
      ) ||
      tokens[mention.from - 1]?.stem === "all"
    );
  return (
    stem === "left" &&
    (/^(?:over|to|it|in)$/u.test(after) ||
      /^(?:millimeter|mm|tread|inch|percent|it|he|she|they|was|is)$/u.test(
        tokens[mention.from - 1]?.stem ?? "",
      ))
  );
};

/** Verbs of a part that also say what somebody is about to do: "let me open the hood", "close to the door". */
const IS_DONE_BY = /^(?:to|me|u|i|we|you|let|gonna|can|could|must|should)$/u;
const MOVES =
  /^(?:open|close|shut|turn|move|slide|crank|wind|adjust|light|run|go|play|read|fold|lift|lower|raise|hold|lock|unlock|engage)$/u;
const isAct = (tokens: readonly RepairedToken[], { from, to }: Mention): boolean => {
  const stem = tokens[from]?.stem ?? "";
  if (to !== from + 1 || !MOVES.test(stem)) return false;
  const before = tokens[from - 1]?.stem ?? "";
  const after = tokens[to]?.stem ?? "";
  return (
    IS_DONE_BY.test(before) ||
    (/^(?:lock|hold|turn|play|light|crank|fold|lift)$/u.test(stem) &&
      /^(?:the|a|an|of|no|any|on|around)$/u.test(before)) ||
    (stem === "close" && /^(?:to|by|up|enough|look)$/u.test(after)) ||
    (/^(?:turn|wind|crank|lock|read|play)$/u.test(stem) && /^(?:it|them|that)$/u.test(after)) ||
    (/^(?:open|shut|close|light)$/u.test(stem) &&
      /^(?:is|are|was|were|an|the|a|left|very|really)$/u.test(before)) ||
    (stem === "light" && !tokens[from]?.plural && !/^(?:not|all|both|up)$/u.test(before))
  );
};

/** "Hood latch" latches nothing by itself, "twelve point six volts" is no six volt system. */
const isPartOf = (tokens: readonly RepairedToken[], mentions: readonly Mention[], at: number): boolean => {
  const mention = mentions[at];
  if (mention?.is !== "said") return false;
  return mentions
    .slice(Math.max(0, at - 6), at + 6)
    .some(
      (one) =>
        isOver(one, mention) &&
        (one.is === "number" ||
          (one.is === "said" && /^(?:magnet|free)$/u.test(tokens[one.from]?.stem ?? "")) ||
          (one.is === "subject" &&
            mention.to === mention.from + 1 &&
            ((MOVES.test(tokens[mention.from]?.stem ?? "") && tokens[mention.from]?.stem !== "run") ||
              /^(?:latch|catch|work|slip|filler)$/u.test(tokens[mention.from]?.stem ?? "")))),
    );
};

/** "The vinyl top is bubbling around the back window" is said of the top. */
const isOnlyAround = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  at: number,
): boolean => {
  const mention = mentions[at];
  if (
    mention?.is !== "subject" ||
    !/^(?:around|under|below|bottom|corner)$/u.test(tokens[mention.from]?.stem ?? "")
  )
    return false;
  const before = mentions.slice(Math.max(0, at - 5), at).findLast(({ is }) => is === "subject");
  if (before === undefined || mention.from - before.to > 8) return false;
  return tokens.slice(before.to, mention.from).every(({ stem }) => !/^[.?!;,]$/u.test(stem));
};

/**
 * Mentions without the parts that are named only to say where something is, or that are no part in these words at all.
 *
 * @param mentions in the order of the text
 */
export const pruneMentions = (tokens: readonly RepairedToken[], mentions: readonly Mention[]): Mention[] =>
  mentions.filter((mention, at) => {
    if (isNoPlace(tokens, mentions, at) || isNotSaid(tokens, mention)) return false;
    if (mention.is === "said" && (isAct(tokens, mention) || isPartOf(tokens, mentions, at))) return false;
    if (mention.is !== "subject") return true;
    if (isOnlyAround(tokens, mentions, at)) return false;
    if (notMeant(tokens, mention) || insideSaid(mentions, at, mention)) return false;
    return !WHERE.has(stemBefore(tokens, mention.from)) || isDripUnder(tokens, mention.from);
  });
