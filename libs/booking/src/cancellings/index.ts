import type { AppointmentActor, CancellationCause } from "@evenhand/shared/booking";
import { type Appointment, CAUSES, decide } from "../appointment/index.ts";
import { NO_WORK, type Settlement } from "../cancellation-terms/index.ts";

/** Nobody keeps or owes anything: what was set aside goes back. */
const nothingKept = ({ cost: { currency, total } }: Appointment): Settlement => ({
  currency,
  buyerPays: 0,
  buyerRefunded: total,
  dealerOwes: 0,
  inspectorOwes: 0,
  inspectorGets: 0,
  siteGets: 0,
});

/**
 * Every cause this actor may name now for cancelling, with what it would settle if no work was done. Minor units.
 *
 * @example cancellings(confirmed, "buyer", now).map(({ cause }) => cause) // ["buyer-withdrew"]
 */
export function cancellings(
  appointment: Appointment,
  actor: AppointmentActor,
  now: number,
): { cause: CancellationCause; settlement: Settlement }[] {
  const causes = new Set(CAUSES.map(({ cause }) => cause));
  return [...causes].flatMap((cause) => {
    const decision = decide(appointment, "cancel", actor, now, { cause, work: NO_WORK });
    if (decision.kind === "refused") return [];
    const settled = decision.consequences.find((each) => each.code === "settle");
    return [{ cause, settlement: settled === undefined ? nothingKept(appointment) : settled.settlement }];
  });
}
