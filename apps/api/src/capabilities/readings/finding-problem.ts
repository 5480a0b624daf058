import type { Finding } from "@evenhand/shared/finding";
import { checkFinding } from "@evenhand/sheet/check-finding";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { GradeScale } from "@evenhand/shared/report";
import type { DraftRead } from "./draft-read.ts";

/** Why a report on this car would not take a finding as it was read; `null` where it would. */
export type ProblemOf = (finding: Finding) => string | null;

/** @param scales that would come into the report with what was read */
export const findingProblems = ({ vehicle, header }: DraftRead, scales: readonly GradeScale[]): ProblemOf => {
  const known = new Map([...header.scales, ...scales].map((scale) => [scale.id, scale]));
  const into = { ...header, vehicle, scales: [...known.values()] };
  return (finding) => {
    const check = checkFinding(finding, into, sheetVersion1);
    return check.ok ? null : check.problems.map(({ reason }) => reason).join(" ");
  };
};
