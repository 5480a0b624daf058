import type { AppointmentActor, AppointmentMove } from "@evenhand/shared/booking";
import { type Appointment, type AppointmentRules, DEFAULT_APPOINTMENT_RULES } from "./appointment.ts";
import { CONDITIONS } from "./conditions.ts";
import { type ConditionCode, TRANSITIONS, type Transition } from "./table.ts";

const MINUTE_MS = 60_000;

/** Conditions that the hour alone decides. The others only the move itself can find out. */
const OF_TIME: ReadonlySet<ConditionCode> = new Set<ConditionCode>([
  "hold-running",
  "deadline-passed",
  "answer-in-time",
  "before-start",
  "near-start",
  "before-end",
  "past-grace",
]);

function isTimely(
  appointment: Appointment,
  { conditions }: Transition,
  actor: AppointmentActor,
  now: number,
  rules: AppointmentRules,
): boolean {
  const asked = { appointment, actor, now, facts: {}, rules };
  return conditions.every((code) => !OF_TIME.has(code) || CONDITIONS[code](asked) === null);
}

/**
 * Moves that this actor has now by the table and the hour. What only the move itself can find out (is the hour still free, are the
 * papers there) is left open.
 *
 * @param now epoch milliseconds
 * @example openMoves(requested, "inspector", requested.hour.start) // []: too late to accept or to decline
 */
export const openMoves = (
  appointment: Appointment,
  actor: AppointmentActor,
  now: number,
  rules: AppointmentRules = DEFAULT_APPOINTMENT_RULES,
): AppointmentMove[] =>
  TRANSITIONS.filter(
    (row) =>
      row.from.includes(appointment.state) &&
      row.actors.includes(actor) &&
      isTimely(appointment, row, actor, now, rules),
  ).map(({ move }) => move);

/**
 * What the clock has to end: what was not answered in time is over, and a visit to which nobody came is missed.
 *
 * @param now epoch milliseconds
 * @returns `null` where nothing is due
 * @example dueMove(held, held.deadline) // "expire"
 */
export const dueMove = (
  appointment: Appointment,
  now: number,
  rules: AppointmentRules = DEFAULT_APPOINTMENT_RULES,
): AppointmentMove | null => openMoves(appointment, "clock", now, rules)[0] ?? null;

/**
 * When the clock has to look again: when the next answer is due, or a minute after a confirmed visit is past its grace.
 *
 * @returns epoch milliseconds; `null` where nothing is awaited
 * @example nextLook({ state: "reported", deadline: null, hour }) // null
 */
export const nextLook = (
  { state, deadline, hour }: Pick<Appointment, "state" | "deadline" | "hour">,
  rules: AppointmentRules = DEFAULT_APPOINTMENT_RULES,
): number | null => (state === "confirmed" ? hour.start + rules.grace + MINUTE_MS : deadline);
