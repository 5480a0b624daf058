import type {
  AppointmentActor,
  AppointmentMove,
  AppointmentState,
  CancellationCause,
} from "@evenhand/shared/booking";
import type { CancellationTerms } from "../cancellation-terms/index.ts";
import type { Interval } from "../interval/index.ts";
import type { VisitCost } from "../visit-cost/index.ts";
import { LIVE_STATES } from "./table.ts";

const MINUTE_MS = 60_000;

/** Times in milliseconds. */
export type AppointmentRules = {
  readonly hold: number;
  /** The inspector answers a request within this, and the dealer an acceptance; never after the start. */
  readonly answerWithin: number;
  /** A visit may begin so long before its hour. */
  readonly earlyStart: number;
  /** An inspector not there so long after the start has missed the visit. */
  readonly grace: number;
};

/** Ten minutes of hold are the service's own; the rest is common practice, no source. */
export const DEFAULT_APPOINTMENT_RULES: AppointmentRules = {
  hold: 10 * MINUTE_MS,
  answerWithin: 24 * 60 * MINUTE_MS,
  earlyStart: 30 * MINUTE_MS,
  grace: 60 * MINUTE_MS,
};

export type HistoryEntry = {
  readonly at: number;
  readonly actor: AppointmentActor;
  readonly move: AppointmentMove | "hold";
  readonly to: AppointmentState;
  /** The hour as it stood after the move. */
  readonly hour: Interval;
  readonly cause?: CancellationCause;
};

export type Appointment = {
  readonly state: AppointmentState;
  readonly hour: Interval;
  /** End of the hold, or when the next answer is due; `null` where nothing is awaited. */
  readonly deadline: number | null;
  readonly requestedAt: number | null;
  readonly cost: VisitCost;
  /** The terms shown when it was booked; later ones never replace them. */
  readonly terms: CancellationTerms;
  readonly paid: boolean;
  /** What withdrawing would have cost when the hour was last moved, basis points: moving a visit never makes it free. */
  readonly carriedShare: number;
  /** Until when the dealer keeps the car from sale, said on confirming; `null`: it may be sold at any time. */
  readonly heldFromSaleUntil: number | null;
  /** SEQUENCE of the last iCalendar invitation; `null` while none has gone out. */
  readonly sequence: number | null;
  readonly history: readonly HistoryEntry[];
};

/**
 * An hour held for a buyer while the booking is filled in.
 *
 * @example holdHour(hour, cost, DEFAULT_TERMS, now).deadline // now + 10 minutes
 */
export function holdHour(
  hour: Interval,
  cost: VisitCost,
  terms: CancellationTerms,
  now: number,
  rules: AppointmentRules = DEFAULT_APPOINTMENT_RULES,
): Appointment {
  const history: HistoryEntry[] = [{ at: now, actor: "buyer", move: "hold", to: "held", hour }];
  const deadline = now + rules.hold;
  return {
    state: "held",
    hour,
    deadline,
    requestedAt: null,
    cost,
    terms,
    paid: false,
    carriedShare: 0,
    heldFromSaleUntil: null,
    sequence: null,
    history,
  };
}

/** Does it take time in the calendars? A hold that has run out does not, even before anybody has ended it. */
export const isLive = ({ state, deadline }: Pick<Appointment, "state" | "deadline">, now: number): boolean =>
  LIVE_STATES.includes(state) && !(state === "held" && deadline !== null && now >= deadline);
