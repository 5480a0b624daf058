import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import { ownZone } from "../../entities/time/zone-time";
import { call } from "../../service/client";

/** The visit that begins now, in the zone of this device. */
export const visitNow = () => ({ started: new Date().toISOString(), zone: ownZone() });

/** To a report's sheet. */
export const useOpenReport = (): ((report: string) => Promise<void>) => {
  const navigate = useNavigate();
  return (report) => navigate({ to: "/reports/$report", params: { report } });
};

/** Begins a new version of a sealed report, and opens it. */
export const useRevise = (report: string | undefined) => {
  const open = useOpenReport();
  const queries = useQueryClient();
  return useMutation({
    mutationFn: () => call("reports.revise", { params: { id: report ?? "" } }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries();
      await open(id);
    },
  });
};
