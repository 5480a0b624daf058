import type { CaseDecision, CaseParty, CaseStanding } from "@evenhand/shared/http/cases";
import { useText } from "../../strings/text";

/** What was decided, said to the buyer or to the dealer; an inspector never hears of it. */
export const useDecided = (as: CaseParty): ((decision: CaseDecision) => string) => {
  const t = useText();
  return (decision) => t(`case.decision.${decision}.${as === "dealer" ? "dealer" : "buyer"}`);
};

/** What is said of a case in which nothing is open: what was decided, or how far it came. */
export const useAtRest = (
  as: CaseParty,
): ((standing: Pick<CaseStanding, "decision" | "stage">) => string) => {
  const t = useText();
  const decided = useDecided(as);
  return ({ decision, stage }) => (decision === null ? t(`case.rest.${stage}`) : decided(decision));
};
