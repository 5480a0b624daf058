import type { AnswerOf } from "@evenhand/shared/answer";
import { isBadCall, severityRank } from "@evenhand/shared/severity";
import type { Pick } from "../compare-choice/index.ts";
import type { AnsweredPair } from "./index.ts";

/** An option of the item in question, with its call and its place among the others. */
export const pickOf = ({ place }: AnsweredPair, answer: string): Pick =>
  place.picks.get(answer) ?? { answer, call: "no-yardstick" };

/** Every option of an answer: the first, and what is true at the same time. */
export const optionsOf = ({ option, also = [] }: AnswerOf<"choice">): string[] => [option, ...also];

/** The worst of some options by its call; the first where none is bad. */
export const gravest = (options: readonly string[], asked: AnsweredPair): string => {
  const rank = (option: string): number => {
    const { call } = pickOf(asked, option);
    return isBadCall(call) ? severityRank(call) : Number.POSITIVE_INFINITY;
  };
  return options.reduce((worst, option) => (rank(option) < rank(worst) ? option : worst));
};
