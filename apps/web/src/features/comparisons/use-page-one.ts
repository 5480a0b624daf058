import { useQuery } from "@tanstack/react-query";
import { isKind, useAccount } from "../../entities/account/queries";
import { answerCostQuery, answerQuery, comparisonQuery } from "../../entities/comparison/queries";

/**
 * What the page opens with: what is compared, and its stored answer. The lines come when they are asked for. A buyer's own costs order
 * what is equally grave, and are waited for, so that nothing changes its place under a reader's eyes.
 */
export const usePageOne = (id: string) => {
  const meta = useQuery(comparisonQuery(id));
  const answer = useQuery(answerQuery(id));
  const cost = useQuery({ ...answerCostQuery(id), enabled: isKind(useAccount(), "buyer") });
  return {
    meta: meta.data,
    answer: cost.isLoading ? undefined : answer.data,
    cost: cost.data,
    error: meta.error ?? answer.error,
  };
};
