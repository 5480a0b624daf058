import { useQuery } from "@tanstack/react-query";
import { answerQuery, comparisonQuery } from "../../entities/comparison/queries";

/** What the page opens with: what is compared, and its stored answer. The lines come when they are asked for. */
export const usePageOne = (id: string) => {
  const meta = useQuery(comparisonQuery(id));
  const answer = useQuery(answerQuery(id));
  return { meta: meta.data, answer: answer.data, error: meta.error ?? answer.error };
};
