import type { CostTable } from "@evenhand/shared/cost-table";
import type { CostTableSeen } from "@evenhand/shared/http/summaries";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { costTableQuery } from "../../entities/comparison/cost-table";
import { call } from "../../service/client";
import { useEdited } from "../../service/use-edited";
import {
  filledFrom,
  tableOf,
  typedOf,
  wrongWith,
  type CostedRow,
  type TypedRow,
  type TypedTable,
} from "./cost-form";

const useSave = (revision: number, settleSent: (sent: TypedTable, revision: number) => void) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (sent: TypedTable) => call("costTable.put", { ifMatch: revision, body: tableOf(sent) }),
    onSuccess: async (saved, sent) => {
      settleSent(sent, saved.revision);
      queries.setQueryData(costTableQuery.queryKey, saved);
      await queries.invalidateQueries({ queryKey: costTableQuery.queryKey });
    },
  });
};

/** A table that is being typed, what is wrong in it once it was tried to be saved, and what became of saving. */
export const useCostForm = (seen: CostTableSeen, costed: readonly CostedRow[]) => {
  const { revision, typed, touched, change, settleSent } = useEdited(seen, ({ table }) =>
    typedOf(table, costed),
  );
  const [tried, setTried] = useState(false);
  const save = useSave(revision, settleSent);
  const wrong = typed.rows.filter((row) => wrongWith(row, typed.currency) !== null);
  return {
    typed,
    wrong: tried ? wrong : [],
    error: save.error,
    isPending: save.isPending,
    saved: save.isSuccess && !touched ? save.data.revision : undefined,
    change,
    changeRow: (row: TypedRow): void =>
      change({ ...typed, rows: typed.rows.map((each) => (each.row === row.row ? row : each)) }),
    fill: (table: CostTable): void => change(filledFrom(typed, table)),
    submit: (): void => {
      setTried(true);
      if (wrong.length === 0) save.mutate(typed);
    },
  };
};

export type CostForm = ReturnType<typeof useCostForm>;
