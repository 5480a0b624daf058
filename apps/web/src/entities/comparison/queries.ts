import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

export const comparisonQuery = (id: string) =>
  queryOptions({
    queryKey: ["comparison", id],
    queryFn: ({ signal }) => call("comparisons.get", { params: { id }, signal }),
  });

/** Stored bytes: what was compared never changes. */
export const comparisonDocumentQuery = (id: string) =>
  queryOptions({
    queryKey: ["comparison-document", id],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: ({ signal }) => call("comparisons.document", { params: { id }, signal }),
  });
