import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";

export const complaintsQuery = pagedQuery(["complaints"], (after, signal) =>
  call("complaints.list", { query: { after }, signal }),
);

export const complaintCountsQuery = queryOptions({
  queryKey: ["complaint-counts"],
  queryFn: ({ signal }) => call("complaints.counts", { signal }),
});

export const complaintQuery = (id: string) =>
  queryOptions({
    queryKey: ["complaint", id],
    queryFn: ({ signal }) => call("complaints.get", { params: { id }, signal }),
  });
