import type { AppointmentActor, AppointmentMove, AppointmentState } from "@evenhand/shared/booking";
import { decideMove, type StateRefusal } from "@evenhand/case/state-table";
import { shareAt } from "../cancellation-terms/index.ts";
import {
  type Appointment,
  type AppointmentRules,
  DEFAULT_APPOINTMENT_RULES,
  type HistoryEntry,
} from "./appointment.ts";
import { type Asked, CONDITIONS, type MoveFacts, type Shortfall } from "./conditions.ts";
import { type Consequence, consequencesOfEnd, consequencesOfMove } from "./consequences.ts";
import { APPOINTMENT_STATES, LIVE_STATES, type Transition } from "./table.ts";

export {
  type Appointment,
  type AppointmentRules,
  DEFAULT_APPOINTMENT_RULES,
  holdHour,
  isLive,
} from "./appointment.ts";
export type { MoveFacts, Shortfall } from "./conditions.ts";
export type { Consequence } from "./consequences.ts";
export { dueMove, nextLook, openMoves } from "./open-moves.ts";
export { CAUSES, LIVE_STATES, TRANSITIONS } from "./table.ts";

export type MoveRefusal =
  | StateRefusal<AppointmentState, AppointmentMove, AppointmentActor>
  | { readonly code: "conditions"; readonly shortfalls: readonly Shortfall[] };

export type MoveDecision =
  | {
      readonly kind: "moved";
      readonly appointment: Appointment;
      readonly consequences: readonly Consequence[];
    }
  | { readonly kind: "refused"; readonly refusal: MoveRefusal };

/** The next answer is due within the time for it, and never after the start. */
function nextDeadline({ now, rules }: Asked, { to }: Transition, start: number): number | null {
  return to === "requested" || to === "accepted" ? Math.min(now + rules.answerWithin, start) : null;
}

/** Rises with every message that goes into calendars. */
function nextSequence({ appointment: { sequence } }: Asked, { move, to }: Transition): number | null {
  if (move === "confirm") return sequence === null ? 0 : sequence + 1;
  const tells = move === "reschedule" || to === "cancelled" || to === "declined" || to === "expired";
  return sequence !== null && tells ? sequence + 1 : sequence;
}

/** Share that withdrawing would cost at this moment, at least what was carried so far. */
function shareCarried({ appointment, now }: Asked): number {
  const { state, carriedShare, terms, hour } = appointment;
  const share = state === "confirmed" ? shareAt(terms.buyerWithdraws, hour.start - now) : 0;
  return Math.max(carriedShare, share);
}

function moveOn(asked: Asked, row: Transition): Appointment {
  const { appointment, actor, now, facts } = asked;
  const { move, to } = row;
  const hour = move === "reschedule" && facts.newHour !== undefined ? facts.newHour : appointment.hour;
  const cause = row.conditions.includes("cause") ? facts.cause : undefined;
  const entry: HistoryEntry = { at: now, actor, move, to, hour, ...(cause === undefined ? {} : { cause }) };
  return {
    ...appointment,
    state: to,
    hour,
    deadline: nextDeadline(asked, row, hour.start),
    requestedAt: move === "request" || move === "reschedule" ? now : appointment.requestedAt,
    paid: appointment.paid || move === "confirm",
    carriedShare: move === "reschedule" ? shareCarried(asked) : appointment.carriedShare,
    heldFromSaleUntil: move === "confirm" ? (facts.heldFromSaleUntil ?? null) : appointment.heldFromSaleUntil,
    sequence: nextSequence(asked, row),
    history: [...appointment.history, entry],
  };
}

/**
 * Decides a move: the appointment as it stands after it with what has to be done, or a refusal that says what would
 * work. Pure; the service writes the result where id, state and version are still the ones it read.
 *
 * Facts are what was found out beforehand (the hour checked by `canBook` under the lock, independence judged, payment
 * authorized). A fact that is left out counts as not so, so nothing is allowed by forgetting to ask.
 *
 * @example
 * decide(held, "accept", "inspector", now, {})
 * // { kind: "refused", refusal: { code: "no-such-move", state: "held", moves: [], actors: [], states: ["requested"] } }
 */
export function decide(
  appointment: Appointment,
  move: AppointmentMove,
  actor: AppointmentActor,
  now: number,
  facts: MoveFacts,
  rules: AppointmentRules = DEFAULT_APPOINTMENT_RULES,
): MoveDecision {
  const found = decideMove(APPOINTMENT_STATES, appointment.state, move, actor);
  if (found.kind === "refused") return found;
  const { row } = found;
  const asked: Asked = { appointment, actor, now, facts, rules };
  const shortfalls = row.conditions.map((code) => CONDITIONS[code](asked)).filter((one) => one !== null);
  if (shortfalls.length > 0) return { kind: "refused", refusal: { code: "conditions", shortfalls } };
  const next = moveOn(asked, row);
  const ended = !LIVE_STATES.includes(row.to) && row.to !== "reported";
  const consequences = ended ? consequencesOfEnd(asked, row, next) : consequencesOfMove(asked, row, next);
  return { kind: "moved", appointment: next, consequences };
}
