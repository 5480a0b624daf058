import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import { readyToSeal } from "../../offline/before-seal";
import { call } from "../../service/client";

/** Seals the report as this person sees it, and goes to what was sealed. */
export const useSeal = (reportId: string, visit: string | null | undefined) => {
  const queries = useQueryClient();
  const navigate = useNavigate();
  return useMutation({
    mutationFn: async () => {
      const revision = await readyToSeal(reportId, (id) => call("reports.get", { params: { id } }));
      return call("reports.seal", { params: { id: reportId }, ifMatch: revision });
    },
    onSuccess: async (sealed) => {
      await queries.invalidateQueries();
      await navigate({
        to: "/report-versions/$version",
        params: { version: sealed.id },
        search: { sealed: true, comparison: sealed.comparison ?? undefined, visit: visit ?? undefined },
      });
    },
  });
};
