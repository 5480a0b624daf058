import { infiniteQueryOptions, queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

/** Everything open with the first page; further pages hold more of what is at rest. Asked for anew each time it is looked at. */
export const homeQuery = infiniteQueryOptions({
  queryKey: ["cases"],
  queryFn: ({ pageParam, signal }) => call("cases.list", { query: { after: pageParam }, signal }),
  initialPageParam: undefined as string | undefined,
  getNextPageParam: ({ next }) => next ?? undefined,
  staleTime: 0,
});

export const caseQuery = (id: string) =>
  queryOptions({
    queryKey: ["case", id],
    queryFn: ({ signal }) => call("cases.get", { params: { id }, signal }),
    staleTime: 0,
  });

/** A part stays in its case for good. */
export const partCasesQuery = (part: string) =>
  queryOptions({
    queryKey: ["part-cases", part],
    queryFn: ({ signal }) => call("cases.ofPart", { params: { id: part }, signal }),
    staleTime: Number.POSITIVE_INFINITY,
  });
