import type { Severity } from "@evenhand/shared/severity";
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

/** How grave it can be that a place of the sheet is not as claimed. It brings the sheet's compiler, so it comes only where asked. */
export const worstOfSheet = queryOptions({
  queryKey: ["worst-of-sheet", 1],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async (): Promise<(item: string, position: string) => Severity | null> => {
    const [{ sheetVersion1 }, { compileSheet }, { worstSeverity }] = await Promise.all([
      import("@evenhand/sheet/sheet-version-1"),
      import("@evenhand/sheet/compile-sheet"),
      import("@evenhand/comparison/worst-severity"),
    ]);
    const { items } = compileSheet(sheetVersion1);
    return (item, position) => {
      const compiled = items.get(item);
      return compiled === undefined ? null : worstSeverity(compiled, position);
    };
  },
});
