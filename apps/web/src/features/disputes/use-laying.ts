import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useMemo, useState } from "react";
import { comparisonDocumentQuery } from "../../entities/comparison/queries";
import { layLines } from "./lay-lines";
import { withLine } from "./use-choosing";
import { firstTicked, wholeMatter } from "./whole-matter";

interface Asked {
  readonly comparison: string;
  /** Indexes of the matter's lines. */
  readonly lines: readonly number[];
  readonly laid: ReadonlySet<number>;
  readonly onLaid: (count: number) => void;
}

/** What of a matter would go before the dealer, what of it is ticked, and laying it there. */
export const useLaying = ({ comparison, lines, laid, onLaid }: Asked) => {
  const queries = useQueryClient();
  const document = useQuery(comparisonDocumentQuery(comparison));
  const whole = useMemo(
    () => (document.data === undefined ? null : wholeMatter(document.data.entries, lines, laid)),
    [document.data, lines, laid],
  );
  const [chosen, setChosen] = useState<ReadonlySet<number> | null>(null);
  const ticked = chosen ?? (whole === null ? new Set<number>() : firstTicked(whole));
  const send = useMutation({
    mutationFn: () => layLines(comparison, ticked),
    onSuccess: async ({ items }) => {
      await queries.invalidateQueries({ queryKey: ["releases"] });
      onLaid(items.length);
    },
  });
  return {
    whole,
    error: document.error ?? send.error,
    ticked,
    tick: (at: number, on: boolean): void => setChosen(withLine(ticked, at, on)),
    send,
  };
};
