import { asSummary } from "@evenhand/shared/as-summary";
import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";

export const decisionsQuery = pagedQuery(["decisions"], (after, signal) =>
  call("decisions.list", { query: { after }, signal }),
);

export const summaryQuery = (id: string) =>
  queryOptions({
    queryKey: ["summary", id],
    queryFn: ({ signal }) => call("summaries.get", { params: { id }, signal }),
  });

/** The stored bytes; never recomputed. */
export const summaryDocumentQuery = (id: string) =>
  queryOptions({
    queryKey: ["summary-document", id],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: async ({ signal }) => asSummary(await call("summaries.document", { params: { id }, signal })),
  });

export const summariesOfQuery = (comparison: string) =>
  queryOptions({
    queryKey: ["summaries", comparison],
    queryFn: ({ signal }) => call("summaries.list", { query: { comparison, limit: 10 }, signal }),
  });
