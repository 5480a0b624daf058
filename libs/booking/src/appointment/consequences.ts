import type { AppointmentActor, CancellationCause } from "@evenhand/shared/booking";
import { NO_WORK, type Settlement, settleCancellation, settleReported } from "../cancellation-terms/index.ts";
import type { Interval } from "../interval/index.ts";
import type { Appointment } from "./appointment.ts";
import type { Asked } from "./conditions.ts";
import type { Transition } from "./table.ts";

/** What the service has to do because of a move, in the same transaction or by a job it enqueues there. */
export type Consequence =
  /** The statement version of this moment is the one compared. */
  | { readonly code: "freeze-statement" }
  /** From now until sealing the inspector gets the items without the dealer's answers. */
  | { readonly code: "hide-statement" }
  | { readonly code: "ask"; readonly actor: AppointmentActor; readonly by: number }
  | { readonly code: "capture-payment"; readonly minor: number; readonly currency: string }
  | { readonly code: "release-payment" }
  | { readonly code: "settle"; readonly cause: CancellationCause | null; readonly settlement: Settlement }
  | { readonly code: "release-hour"; readonly hour: Interval }
  | {
      readonly code: "invite";
      readonly method: "REQUEST" | "CANCEL";
      readonly sequence: number;
      readonly hour: Interval;
      /** The hour is not confirmed yet. */
      readonly tentative: boolean;
    };

/** What the end of an appointment means for the money: given back, or shared out by the terms. */
function moneyOf({ appointment, facts, now }: Asked, cause: CancellationCause): Consequence[] {
  const { state, paid, cost, terms, hour, carriedShare } = appointment;
  if (state === "held") return [];
  if (!paid) return [{ code: "release-payment" }];
  const promised = state === "confirmed" || state === "under-way";
  // Nobody has wasted anything on an hour that was not confirmed.
  const notice = promised ? hour.start - now : Infinity;
  const work = facts.work ?? NO_WORK;
  const settlement = settleCancellation({ cause, notice, cost, terms, work, leastShare: carriedShare });
  return [{ code: "settle", cause, settlement }];
}

/** Consequences of an end without a report. */
export function consequencesOfEnd(asked: Asked, { to }: Transition, next: Appointment): Consequence[] {
  const { appointment, facts } = asked;
  const named = facts.cause ?? (to === "missed" ? "inspector-missed" : null);
  // An hour that nobody took up in time, or that was declined, costs only what an earlier late change left owing.
  const cause = to === "cancelled" || to === "missed" ? (named ?? "buyer-withdrew") : "buyer-withdrew";
  const consequences: Consequence[] = [
    { code: "release-hour", hour: appointment.hour },
    ...moneyOf(asked, cause),
  ];
  if (next.sequence !== null && to !== "missed") {
    consequences.push({
      code: "invite",
      method: "CANCEL",
      sequence: next.sequence,
      hour: next.hour,
      tentative: false,
    });
  }
  return consequences;
}

/** Consequences of a move that goes on. */
export function consequencesOfMove(
  { appointment }: Asked,
  { move }: Transition,
  next: Appointment,
): Consequence[] {
  const { hour, deadline, sequence, cost } = next;
  const ask = (actor: AppointmentActor): Consequence => ({ code: "ask", actor, by: deadline ?? hour.start });
  const invite = (tentative: boolean): Consequence[] =>
    sequence === null ? [] : [{ code: "invite", method: "REQUEST", sequence, hour, tentative }];
  switch (move) {
    case "request":
      return [{ code: "freeze-statement" }, ask("inspector")];
    case "accept":
      return [{ code: "hide-statement" }, ask("dealer")];
    case "confirm":
      return [
        ...(appointment.paid
          ? []
          : [{ code: "capture-payment" as const, minor: cost.total, currency: cost.currency }]),
        ...invite(false),
      ];
    case "reschedule":
      return [{ code: "release-hour", hour: appointment.hour }, ask("inspector"), ...invite(true)];
    case "report":
      return [{ code: "settle", cause: null, settlement: settleReported(cost) }];
    default:
      return [];
  }
}
