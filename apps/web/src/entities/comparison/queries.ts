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

/** Page one, stored with the comparison. */
export const answerQuery = (id: string) =>
  queryOptions({
    queryKey: ["comparison-answer", id],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: ({ signal }) => call("comparisons.answer", { params: { id }, signal }),
  });

/** What it may cost, from one's own table as it stands. */
export const answerCostQuery = (id: string) =>
  queryOptions({
    queryKey: ["comparison-cost", id],
    queryFn: ({ signal }) => call("comparisons.cost", { params: { id }, signal }),
  });
