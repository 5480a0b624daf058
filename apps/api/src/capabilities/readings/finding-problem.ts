import type { Finding } from "@evenhand/shared/finding";
import { checkFinding } from "@evenhand/sheet/check-finding";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { GradeScale } from "@evenhand/shared/report";
import type { DraftRead } from "./draft-read.ts";

/** Why a report on this car would not take a finding as it was read; `null` where it would. */
export const findingProblem = (
  finding: Finding,
  { vehicle, header }: DraftRead,
  scales: readonly GradeScale[],
): string | null => {
  const known = new Map([...header.scales, ...scales].map((scale) => [scale.id, scale]));
  const check = checkFinding(finding, { ...header, vehicle, scales: [...known.values()] }, sheetVersion1);
  return check.ok ? null : check.problems.map(({ reason }) => reason).join(" ");
};
