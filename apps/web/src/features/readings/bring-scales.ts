import type { GradeScale } from "@evenhand/shared/report";
import { afterMoves } from "../../service/after-moves";
import { call } from "../../service/client";

/** The report takes grades of these scales from now on. What it has of the same name stays. @returns whether anything was added */
export const bringScales = (report: string, scales: readonly GradeScale[]): Promise<boolean> =>
  afterMoves(async () => {
    const { revision, report: there } = await call("reports.get", { params: { id: report } });
    const known = new Set(there.scales.map(({ id }) => id));
    const missing = scales.filter(({ id }) => !known.has(id));
    if (missing.length === 0) return false;
    const body = { scales: [...there.scales, ...missing] };
    await call("reports.change", { params: { id: report }, ifMatch: revision, body });
    return true;
  });
