import type { GradeScale } from "@evenhand/shared/report";
import { call } from "../../service/client";
import { Refusal } from "../../service/refusal";

/** As often as another change of the same report may come between. */
const tries = 4;

const isMoved = (error: unknown): boolean => error instanceof Refusal && error.problem.status === 412;

/** The report takes grades of these scales from now on. What it has of the same name stays. @returns whether anything was added */
export const bringScales = async (report: string, scales: readonly GradeScale[]): Promise<boolean> => {
  for (let left = tries; ; left -= 1) {
    const { revision, report: there } = await call("reports.get", { params: { id: report } });
    const known = new Set(there.scales.map(({ id }) => id));
    const missing = scales.filter(({ id }) => !known.has(id));
    if (missing.length === 0) return false;
    try {
      const body = { scales: [...there.scales, ...missing] };
      await call("reports.change", { params: { id: report }, ifMatch: revision, body });
      return true;
    } catch (error) {
      if (!isMoved(error) || left === 1) throw error;
    }
  }
};
