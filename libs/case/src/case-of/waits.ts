import type { CaseWait } from "@evenhand/shared/http/cases";
import { collectingWaits } from "./collecting.ts";
import { standingDecision } from "./decision.ts";
import type { CaseFacts, CaseVisit, Counted } from "./facts.ts";
import { bookingStep, offerStep } from "../owed-steps/index.ts";
import { settlingOf, waitsForOthers } from "./settling.ts";
import { hasVisit } from "./visits.ts";

type Wait = Pick<CaseWait, "step" | "of"> & Partial<CaseWait>;
const wait = (subject: string | null, { step, of, until = null, count = 1 }: Wait): CaseWait[] =>
  subject === null ? [] : [{ step, of, until, count, subject }];

const counted = (some: Counted | null, { step, of }: Wait): CaseWait[] =>
  some === null ? [] : wait(some.first, { step, of, count: some.count });

const questionWaits = ({ questions }: CaseFacts): CaseWait[] => [
  ...counted(questions.drafted, { step: "send-question", of: "buyer" }),
  ...counted(questions.asked, { step: "answer-question", of: "dealer" }),
  ...counted(questions.answered, { step: "publish-answer", of: "dealer" }),
];

/** Whoever has to move a visit on. One that is over waits for nobody, unless its report is being written anew. */
function visitMove(visit: CaseVisit): CaseWait[] {
  const { state, appointment, order, deadline, start, draft } = visit;
  const answer = bookingStep(state);
  if (answer !== null) return wait(appointment, { ...answer, until: deadline });
  switch (state) {
    case "asked-for":
      return wait(order, { step: "accept-visit", of: "inspector" });
    case "taken-on":
    case "confirmed":
    case "under-way":
      if (draft !== null) return wait(draft, { step: "seal", of: "inspector", until: start });
      if (appointment === null) return wait(order, { step: "inspect-any-hour", of: "inspector" });
      return state === "under-way"
        ? wait(appointment, { step: "report-visit", of: "inspector" })
        : wait(appointment, { step: "inspect", of: "inspector", until: start });
    default:
      return wait(draft, { step: "seal", of: "inspector" });
  }
}

const visitWaits = (visit: CaseVisit): CaseWait[] => [
  ...visitMove(visit),
  ...(visit.proposed && visit.state !== "reported"
    ? wait(visit.appointment, { step: "answer-brief", of: "inspector", until: visit.start })
    : []),
];

/** A car that is withdrawn cannot be booked, and whoever is not the buyer does not know what the buyer thinks of doing. */
function bookingWaits(facts: CaseFacts): CaseWait[] {
  const { by, listed, briefed, vehicle, comparison, decision } = facts;
  if (by !== "buyer" || !listed || hasVisit(facts) || comparison !== null || decision !== null) return [];
  return wait(vehicle, { step: briefed ? "book" : "choose-brief", of: "buyer" });
}

/** The buyer's way from the comparison to a decision; while the dealer is asked, it is the dealer's turn. */
function readingWaits(facts: CaseFacts): CaseWait[] {
  const { comparison, releases, summary } = facts;
  if (summary !== null) return wait(summary, { step: "decide", of: "buyer" });
  if (comparison === null || standingDecision(facts) !== null || waitsForOthers(facts)) return [];
  const laid = releases.ended > 0 || releases.open.length > 0;
  return wait(comparison.id, { step: laid ? "sum-up" : "read", of: "buyer" });
}

/** After which of them the buyer decides anew. */
const undone: ReadonlySet<string> = new Set(["counter-refused", "counter-withdrawn", "counter-lapsed"]);

function decisionWaits(facts: CaseFacts): CaseWait[] {
  const { decision, comparison, summary } = facts;
  const answer = decision === null ? null : offerStep(decision.state);
  if (decision !== null && answer !== null) return wait(decision.id, { ...answer, until: decision.until });
  const again = undone.has(standingDecision(facts) ?? "") && summary === null;
  return again ? wait(comparison?.id ?? null, { step: "decide-again", of: "buyer" }) : [];
}

/** Everything that waits for somebody. */
export const waitsOf = (facts: CaseFacts): CaseWait[] => [
  ...questionWaits(facts),
  ...bookingWaits(facts),
  ...facts.visits.flatMap(visitWaits),
  ...readingWaits(facts),
  ...settlingOf(facts).flatMap((settling) => wait(facts.vehicle, settling)),
  ...decisionWaits(facts),
  ...collectingWaits(facts),
];
