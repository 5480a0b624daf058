import type { CrossCheck, FirmHandbook } from "@evenhand/shared/cross-check";
import type { Sheet } from "@evenhand/shared/sheet";
import type { Report } from "@evenhand/shared/report";
import { useQuery } from "@tanstack/react-query";
import { useDeferredValue, useMemo } from "react";
import type { KeptFinding } from "../../offline/store";
import type { SheetIndex } from "../../entities/sheet/sheet-index";

/** The rules come after the sheet itself is usable. They go by what the report's own firm entered. */
const rulesQuery = {
  queryKey: ["handbook-rules"],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async () => {
    const [{ singleReportChecks }, { reportHandbook }] = await Promise.all([
      import("@evenhand/handbook/cross-checks"),
      import("@evenhand/handbook/firm-handbook"),
    ]);
    return (report: Report, firm: FirmHandbook | undefined, sheet: Sheet): CrossCheck[] =>
      singleReportChecks({ ...report, handbook: firm && reportHandbook(firm, report.vehicle) }, sheet);
  },
} as const;

/** Rules of the handbook that the report's own findings break, as they stand on this device. */
export const useOwnChecks = (
  report: Report,
  firm: FirmHandbook | undefined,
  index: SheetIndex,
  findings: ReadonlyMap<string, KeptFinding>,
): readonly CrossCheck[] => {
  const run = useQuery(rulesQuery).data;
  const settled = useDeferredValue(findings);
  return useMemo(() => {
    if (!run) return [];
    const own = [...settled.values()].map(({ finding }) => finding).filter((finding) => finding !== null);
    const written = { ...report, findings: own };
    return run(written, firm, index.sheet).filter(({ verdict }) => verdict === "breaks");
  }, [run, settled, report, firm, index]);
};

export const checksAt = (
  checks: readonly CrossCheck[],
  item: string,
  position: string,
): readonly CrossCheck[] =>
  checks.filter(({ reads }) => reads.some((one) => one.item === item && one.position === position));
