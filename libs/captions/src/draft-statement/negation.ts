import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { SaidWord } from "../answer-of/index.ts";
import { LEADS } from "../pieces/index.ts";
import type { Piece } from "../pieces/index.ts";
import { isOver } from "../spans/index.ts";

export const NEGATORS = new Set([
  "no",
  "not",
  "never",
  "without",
  "nor",
  "neither",
  "nothing",
  "none",
  "nobody",
  "barely",
  "hardly",
  "scarcely",
]);

const STOPS_NEGATION = new Set(["just", "but", "only", "except"]);

export const isNegated = (tokens: readonly RepairedToken[], from: number, least: number): boolean => {
  for (let at = from - 1; at >= least; at -= 1) {
    const stem = tokens[at]?.stem ?? "";
    // "I don't think it leaks"
    if (isDoubted(tokens, at)) return true;
    // "Never had it painted"
    if (/^(?:it|them)$/u.test(stem) && /^(?:had|have|got|get)$/u.test(tokens[at - 1]?.stem ?? "")) continue;
    if (STOPS_NEGATION.has(stem) || /^(?:it|they|she|he|there)$/u.test(stem)) return false;
    if (stem === "get" && tokens[at + 1]?.stem === "to") return false;
    if (stem === "free" && /^(?:of|from)$/u.test(tokens[at + 1]?.stem ?? "")) return true;
    if (NEGATORS.has(stem)) return tokens[at + 1]?.stem !== "only";
  }
  return false;
};

/** "I don't think it", "I don't believe they ever": who doubts that denies it. */
const isDoubted = (tokens: readonly RepairedToken[], at: number): boolean =>
  /^(?:it|they|she|he|there|that|this|one)$/u.test(tokens[at]?.stem ?? "") &&
  /^(?:think|believe|reckon|suppose|expect|imagine)$/u.test(tokens[at - 1]?.stem ?? "") &&
  tokens[at - 2]?.stem === "not";

type SaidMention = Extract<Mention, { is: "said" }>;

/** "No dents, scratches": a list goes on with words of condition, and not with another part or a phrase of its own. */
const goesOnWith = (
  tokens: readonly RepairedToken[],
  { mentions }: Piece,
  { from, meanings }: SaidMention,
): boolean =>
  !NEGATORS.has(tokens[from]?.stem ?? "") &&
  !LEADS.has(tokens[from]?.stem ?? "") &&
  meanings.some((meaning) => meaning.is === "condition") &&
  !mentions.some(({ is }) => is === "subject");

/** Each word with its negation: a "no" before it, carried on by "or" and by words of one list. */
export const wordsOf = (tokens: readonly RepairedToken[], piece: Piece, carried: boolean): SaidWord[] => {
  const said = piece.mentions.filter((one): one is SaidMention => one.is === "said");
  const words: SaidWord[] = [];
  let end = piece.from;
  let last = carried;
  for (const mention of said) {
    const inside = said.some((other) => isOver(other, mention));
    const isOverlaid = said.some((other) => other.from < mention.from && other.to > mention.from);
    const start = inside || isOverlaid ? piece.from : end;
    // "Don't do nothing": what denies already is not denied anew.
    const denies = tokens.slice(mention.from, mention.to).some(({ stem }) => NEGATORS.has(stem));
    const own =
      isDeniedBehind(tokens, mention.to) ||
      (!denies && isNegated(tokens, mention.from, Math.min(start, mention.from)));
    const listed =
      last &&
      /^(?:or|nor|,|and)$/u.test(tokens[mention.from - 1]?.stem ?? "") &&
      mention.from - 1 >= piece.from;
    const first =
      carried && words.length === 0 && mention.from - piece.from <= 1 && goesOnWith(tokens, piece, mention);
    const negated = own || listed || first;
    words.push({ meanings: mention.meanings, negated, from: mention.from, to: mention.to });
    if (!inside) {
      end = Math.max(end, mention.to);
      last = negated;
    }
  }
  return words;
};

const isVerb = (stem: string): boolean =>
  /^(?:hold|work|pull|close|open|shut|start|go|leak|smoke|rust|function|lock|stay|burn|run|stop|slip|grind|jump|shift)$/u.test(
    stem,
  );

/** "Delamination none", "corrosion: nil", "rust free"; and as who speaks the language as a second one says it, "the lid holds not open". */
const isDeniedBehind = (tokens: readonly RepairedToken[], to: number): boolean => {
  if (tokens[to]?.stem === "not" && isVerb(tokens[to - 1]?.stem ?? ""))
    return /^(?:[.;,]|open|close|shut|up|well|good|right|properly|correctly|to|any|always|anymore|more|straight|clean|)$/u.test(
      tokens[to + 1]?.stem ?? "",
    );
  const free = tokens[to]?.stem === "-" ? to + 1 : to;
  if (tokens[free]?.stem === "free") return !/^(?:of|from|play|up|to)$/u.test(tokens[free + 1]?.stem ?? "");
  const at = /^[:,]$/u.test(tokens[to]?.stem ?? "") ? to + 1 : to;
  return (
    /^(?:none|nil|zero)$/u.test(tokens[at]?.stem ?? "") && /^(?:[.;,]|)$/u.test(tokens[at + 1]?.stem ?? "")
  );
};
