import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { useQuery } from "@tanstack/react-query";
import { useDeferredValue, useMemo } from "react";
import type { KeptFinding } from "../../offline/store";
import type { SheetIndex } from "../sheets/sheet-index";

/** The rules come after the sheet itself is usable. */
const rulesQuery = {
  queryKey: ["handbook-rules"],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async () => (await import("@evenhand/handbook/cross-checks")).singleReportChecks,
} as const;

/** Rules of the handbook that the report's own findings break, as they stand on this device. */
export const useOwnChecks = (
  report: Report,
  index: SheetIndex,
  findings: ReadonlyMap<string, KeptFinding>,
): readonly CrossCheck[] => {
  const run = useQuery(rulesQuery).data;
  const settled = useDeferredValue(findings);
  return useMemo(() => {
    if (!run) return [];
    const own = [...settled.values()].map(({ finding }) => finding).filter((finding) => finding !== null);
    return run({ ...report, findings: own }, index.sheet).filter(({ verdict }) => verdict === "breaks");
  }, [run, settled, report, index]);
};

export const checksAt = (
  checks: readonly CrossCheck[],
  item: string,
  position: string,
): readonly CrossCheck[] =>
  checks.filter(({ reads }) => reads.some((one) => one.item === item && one.position === position));
