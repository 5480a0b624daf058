import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";

export const beforeOpening = (tokens: readonly RepairedToken[], from: number): number => {
  let at = from;
  while (at > 0 && opens(tokens, at - 1)) at -= 1;
  return at;
};

export const lastBefore = (about: readonly Mention[], at: number): Mention | undefined =>
  about.reduce<Mention | undefined>(
    (last, one) => (one.to <= at && (last === undefined || one.to >= last.to) ? one : last),
    undefined,
  );

const opens = (tokens: readonly RepairedToken[], at: number): boolean => {
  const stem = tokens[at]?.stem ?? "";
  if (stem === "not")
    return !/^(?:do|does|is|are|has|have|did|was|will|can)$/u.test(tokens[at - 1]?.stem ?? "");
  return /^(?:the|a|an|no|all|both|my|his|her|their|its|our|every|each|that|this|and)$/u.test(stem);
};

/** Before the words that belong to what follows: "no", "the", "both", and what lies over it ("no smoke"). */
export const cutBefore = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  mention: Mention,
  said: Mention | undefined,
): number => {
  const over = mentions
    .filter((one) => one !== said && one.from < mention.from && one.to > mention.from)
    .map(({ from }) => from);
  let at = Math.min(mention.from, ...over);
  const least = said?.to ?? 0;
  while (at > least && opens(tokens, at - 1)) at -= 1;
  return at;
};
