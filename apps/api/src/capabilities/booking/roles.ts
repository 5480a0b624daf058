import type { AppointmentActor, AppointmentMove } from "@evenhand/shared/booking";
import { TRANSITIONS } from "@evenhand/booking/appointment";
import type { Actor } from "../../platform/auth/actor.ts";
import { notFound } from "../../platform/problems/problem-error.ts";
import type { StoredAppointment } from "./appointment-store.ts";

export type Role = Exclude<AppointmentActor, "clock">;

type Parties = Pick<StoredAppointment, "buyer" | "firm" | "dealer" | "declaredAt"> & {
  readonly visit: Pick<StoredAppointment["visit"], "requestedAt">;
};

/** As whom somebody has to do with an appointment: the inspector once asked, the dealer once the inspector has accepted. */
export function rolesIn(actor: Actor, { buyer, firm, dealer, declaredAt, visit }: Parties): Role[] {
  const roles: Role[] = [];
  if (actor.organizations("buyer").includes(buyer)) roles.push("buyer");
  if (visit.requestedAt !== null && actor.organizations("inspector").includes(firm)) roles.push("inspector");
  if (declaredAt !== null && actor.organizations("dealer").includes(dealer)) roles.push("dealer");
  if (actor.isOperator) roles.push("operator");
  return roles;
}

const canMove = (role: Role, move: AppointmentMove, { visit: { state } }: StoredAppointment): boolean =>
  TRANSITIONS.some((row) => row.move === move && row.actors.includes(role) && row.from.includes(state));

/** @throws ProblemError `not-found` where it is nothing to them */
export function roleFor(
  actor: Actor,
  stored: StoredAppointment,
  move: AppointmentMove,
  among: readonly Role[],
): Role {
  const roles = rolesIn(actor, stored).filter((role) => among.includes(role));
  const role = roles.find((each) => canMove(each, move, stored)) ?? roles[0];
  if (role === undefined) throw notFound("appointment");
  return role;
}
