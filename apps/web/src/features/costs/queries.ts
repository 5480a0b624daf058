import { queryOptions } from "@tanstack/react-query";
import { capital } from "../../entities/sheet/sheet-index";
import { call } from "../../service/client";
import type { CostedRow } from "./cost-form";

export const costHistoryQuery = queryOptions({
  queryKey: ["cost-table", "history"],
  queryFn: ({ signal }) => call("costTable.history", { signal }),
});

export const costsOfferedQuery = queryOptions({
  queryKey: ["cost-table", "offered"],
  queryFn: ({ signal }) => call("costTable.offered", { signal }),
});

/** What on the sheet can cost something, by section. The sheet is large, so it comes only with the page that needs it. */
export const costedRowsQuery = queryOptions({
  queryKey: ["costed-rows", 1],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async (): Promise<CostedRow[]> => {
    const { sheetVersion1 } = await import("@evenhand/sheet/sheet-version-1");
    const sections = new Map(sheetVersion1.sections.map(({ id, words }) => [id, words.american]));
    return sheetVersion1.costRows.map(({ id, section, words }) => ({
      row: id,
      section: capital(sections.get(section) ?? section),
      words: capital(words.american),
      items: sheetVersion1.items.filter(({ costRow }) => costRow === id).map((item) => item.words.american),
    }));
  },
});
