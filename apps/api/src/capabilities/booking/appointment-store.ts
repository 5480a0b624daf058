import type { Appointment } from "@evenhand/booking/appointment";
import type { VisitPlan } from "@evenhand/booking/visit-plan";
import {
  type AppointmentActor,
  type AppointmentMove,
  AppointmentState,
  BriefItem,
  type CancellationCause,
} from "@evenhand/shared/booking";
import { z } from "zod";
import type { Transaction } from "../../platform/database/database.ts";
import { Prisma } from "../../platform/database/generated/client.ts";
import { findRow, run, sql } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { Permission, Proposed, StoredCost, StoredPlan, StoredTerms } from "./stored.ts";

const StoredCar = z.object({
  vehicle: z.string(),
  order: z.string().nullable(),
  briefVersion: z.number(),
  brief: z.array(BriefItem),
  proposed: Proposed.nullable(),
});
export type StoredCar = z.infer<typeof StoredCar>;

/** An appointment as it is worked on: what the rules of booking know of it, and whom and what it concerns. */
export type StoredAppointment = {
  readonly id: string;
  readonly revision: number;
  readonly inspector: string;
  readonly firm: string;
  readonly site: string;
  readonly dealer: string;
  readonly buyer: string;
  readonly plan: VisitPlan;
  readonly declaredAt: number | null;
  readonly permissions: Permission[];
  readonly cars: readonly StoredCar[];
  readonly bays: readonly string[];
  readonly visit: Appointment;
};

const Row = z.object({
  id: z.string(),
  revision: z.number(),
  inspector_id: z.string(),
  firm_id: z.string(),
  site_id: z.string(),
  dealer_id: z.string(),
  buyer_id: z.string(),
  state: AppointmentState,
  starts_at: z.date(),
  ends_at: z.date(),
  deadline: z.date().nullable(),
  requested_at: z.date().nullable(),
  cost: StoredCost,
  terms: StoredTerms,
  plan: StoredPlan,
  paid: z.boolean(),
  carried_share: z.number(),
  held_from_sale_until: z.date().nullable(),
  sequence: z.number().nullable(),
  declared_at: z.date().nullable(),
  permissions: z.array(Permission),
  cars: z.array(StoredCar),
  bays: z.array(z.string()),
});
type Row = z.infer<typeof Row>;

const time = (at: Date | null): number | null => at?.getTime() ?? null;
const date = (at: number | null): Date | null => (at === null ? null : new Date(at));

const toStored = (row: Row): StoredAppointment => ({
  id: row.id,
  revision: row.revision,
  inspector: row.inspector_id,
  firm: row.firm_id,
  site: row.site_id,
  dealer: row.dealer_id,
  buyer: row.buyer_id,
  plan: row.plan,
  declaredAt: time(row.declared_at),
  permissions: row.permissions,
  cars: row.cars,
  bays: row.bays,
  visit: {
    state: row.state,
    hour: { start: row.starts_at.getTime(), end: row.ends_at.getTime() },
    deadline: time(row.deadline),
    requestedAt: time(row.requested_at),
    cost: row.cost,
    terms: row.terms,
    paid: row.paid,
    carriedShare: row.carried_share,
    heldFromSaleUntil: time(row.held_from_sale_until),
    sequence: row.sequence,
    // What happened before stands in its own table; the rules only add to it.
    history: [],
  },
});

/**
 * The appointment with its inspector's row, both held until the transaction ends; the inspector's first, as whoever books does.
 * @returns undefined where it is not there
 */
export async function findLocked(tx: Transaction, id: string): Promise<StoredAppointment | undefined> {
  await run(
    tx,
    sql`SELECT c.id FROM inspector_calendar c
    WHERE c.id = (SELECT a.inspector_id FROM appointment a WHERE a.id = ${id}::uuid) FOR UPDATE`,
  );
  await run(tx, sql`SELECT id FROM appointment WHERE id = ${id}::uuid FOR UPDATE`);
  const row = await findRow(
    tx,
    Row,
    sql`
    SELECT a.*, (SELECT json_agg(json_build_object('vehicle', c.vehicle_id, 'order', c.order_id,
        'briefVersion', c.brief_version, 'brief', c.brief, 'proposed', c.proposed) ORDER BY c.place)
        FROM appointment_car c WHERE c.appointment_id = a.id) AS cars,
      ARRAY(SELECT b.bay_id::text FROM appointment_bay b WHERE b.appointment_id = a.id ORDER BY b.spell) AS bays
    FROM appointment a WHERE a.id = ${id}::uuid`,
  );
  return row === null ? undefined : toStored(row);
}

export const getLocked = async (tx: Transaction, id: string): Promise<StoredAppointment> =>
  found(await findLocked(tx, id), "appointment");

/** Further columns a move writes. */
export type MoreColumns = {
  declaredAt?: Date;
  permissions?: Permission[];
  road?: Prisma.InputJsonValue;
  settlement?: Prisma.InputJsonValue;
};

/**
 * Writes what a move made of it, where it is still as it was read.
 * @throws ProblemError `revision-moved` where somebody else was first
 */
export async function writeMove(
  tx: Transaction,
  before: StoredAppointment,
  next: Appointment,
  more: MoreColumns,
): Promise<void> {
  const { count } = await tx.appointment.updateMany({
    where: { id: before.id, state: before.visit.state, revision: before.revision },
    data: {
      state: next.state,
      startsAt: new Date(next.hour.start),
      endsAt: new Date(next.hour.end),
      deadline: date(next.deadline),
      requestedAt: date(next.requestedAt),
      paid: next.paid,
      carriedShare: next.carriedShare,
      heldFromSaleUntil: date(next.heldFromSaleUntil),
      sequence: next.sequence,
      revision: before.revision + 1,
      ...more,
    },
  });
  if (count === 1) return;
  throw new ProblemError("revision-moved", "Somebody changed it meanwhile. Read it again and decide anew.");
}

export type MoveEntry = {
  id: string;
  appointment: string;
  /** The revision it led to. */
  number: number;
  at: number;
  actor: AppointmentActor;
  account: string | null;
  move: AppointmentMove | "hold";
  state: AppointmentState;
  hour: { start: number; end: number };
  cause?: CancellationCause | undefined;
  note?: string | undefined;
};

export async function writeHistory(tx: Transaction, entry: MoveEntry): Promise<void> {
  await tx.appointmentMove.create({
    data: {
      id: entry.id,
      appointmentId: entry.appointment,
      number: entry.number,
      at: new Date(entry.at),
      actor: entry.actor,
      accountId: entry.account,
      move: entry.move,
      state: entry.state,
      startsAt: new Date(entry.hour.start),
      endsAt: new Date(entry.hour.end),
      cause: entry.cause ?? null,
      note: entry.note ?? null,
    },
  });
}

export type Stay = { bay: string; car: string; start: number; end: number };

/** The times of cars and lifts, anew: in one order, so that two who want the same wait for each other and never in a ring. */
export async function writeTimes(
  tx: Transaction,
  appointment: { id: string; state: AppointmentState; plan: VisitPlan },
  start: number,
  stays: readonly Stay[],
): Promise<void> {
  const { id, state, plan } = appointment;
  await tx.appointmentBay.deleteMany({ where: { appointmentId: id } });
  const bays = stays.map((stay, spell) => ({ ...stay, spell })).toSorted((a, b) => (a.bay < b.bay ? -1 : 1));
  for (const { bay, car, spell, ...stay } of bays)
    await tx.appointmentBay.create({
      data: {
        appointmentId: id,
        spell,
        bayId: bay,
        vehicleId: car,
        state,
        startsAt: new Date(stay.start),
        endsAt: new Date(stay.end),
      },
    });
  for (const { car, from, to } of plan.cars.toSorted((a, b) => (a.car < b.car ? -1 : 1)))
    await tx.appointmentCar.updateMany({
      where: { appointmentId: id, vehicleId: car },
      data: { startsAt: new Date(start + from), endsAt: new Date(start + to) },
    });
}

export const noBrief = Prisma.DbNull;
