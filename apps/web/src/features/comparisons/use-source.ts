import type { Report } from "@evenhand/shared/report";
import { useQuery } from "@tanstack/react-query";
import { useMemo } from "react";
import { documentQuery } from "../../entities/report/queries";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import type { ComparisonSource } from "../../entities/comparison/model";
import { comparisonDocumentQuery, comparisonQuery } from "../../entities/comparison/queries";

const isReport = (document: { readonly format: string } | undefined): document is Report =>
  document?.format === "evenhand-report";

/** The comparison, both reports and the sheet, asked for side by side. */
export const useComparisonSource = (id: string) => {
  const meta = useQuery(comparisonQuery(id));
  const document = useQuery(comparisonDocumentQuery(id));
  const a = useQuery({ ...documentQuery(meta.data?.a ?? ""), enabled: meta.data !== undefined });
  const b = useQuery({ ...documentQuery(meta.data?.b ?? ""), enabled: meta.data !== undefined });
  // Only one sheet exists so far; asking at once spares a slow phone a round trip.
  const index = useQuery(
    sheetQuery(document.data?.sheet.id ?? "evenhand", document.data?.sheet.version ?? 1),
  );
  const source = useMemo((): ComparisonSource | null => {
    if (!document.data || !index.data || !isReport(a.data) || !isReport(b.data)) return null;
    return { index: index.data, comparison: document.data, a: a.data, b: b.data };
  }, [document.data, index.data, a.data, b.data]);
  const error = meta.error ?? document.error ?? a.error ?? b.error ?? index.error;
  return { meta: meta.data, source, error };
};
