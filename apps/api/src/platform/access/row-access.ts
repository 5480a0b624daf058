import { blindStates } from "@evenhand/record/blindness";
import { literals } from "../database/literals.ts";

/**
 * Which rows somebody may see, as conditions that become part of every query. `$1` is always `Actor.organizations()`: ids of all
 * organizations the person belongs to.
 */

/** The car is listed, the person's organization has it, ordered work on it, or was asked to work on it and has not said no. */
export const maySeeVehicle = (vehicle: string): string => `(
  ${vehicle}.listed OR ${vehicle}.organization_id = ANY($1::uuid[]) OR EXISTS (
    SELECT 1 FROM inspection_order seen WHERE seen.vehicle_id = ${vehicle}.id AND (
      seen.buyer_id = ANY($1::uuid[])
      OR (seen.inspector_id = ANY($1::uuid[]) AND seen.state NOT IN ('declined', 'cancelled')))))`;

const isBlindState = (order: string): string => `${order}.state IN (${literals(blindStates)})`;

/**
 * The person belongs to an inspection firm that has work on this car and has not sealed its findings: nothing a statement says may
 * reach them, by whatever other membership.
 */
export const mustBeBlind = (vehicleId: string): string => `EXISTS (
  SELECT 1 FROM inspection_order blind WHERE blind.vehicle_id = ${vehicleId}
    AND blind.inspector_id = ANY($1::uuid[]) AND ${isBlindState("blind")})`;

/** Some inspection firm has work on this car that asks for blindness: people unknown to the service may belong to it. */
export const isBeingInspected = (vehicleId: string): string => `EXISTS (
  SELECT 1 FROM inspection_order live WHERE live.vehicle_id = ${vehicleId} AND ${isBlindState("live")})`;

/** The version was frozen by an order of the person's organization, as its buyer, or as the firm that has not said no. */
const hasFrozen = (version: string): string => `EXISTS (
  SELECT 1 FROM inspection_order frozen WHERE frozen.statement_id = ${version}.id AND (
    frozen.buyer_id = ANY($1::uuid[])
    OR (frozen.inspector_id = ANY($1::uuid[]) AND frozen.state NOT IN ('declined', 'cancelled'))))`;

/**
 * A sealed version: statements while the car is listed, and of a withdrawn one only what one's own order froze; inspections by
 * their inspector and the buyer who ordered; the rest by its author.
 */
export const maySeeVersion = (version: string, vehicle: string): string => `(
  ${version}.organization_id = ANY($1::uuid[])
  OR (${version}.kind = 'statement' AND (${vehicle}.listed OR ${hasFrozen(version)}))
  OR (${version}.kind = 'inspection' AND ${version}.buyer_id = ANY($1::uuid[])))`;

/** A comparison shows what both its reports say: to whoever may see both, and to nobody who must be blind. */
export const maySeeComparison = (a: string, b: string, vehicle: string): string => `(
  ${maySeeVersion(a, vehicle)} AND ${maySeeVersion(b, vehicle)} AND NOT ${mustBeBlind(`${vehicle}.id`)})`;
