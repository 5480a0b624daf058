import type { Answer } from "@evenhand/matters/answer";
import { queryOptions, useQuery } from "@tanstack/react-query";
import type { ComparisonSource } from "../../../entities/comparison/model";

/** What makes matters of lines, and the sheet's compiler: asked for with the page, since it comes apart from it. */
export const answerCode = queryOptions({
  queryKey: ["answer-code"],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async () => {
    const [{ answer }, { matters }, { compileSheet }] = await Promise.all([
      import("@evenhand/matters/answer"),
      import("@evenhand/matters/matters"),
      import("@evenhand/sheet/compile-sheet"),
    ]);
    return { answer, matters, compileSheet };
  },
});

/** A sealed pair and the engine that compared it have one answer. */
const answerQuery = ({ index, comparison, a, b }: ComparisonSource) =>
  queryOptions({
    queryKey: ["answer", comparison.a.seal, comparison.b.seal, comparison.engine],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: async ({ client }): Promise<Answer> => {
      const { answer, matters, compileSheet } = await client.ensureQueryData(answerCode);
      const reports = { a, b, sheet: compileSheet(index.sheet) };
      return answer({ comparison, matters: matters(comparison, reports), reports });
    },
  });

/** Page one, worked out here from the two reports this reader may see. */
export const useAnswer = (source: ComparisonSource) => useQuery(answerQuery(source));
