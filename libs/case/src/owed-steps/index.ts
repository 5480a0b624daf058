import type {
  CaseDecision,
  CaseParty,
  CaseVisitState,
  DeadlineStep,
  Silence,
} from "@evenhand/shared/http/cases";
import type { SettlementState } from "@evenhand/shared/settlement";
import { owedIn } from "../owed-in/index.ts";
import { endOf, lapseOf } from "../settlement/index.ts";

/** A step that somebody owes until a deadline. */
export type OwedStep = {
  readonly step: DeadlineStep;
  readonly of: CaseParty;
  /** What comes of it where nobody takes it. */
  readonly silence: Silence;
};

const settling: Partial<Record<SettlementState, DeadlineStep>> = {
  released: "answer-items",
  refused: "answer-items",
  contested: "answer-contest",
  "price-offered": "answer-remedy",
  "remedy-offered": "answer-remedy",
  "look-offered": "answer-remedy",
  asked: "answer-dispute",
  revising: "revise-report",
  "looking-again": "book-look",
  promised: "do-remedy",
  proved: "check-remedy",
};

/**
 * The step that a line being settled waits for, and whose it is; `null` at an end.
 *
 * @example settlingStep("released") // { step: "answer-items", of: "dealer", silence: "finding-stands" }
 */
export function settlingStep(state: SettlementState): OwedStep | null {
  const [step, owed, lapsed] = [settling[state], owedIn(state), lapseOf(state)];
  const silence = lapsed === null ? null : endOf(lapsed);
  return step === undefined || owed === null || silence === null ? null : { step, of: owed.of, silence };
}

const booking: Partial<Record<CaseVisitState, OwedStep>> = {
  held: { step: "request-hour", of: "buyer", silence: "hour-released" },
  requested: { step: "accept-hour", of: "inspector", silence: "hour-released" },
  accepted: { step: "give-access", of: "dealer", silence: "hour-released" },
};

/**
 * The answer that a visit being booked waits for until its deadline, and whose it is; `null` where it waits for no answer. What a
 * visit that is agreed waits for is its hour, which is no deadline.
 *
 * @example bookingStep("requested") // { step: "accept-hour", of: "inspector", silence: "hour-released" }
 * @example bookingStep("confirmed") // null
 */
export const bookingStep = (state: CaseVisitState): OwedStep | null => booking[state] ?? null;

const offering: Partial<Record<CaseDecision, OwedStep>> = {
  countered: { step: "answer-counter", of: "dealer", silence: "offer-lapsed" },
  "countered-back": { step: "answer-offer", of: "buyer", silence: "offer-lapsed" },
};

/**
 * The answer that an offer waits for, and whose it is; `null` where none is open.
 *
 * @example offerStep("countered-back") // { step: "answer-offer", of: "buyer", silence: "offer-lapsed" }
 */
export const offerStep = (state: CaseDecision): OwedStep | null => offering[state] ?? null;
