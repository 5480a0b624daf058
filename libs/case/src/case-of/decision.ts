import type { CaseDecision } from "@evenhand/shared/http/cases";
import type { CaseFacts } from "./facts.ts";

/** The decision that stands. One on an earlier inspection stands no longer: something was found that it did not know. */
export function standingDecision({ comparison, decision }: CaseFacts): CaseDecision | null {
  if (decision === null) return null;
  const outdated =
    comparison !== null && decision.inspection !== null && decision.inspection !== comparison.inspection;
  return outdated ? null : decision.state;
}
