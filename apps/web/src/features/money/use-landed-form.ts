import type { LandedCostSeen } from "@evenhand/shared/http/money";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { usualCurrency } from "../../ui/money";
import { useEdited } from "../../service/use-edited";
import { landedEntries, typedLanded, wrongLanded, type TypedLanded, type WrongPlace } from "./landed-form";
import { landedCostQuery, landedHistoryQuery } from "./queries";

const nothingWrong: ReadonlySet<WrongPlace> = new Set();

/** The currency most of what is known is in; dollars before anything is. */
const currencyOf = ({ cost }: LandedCostSeen): string => cost.totals[0]?.currency ?? usualCurrency;

/** Entries as they are typed, what is wrong in them once it was tried to save them, and what became of saving. */
export const useLandedForm = (id: string, seen: LandedCostSeen) => {
  const queries = useQueryClient();
  const edited = useEdited(seen, (stored) => typedLanded(stored.entries, currencyOf(stored)));
  const { revision, typed, touched } = edited;
  const [tried, setTried] = useState(false);
  const save = useMutation({
    mutationFn: (sent: TypedLanded) =>
      call("landedCost.put", { params: { id }, ifMatch: revision, body: landedEntries(sent) }),
    onSuccess: (saved, sent) => {
      edited.settleSent(sent, saved.revision);
      queries.setQueryData(landedCostQuery(id).queryKey, saved);
      void queries.invalidateQueries({ queryKey: landedHistoryQuery(id).queryKey });
    },
  });
  const wrong = wrongLanded(typed);
  return {
    typed,
    wrong: tried ? wrong : nothingWrong,
    error: save.error,
    isPending: save.isPending,
    saved: save.isSuccess && !touched ? save.data.revision : undefined,
    change: (more: Partial<TypedLanded>): void => edited.change({ ...typed, ...more }),
    submit: (): void => {
      setTried(true);
      if (wrong.size === 0) save.mutate(typed);
    },
  };
};

export type LandedForm = ReturnType<typeof useLandedForm>;
