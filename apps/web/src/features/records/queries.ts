import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

export const dealerRecordQuery = (dealer: string) =>
  queryOptions({
    queryKey: ["dealer-record", dealer],
    queryFn: ({ signal }) => call("dealerRecords.get", { params: { id: dealer }, signal }),
  });

/** What sections are called. The sheet is large, so it comes only where there is something to say of a section. */
export const sectionNamesQuery = queryOptions({
  queryKey: ["section-names"],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async (): Promise<ReadonlyMap<string, string>> => {
    const { sheetVersion1 } = await import("@evenhand/sheet/sheet-version-1");
    return new Map(sheetVersion1.sections.map(({ id, words }) => [id, words.american]));
  },
});
