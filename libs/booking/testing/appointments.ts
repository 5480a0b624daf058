import type { AppointmentActor, AppointmentMove, AppointmentState } from "@evenhand/shared/booking";
import { type Appointment, decide, holdHour, type MoveFacts } from "../src/appointment/index.ts";
import type { RoadFacts } from "../src/before-the-road/index.ts";
import { DEFAULT_TERMS } from "../src/cancellation-terms/index.ts";
import type { VisitCost } from "../src/visit-cost/index.ts";
import { DAY, HOUR, MINUTE, MONDAY } from "./builders.ts";

export const COST: VisitCost = { currency: "USD", visit: 40_000, travel: 1_000, site: 3_500, total: 44_500 };
/** The visit lies ten days after the booking, ten to one o'clock. */
export const NOW = MONDAY;
export const START = MONDAY + 10 * DAY + 10 * HOUR;
export const SLOT = { start: START, end: START + 3 * HOUR };
export const NEW_SLOT = { start: START + DAY, end: START + DAY + 3 * HOUR };

export const ROAD: RoadFacts = {
  consent: { by: "owner-1", signedAt: NOW },
  insurance: { reference: "P-1", validUntil: null },
  plates: { reference: "trade", validUntil: START + DAY },
  damageBorneBy: "insurer",
  gate: [{ item: "brakes.hoses", position: "", seen: true, safetyOpen: false }],
  doubts: [],
};

/** Everything in order. */
export const GOOD: MoveFacts = {
  briefComplete: true,
  termsAcknowledged: DEFAULT_TERMS.version,
  paymentAuthorized: true,
  refusedHour: [],
  newHour: NEW_SLOT,
  declaredAt: NOW + 3 * MINUTE,
  independence: { mayAccept: true, conflicts: [] },
  accessAgreed: true,
  road: ROAD,
  reportSealed: true,
};

export const held = (): Appointment => holdHour(SLOT, COST, DEFAULT_TERMS, NOW);

export function move(
  appointment: Appointment,
  name: AppointmentMove,
  actor: AppointmentActor,
  now: number,
  facts: MoveFacts = GOOD,
): Appointment {
  const decision = decide(appointment, name, actor, now, facts);
  if (decision.kind === "refused") throw new Error(JSON.stringify(decision.refusal));
  return decision.appointment;
}

/** An appointment that came to its state in the ordinary way. */
export function inState(state: AppointmentState): Appointment {
  const requested = (): Appointment => move(held(), "request", "buyer", NOW + MINUTE);
  const accepted = (): Appointment => move(requested(), "accept", "inspector", NOW + 5 * MINUTE);
  const confirmed = (): Appointment => move(accepted(), "confirm", "dealer", NOW + 9 * MINUTE);
  const underWay = (): Appointment => move(confirmed(), "start", "inspector", START);
  const ways: Record<AppointmentState, () => Appointment> = {
    held,
    requested,
    accepted,
    confirmed,
    "under-way": underWay,
    reported: () => move(underWay(), "report", "inspector", START + 2 * HOUR),
    declined: () => move(requested(), "decline", "inspector", NOW + 5 * MINUTE),
    cancelled: () => move(confirmed(), "cancel", "buyer", NOW + DAY, { ...GOOD, cause: "buyer-withdrew" }),
    missed: () => move(confirmed(), "miss", "clock", START + HOUR),
    expired: () => move(held(), "expire", "clock", NOW + 10 * MINUTE),
  };
  return ways[state]();
}
