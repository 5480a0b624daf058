import { whyNotReleasable } from "@evenhand/case/releasable";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useMemo, useState } from "react";
import type { Choosing } from "../../entities/comparison/choosing";
import { releasesQuery } from "../../entities/release/queries";
import { layLines } from "./lay-lines";

/** The lines chosen, with one more or one less. */
export const withLine = (chosen: ReadonlySet<number>, at: number, on: boolean): ReadonlySet<number> => {
  const next = new Set(chosen);
  if (on) next.add(at);
  else next.delete(at);
  return next;
};

type Chosen = ReadonlySet<number> | null;

/** How a line is chosen; what lies before the dealer already is not laid before them again. */
const useLineChoice = (comparison: string, chosen: Chosen, choose: (chosen: Chosen) => void) => {
  const released = useQuery({ ...releasesQuery({ comparison }), enabled: chosen !== null }).data;
  return useMemo((): Choosing | undefined => {
    if (chosen === null) return undefined;
    const before = new Set(released?.items.map(({ standsIn }) => standsIn?.entryIndex));
    return {
      chosen,
      may: (row) => whyNotReleasable(row.entry) === null && !before.has(row.at),
      onChoose: (at, on) => choose(withLine(chosen, at, on)),
    };
  }, [chosen, choose, released]);
};

/** Choosing items of one comparison for the dealer, and laying them before them. */
export const useChoosing = (comparison: string) => {
  const queries = useQueryClient();
  const [chosen, setChosen] = useState<Chosen>(null);
  const choosing = useLineChoice(comparison, chosen, setChosen);
  const send = useMutation({
    mutationFn: () => layLines(comparison, chosen ?? new Set()),
    onSuccess: async () => {
      setChosen(null);
      await queries.invalidateQueries({ queryKey: ["releases"] });
    },
  });
  return {
    active: chosen !== null,
    count: chosen?.size ?? 0,
    done: send.data?.items.length ?? 0,
    choosing,
    send,
    start: (at?: number) => setChosen(new Set(at === undefined ? [] : [at])),
    stop: () => setChosen(null),
  };
};
