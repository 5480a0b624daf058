import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AppointmentMove, AppointmentState } from "@evenhand/shared/booking";
import { COST, GOOD, held, NOW, START } from "../../testing/appointments.ts";
import { DAY, HOUR, MINUTE } from "../../testing/builders.ts";
import {
  type Appointment,
  CAUSES,
  type Consequence,
  decide,
  LIVE_STATES,
  type MoveDecision,
  TRANSITIONS,
} from "./index.ts";

/** A try at one of the moves of the state it meets, some time after the last one. */
const step = fc.record({
  /** Or few runs would come to a confirmed hour. */
  onward: fc.constantFrom(true, true, true, false),
  row: fc.nat(1_000),
  actor: fc.nat(1_000),
  cause: fc.nat(1_000),
  later: fc.constantFrom(0, MINUTE, MINUTE, MINUTE, MINUTE, 5 * MINUTE, HOUR, 20 * HOUR, 9 * DAY),
  newStart: fc.integer({ min: START - DAY, max: START + 400 * HOUR }),
  minutesDone: fc.integer({ min: 0, max: 160 }),
  setOut: fc.boolean(),
  free: fc.constantFrom(true, true, true, false),
});
type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

const ONWARD: Partial<Record<AppointmentState, AppointmentMove>> = {
  held: "request",
  requested: "accept",
  accepted: "confirm",
  confirmed: "start",
  "under-way": "report",
};

const pickFrom = <T>(list: readonly T[], pick: number): T | undefined =>
  list[pick % Math.max(1, list.length)];

function take(appointment: Appointment, one: Step, now: number): MoveDecision {
  const { state } = appointment;
  const here = TRANSITIONS.filter(({ from }) => from.includes(state));
  const onward = one.onward ? here.find(({ move }) => move === ONWARD[state]) : undefined;
  const row = onward ?? pickFrom(here, one.row) ?? TRANSITIONS[0]!;
  const actor = pickFrom(row.actors, one.actor)!;
  const causes = CAUSES.filter((rule) => rule.actors.includes(actor) && rule.states.includes(state));
  return decide(appointment, row.move, actor, now, {
    ...GOOD,
    cause: pickFrom(causes, one.cause)?.cause,
    declaredAt: now,
    newHour: { start: one.newStart, end: one.newStart + 3 * HOUR },
    refusedHour: one.free ? [] : [{ code: "notice", earliest: 0 }],
    work: { setOut: one.setOut, minutesDone: one.minutesDone, minutesPlanned: 160 },
  });
}

type Run = { readonly states: Appointment[]; readonly consequences: Consequence[] };

function run(steps: readonly Step[]): Run {
  const states = [held()];
  const consequences: Consequence[] = [];
  let now = NOW;
  for (const one of steps) {
    // What happens to a confirmed visit happens about its hour.
    const { state, hour } = states.at(-1)!;
    if (state === "confirmed") now = Math.max(now, hour.start - (one.onward ? 0 : 2 * HOUR));
    now += one.later;
    const decision = take(states.at(-1)!, one, now);
    if (decision.kind === "refused") continue;
    states.push(decision.appointment);
    consequences.push(...decision.consequences);
  }
  return { states, consequences };
}

const runs = { numRuns: 3_000 };
const steps = fc.array(step, { maxLength: 30, size: "max" });

describe("any run of moves", () => {
  it("gets far often enough for what follows to mean something", () => {
    const ends = fc.sample(steps, { numRuns: 3_000, seed: 11 }).map((one) => run(one).states.at(-1)!);
    for (const state of ["reported", "cancelled", "missed", "declined", "expired"]) {
      expect(ends.filter((end) => end.state === state).length).toBeGreaterThan(5);
    }
    expect(ends.filter(({ paid }) => paid).length).toBeGreaterThan(100);
    expect(ends.filter(({ carriedShare }) => carriedShare > 0).length).toBeGreaterThan(5);
  });

  it("keeps its history, its price and its terms, and never wakes what has ended", () => {
    fc.assert(
      fc.property(steps, (some) => {
        const { states } = run(some);
        states.slice(1).forEach((next, i) => {
          const before = states[i]!;
          expect(LIVE_STATES).toContain(before.state);
          expect(next.history.slice(0, -1)).toEqual(before.history);
          expect(next.history.at(-1)).toMatchObject({ to: next.state, hour: next.hour });
          expect(next.carriedShare).toBeGreaterThanOrEqual(before.carriedShare);
          expect(next.cost).toBe(before.cost);
          expect(next.terms).toBe(before.terms);
        });
      }),
      runs,
    );
  });

  it("raises the sequence with every message, and cancels what it invited unless it took place or was missed", () => {
    fc.assert(
      fc.property(steps, (some) => {
        const { states, consequences } = run(some);
        const invites = consequences.filter((one) => one.code === "invite");
        expect(invites.map(({ sequence }) => sequence)).toEqual(invites.map((_, i) => i));
        const { state, sequence } = states.at(-1)!;
        expect(sequence).toBe(invites.length === 0 ? null : invites.length - 1);
        const over = ["cancelled", "declined", "expired"].includes(state) && invites.length > 0;
        expect(invites.filter(({ method }) => method === "CANCEL").length).toBe(over ? 1 : 0);
        expect(invites.length === 0 || (invites.at(-1)!.method === "CANCEL") === over).toBe(true);
      }),
      runs,
    );
  });

  it("takes the money at most once and shares all of it out once, when it ends", () => {
    fc.assert(
      fc.property(steps, (some) => {
        const { states, consequences } = run(some);
        const { state, paid } = states.at(-1)!;
        const settled = consequences.filter((one) => one.code === "settle");
        expect(consequences.filter(({ code }) => code === "capture-payment").length).toBe(paid ? 1 : 0);
        expect(settled.length).toBe(paid && !LIVE_STATES.includes(state) ? 1 : 0);
        for (const { settlement } of settled)
          expect(settlement.buyerPays + settlement.buyerRefunded).toBe(COST.total);
        const released = consequences.filter(({ code }) => code === "release-payment").length;
        const authorized = states.some((one) => one.state === "requested");
        expect(released).toBe(authorized && !paid && !LIVE_STATES.includes(state) ? 1 : 0);
      }),
      runs,
    );
  });

  it("gives back every hour it took but the one it used", () => {
    fc.assert(
      fc.property(steps, (some) => {
        const { states, consequences } = run(some);
        const taken = states
          .filter((one, i) => i === 0 || one.history.at(-1)!.move === "reschedule")
          .map(({ hour }) => hour);
        const given = consequences.filter((one) => one.code === "release-hour").map(({ hour }) => hour);
        const { state } = states.at(-1)!;
        const keeps = LIVE_STATES.includes(state) || state === "reported";
        expect(given).toEqual(keeps ? taken.slice(0, -1) : taken);
      }),
      runs,
    );
  });
});
