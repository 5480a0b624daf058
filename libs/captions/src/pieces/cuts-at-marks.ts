import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { Join } from "./piece.ts";

export const SENTENCE_ENDS = new Set([".", "?", "!", ";", "…", ">>"]);

const MARKS: Readonly<Record<string, Join>> = {
  ",": "comma",
  ":": "colon",
  "(": "comma",
  ")": "comma",
  "—": "comma",
  "–": "comma",
};

const WORDS: ReadonlyMap<string, Join> = new Map([
  ["and", "and"],
  ["plus", "and"],
  ["but", "but"],
  ["though", "but"],
  ["although", "but"],
  ["otherwise", "but"],
  ["so", "comma"],
  ["because", "comma"],
  ["which", "comma"],
  ["while", "comma"],
  ["then", "comma"],
]);

const VERBS =
  /^(?:is|are|was|were|s|has|have|had|do|does|did|it|they|i|we|you|he|she|not|need|look|work|there|that|this|will|can|could)$/u;

/** "All but the clock", "all working but the plate light": what follows is taken out, where it claims nothing itself. */
const isAllBut = (tokens: readonly RepairedToken[], at: number): boolean => {
  const before = tokens.slice(Math.max(0, at - 4), at).map(({ stem }) => stem);
  if (!before.some((stem) => /^(?:all|every|everything|each)$/u.test(stem))) return false;
  for (let next = at + 1; next < Math.min(tokens.length, at + 8); next += 1) {
    const stem = tokens[next]?.stem ?? "";
    if (SENTENCE_ENDS.has(stem) || MARKS[stem] !== undefined) return true;
    if (/^(?:how|what|any)$/u.test(stem)) return true;
    if (VERBS.test(stem)) return false;
  }
  return true;
};

const exceptAt = (tokens: readonly RepairedToken[], at: number): number => {
  const [one, two] = [tokens[at]?.stem, tokens[at + 1]?.stem];
  if (one === "except") return two === "for" || two === "that" ? 2 : 1;
  if (one === "but" && isAllBut(tokens, at)) return 1;
  if (one === "bar" && (/^(?:the|one|that|for)$/u.test(two ?? "") || isAllBut(tokens, at))) return 1;
  if (
    one === "with" &&
    two === "the" &&
    tokens[at + 2]?.stem === "exception" &&
    tokens[at + 3]?.stem === "of"
  )
    return 4;
  if (one === "without" && /^(?:the|only)$/u.test(two ?? "") && isAllBut(tokens, at)) return 1;
  if (one === "save" && two === "for") return 2;
  if ((one === "apart" || one === "aside") && two === "from") return 2;
  return one === "other" && two === "than" ? 2 : one === "besides" ? 1 : 0;
};

/** "… the horn, the wipers | the only thing that doesn't is the clock". */
const isOnlyThing = (tokens: readonly RepairedToken[], at: number): boolean =>
  tokens[at]?.stem === "the" &&
  tokens[at + 1]?.stem === "only" &&
  /^(?:thing|one|exception|bit|part)$/u.test(tokens[at + 2]?.stem ?? "");

export type Cut = { readonly at: number; readonly skip: number; readonly join: Join };

export const cutAt = (
  tokens: readonly RepairedToken[],
  at: number,
  turns: ReadonlySet<number>,
): Cut | undefined => {
  const stem = tokens[at]?.stem ?? "";
  if (SENTENCE_ENDS.has(stem)) return { at, skip: 1, join: "start" };
  if (turns.has(at)) return { at, skip: 0, join: "start" };
  const except = exceptAt(tokens, at);
  if (except > 0) return { at, skip: except, join: "except" };
  const mark = MARKS[stem];
  if (mark !== undefined) return { at, skip: 1, join: mark };
  if (stem === "let" && /^(?:s|me|us|u)$/u.test(tokens[at + 1]?.stem ?? ""))
    return { at, skip: 0, join: "comma" };
  // "Nice and red": how red it is.
  if (
    stem === "and" &&
    /^(?:nice|good)$/u.test(tokens[at - 1]?.stem ?? "") &&
    /^(?:red|clean|tight|smooth|quiet|cold|hot|warm|straight|firm|dry|solid|even|clear|soft|shiny|bright|strong|steady|crisp|level|fresh|thick|full|loud|easy)$/u.test(
      tokens[at + 1]?.stem ?? "",
    )
  )
    return undefined;
  if (isOnlyThing(tokens, at)) return { at, skip: 0, join: "comma" };
  const word = WORDS.get(stem);
  if (
    stem === "so" &&
    (/^(?:is|are|do|does|has|have|that|far|on|much|many)$/u.test(tokens[at + 1]?.stem ?? "") ||
      /^(?:is|are|s|was|were|not|look|feel|run)$/u.test(tokens[at - 1]?.stem ?? ""))
  )
    return undefined;
  return word === undefined ? undefined : { at, skip: 1, join: word };
};

/** "Dry. Apart from the front one, that is leaking": taken out of what was said before, and of nothing that follows. */
export const isLateExcept = (tokens: readonly RepairedToken[], { at, skip, join }: Cut): boolean => {
  if (join !== "except") return false;
  for (let next = at + skip; next < tokens.length; next += 1) {
    const stem = tokens[next]?.stem ?? "";
    if (SENTENCE_ENDS.has(stem)) return true;
    if (stem === ",") return /^(?:that|which|it|they|those)$/u.test(tokens[next + 1]?.stem ?? "");
  }
  return true;
};
