import type { BeforeMoneyLine } from "@evenhand/shared/before-money";
import type { BeforeMoneySeen } from "@evenhand/shared/http/money";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useEdited } from "../../service/use-edited";
import {
  beforeEntries,
  haltsAt,
  typedList,
  unsaidLines,
  type TypedBefore,
  type TypedList,
} from "./before-money-form";
import { beforeMoneyQuery } from "./queries";

const none: ReadonlySet<BeforeMoneyLine> = new Set();

/** The list as it is typed over what is stored. A line that is changed is answered for what stops the money there now. */
export const useBeforeMoneyForm = (id: string, seen: BeforeMoneySeen) => {
  const queries = useQueryClient();
  const edited = useEdited(seen, ({ entries }) => typedList(entries));
  const { revision, typed, touched } = edited;
  const [tried, setTried] = useState(false);
  const save = useMutation({
    mutationFn: (sent: TypedList) =>
      call("beforeMoney.put", { params: { id }, ifMatch: revision, body: beforeEntries(sent) }),
    onSuccess: (saved, sent) => {
      edited.settleSent(sent, saved.revision);
      queries.setQueryData(beforeMoneyQuery(id).queryKey, saved);
    },
  });
  const unsaid = unsaidLines(typed);
  return {
    typed,
    unsaid: tried ? unsaid : none,
    error: save.error,
    isPending: save.isPending,
    saved: save.isSuccess && !touched ? save.data.revision : undefined,
    change: (line: BeforeMoneyLine, more: Partial<TypedBefore>): void =>
      edited.change({ ...typed, [line]: { ...typed[line], ...more, halts: haltsAt(seen, line) } }),
    submit: (): void => {
      setTried(true);
      if (unsaid.size === 0) save.mutate(typed);
    },
  };
};

export type BeforeMoneyForm = ReturnType<typeof useBeforeMoneyForm>;
