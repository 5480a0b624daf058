import { queryOptions } from "@tanstack/react-query";
import { sheetIndex, type SheetIndex } from "./sheet-index";

/** The sheet a report names. It is large, so it comes only with the pages that need it. */
export const sheetQuery = (id: string, version: number) =>
  queryOptions({
    queryKey: ["sheet", id, version],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: async (): Promise<SheetIndex> => {
      const { sheetVersion1 } = await import("@evenhand/sheet/sheet-version-1");
      if (sheetVersion1.id !== id || sheetVersion1.version !== version) {
        throw new Error(`this application does not hold sheet ${id} version ${version}`);
      }
      return sheetIndex(sheetVersion1);
    },
  });
