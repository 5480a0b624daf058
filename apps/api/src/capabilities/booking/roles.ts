import type { AppointmentMove } from "@evenhand/shared/booking";
import { type Role, roleFor, rolesIn } from "@evenhand/booking/parties";
import type { Actor } from "../../platform/auth/actor.ts";
import { found } from "../../platform/problems/problem-error.ts";
import type { StoredAppointment } from "./appointment-store.ts";

export const membershipOf = (actor: Actor) => ({
  buyer: actor.organizations("buyer"),
  inspector: actor.organizations("inspector"),
  dealer: actor.organizations("dealer"),
  operator: actor.isOperator,
});

/** As whom somebody has to do with a visit that is held. */
export const rolesOf = (actor: Actor, { visit, ...parties }: StoredAppointment): Role[] =>
  rolesIn(membershipOf(actor), { ...parties, requestedAt: visit.requestedAt });

/** @throws ProblemError `not-found` where it is nothing to them */
export function requireRole(
  actor: Actor,
  stored: StoredAppointment,
  move: AppointmentMove,
  among: readonly Role[],
): Role {
  const roles = rolesOf(actor, stored).filter((role) => among.includes(role));
  return found(roleFor(roles, move, stored.visit.state), "appointment");
}
