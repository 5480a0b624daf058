import { useMutation, useQueryClient } from "@tanstack/react-query";
import { evidenceKey } from "../../offline/evidence-key";
import { call } from "../../service/client";
import type { FileRow } from "./file-rows";
import type { ReportFiles } from "./report-files";

/** Takes a file with the service away from its place, or puts it back. */
export const useMove = (report: string) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: ({ id, move }: { readonly id: string; readonly move: "remove" | "restore" }) =>
      call(`evidence.${move}`, { params: { id } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: evidenceKey(report) }),
  });
};

/** Takes a file away, wherever it stands. */
export const useTakeAway = ({ report, uploads }: ReportFiles): ((row: FileRow) => void) => {
  const move = useMove(report);
  return (row) => {
    if (row.at === "device") void uploads.remove(row.kept);
    else move.mutate({ id: row.file.id, move: "remove" });
  };
};
