import { queryOptions } from "@tanstack/react-query";
import { sheetIndex, type SheetIndex } from "../../entities/sheet/sheet-index";
import { call } from "../../service/client";

export const handOversQuery = (id: string) =>
  queryOptions({
    queryKey: ["hand-overs", id],
    queryFn: ({ signal }) => call("handOvers.ofCase", { params: { id }, signal }),
  });

export const handOverQuery = (id: string) =>
  queryOptions({
    queryKey: ["hand-over", id],
    queryFn: ({ signal }) => call("handOvers.get", { params: { id }, signal }),
  });

export const carriedQuery = (token: string) =>
  queryOptions({
    queryKey: ["carried-hand-over", token],
    retry: false,
    queryFn: ({ signal }) => call("carriedHandOvers.get", { params: { token }, signal }),
  });

/** The transport sheet comes only with the carrier's page. */
export const transportSheetQuery = queryOptions({
  queryKey: ["transport-sheet", 1],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async (): Promise<SheetIndex> => {
    const { transportSheet1 } = await import("@evenhand/sheet/transport-sheet-1");
    return sheetIndex(transportSheet1);
  },
});
