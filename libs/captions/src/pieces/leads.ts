import type { RepairedToken } from "@evenhand/lexicon/repair";

/** Words that lead from what is said to the part it is said of. */
export const LEADS = new Set(
  "in on at out of from around near to behind below under with for by over inside along across through above beside between into onto off within against during".split(
    " ",
  ),
);

/** What may stand between a leading word and the part it leads to. */
export const BETWEEN =
  /^(?:the|a|an|my|his|her|its|their|our|your|that|this|these|those|both|all|each|every|s|left|right|front|rear|driver|passenger|nearside|offside|near|off|side|hand|lh|rh|lhs|rhs|of|-|old|little|lower|upper|inner|outer|same|whole|four|two)$/u;

/** Parts there is one of at the back: "pitting on the back bumper"; "hanging down in the back | shocks are …" leads to none. */
const HAS_BACK =
  /^(?:bumper|seat|door|window|panel|wheel|tire|axle|light|glass|end|fender|quarter|floor|bench|arch|screen|carpet|bush|valance|wing|rail|brake|pad|box)$/u;

/** Whether a word that leads to it stands before a mention, with nothing of its own between them. */
export const leadsTo = (tokens: readonly RepairedToken[], from: number, to: number): boolean => {
  if (LEADS.has(tokens[to]?.stem ?? "")) return true;
  for (let at = to - 1; at >= from; at -= 1) {
    const stem = tokens[at]?.stem ?? "";
    // "On both sides | floor": a side by itself is whole.
    if (stem === "side" && tokens[at]?.plural === true) return false;
    // "New all around | bushings": that is everywhere, and leads to nothing.
    if (/^(?:around|round|over)$/u.test(stem) && tokens[at - 1]?.stem === "all") return false;
    if (LEADS.has(stem) && stem !== "of") return true;
    if (stem === "of" && !/^(?:both|all|out|free)$/u.test(tokens[at - 1]?.stem ?? "")) return true;
    const isBackOf = stem === "back" && HAS_BACK.test(tokens[at + 1]?.stem ?? "");
    if (!isBackOf && !BETWEEN.test(stem)) return false;
  }
  return false;
};
