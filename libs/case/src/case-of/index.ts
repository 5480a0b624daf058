import { CaseStep, type CaseParty, type CaseStanding, type CaseWait } from "@evenhand/shared/http/cases";
import { standingDecision } from "./decision.ts";
import type { CaseFacts } from "./facts.ts";
import { stageOf } from "./stage.ts";
import { waitsOf } from "./waits.ts";

export type { CaseFacts, CaseVisit } from "./facts.ts";

const place = new Map(CaseStep.options.map((step, at) => [step, at]));
const placeOf = ({ step }: CaseWait): number => place.get(step) ?? 0;

/** Deadlines first, the earliest of them; then what lies furthest along the way, and what is begun before what could be begun. */
const byUrgency = (a: CaseWait, b: CaseWait): number => {
  if (a.until === b.until) return placeOf(b) - placeOf(a);
  if (a.until === null || b.until === null) return a.until === null ? 1 : -1;
  return a.until < b.until ? -1 : 1;
};

const ownFirst =
  (by: CaseParty) =>
  (a: CaseWait, b: CaseWait): number =>
    Number(b.of === by) - Number(a.of === by) || byUrgency(a, b);

/**
 * Where a case stands: at which stage of its way, what waits for whom and until when, and the one thing that comes next.
 *
 * What comes next is the person's own where anything is; else what another owes; nothing where nothing is open. It tells a party no
 * more than the facts handed in: they are what that party may know.
 *
 * @example
 * caseOf(facts).next
 * // { step: "give-access", of: "dealer", until: "2027-05-04T14:00:00Z", count: 1, subject: "0197…" }
 */
export function caseOf(facts: CaseFacts): CaseStanding {
  const waits = waitsOf(facts).toSorted(ownFirst(facts.by));
  return {
    stage: stageOf(facts),
    decision: standingDecision(facts),
    waits,
    next: waits[0] ?? null,
  };
}
