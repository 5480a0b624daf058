import type { CaseStage } from "@evenhand/shared/http/cases";
import { hasLeft, isBought } from "./collecting.ts";
import { standingDecision } from "./decision.ts";
import type { CaseFacts } from "./facts.ts";
import { isBooking, isLooking, isReported } from "./visits.ts";

/** Where the case stands on its way: at the furthest thing that has come about. */
export function stageOf(facts: CaseFacts): CaseStage {
  const { comparison, releases, summary, questions } = facts;
  const decision = standingDecision(facts);
  if (hasLeft(facts)) return "collect";
  if (summary !== null) return "decide";
  if (decision !== null) return isBought(facts) ? "collect" : "decide";
  if (releases.open.length > 0) return "settle";
  if (releases.ended > 0) return comparison === null ? "settle" : "decide";
  if (comparison !== null) return "read";
  if (isLooking(facts)) return "look";
  if (isBooking(facts)) return "book";
  if (isReported(facts)) return "read";
  const asking = questions.drafted ?? questions.asked ?? questions.answered;
  return asking !== null || facts.by === "dealer" ? "ask" : "book";
}
