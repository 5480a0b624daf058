import type { CaseVisitState } from "@evenhand/shared/http/cases";
import type { CaseFacts } from "./facts.ts";

const booking: ReadonlySet<CaseVisitState> = new Set(["asked-for", "held", "requested", "accepted"]);
const looking: ReadonlySet<CaseVisitState> = new Set(["taken-on", "confirmed", "under-way"]);

/** One is being booked. */
export const isBooking = ({ visits }: CaseFacts): boolean => visits.some(({ state }) => booking.has(state));
/** One is agreed, or findings are being recorded. */
export const isLooking = ({ visits }: CaseFacts): boolean =>
  visits.some(({ state, draft }) => looking.has(state) || draft !== null);
/** One is on the way, or came to a report. One that was declined, cancelled, missed or ran out has to be booked anew. */
export const hasVisit = (facts: CaseFacts): boolean =>
  isBooking(facts) || isLooking(facts) || isReported(facts);
export const isReported = ({ visits }: CaseFacts): boolean =>
  visits.some(({ state }) => state === "reported");
