import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AppointmentActor, AppointmentMove, AppointmentState } from "@evenhand/shared/booking";
import { GOOD, held, inState, NOW, ROAD, START } from "../../testing/appointments.ts";
import { DAY, HOUR, MINUTE } from "../../testing/builders.ts";
import { CAUSES, decide, dueMove, nextLook, openMoves } from "./index.ts";

const instants = fc.oneof(
  fc.integer({ min: NOW, max: START + 2 * DAY }),
  fc.constantFrom(
    ...[START - 30 * MINUTE, START, START + HOUR, START + 3 * HOUR, NOW + 10 * MINUTE].flatMap((at) => [
      at - 1,
      at,
      at + 1,
    ]),
  ),
);

describe("the moves somebody has now", () => {
  it("are exactly those that `decide` allows when all else is in order", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...AppointmentState.options),
        fc.constantFrom(...AppointmentActor.options),
        instants,
        (state, actor, now) => {
          const appointment = inState(state);
          fc.pre(now >= (appointment.requestedAt ?? NOW));
          const newHour = { start: START + 9 * DAY, end: START + 9 * DAY + HOUR };
          const road = { ...ROAD, plates: ROAD.insurance };
          const facts = { ...GOOD, declaredAt: now, newHour, road };
          const allowed = AppointmentMove.options.filter((move) =>
            CAUSES.some(({ cause }) => {
              const decision = decide(appointment, move, actor, now, { ...facts, cause });
              return decision.kind === "moved";
            }),
          );
          expect(openMoves(appointment, actor, now).toSorted()).toEqual(allowed.toSorted());
        },
      ),
      { numRuns: 2_000 },
    );
  });

  it("let an inspector begin from half an hour before the hour until its end", () => {
    const confirmed = inState("confirmed");
    const canStart = (now: number) => openMoves(confirmed, "inspector", now).includes("start");
    const { start, end } = confirmed.hour;
    expect([start - 30 * MINUTE - 1, start - 30 * MINUTE, end - 1, end].map(canStart)).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
});

describe("what the clock ends", () => {
  it("is what was not answered in time, and a visit nobody came to an hour after its start", () => {
    const { deadline } = held();
    if (deadline === null) throw new Error("a hold ends");
    expect([dueMove(held(), deadline - 1), dueMove(held(), deadline)]).toEqual([null, "expire"]);
    expect([
      dueMove(inState("confirmed"), START + HOUR - 1),
      dueMove(inState("confirmed"), START + HOUR),
    ]).toEqual([null, "miss"]);
    for (const state of ["reported", "declined", "cancelled", "missed", "expired", "under-way"] as const)
      expect(dueMove(inState(state), START + 9 * DAY)).toBeNull();
  });

  it("is looked for when it is due: never later than a minute after, never where nothing is awaited", () => {
    const looked = AppointmentState.options.map((state) => [state, nextLook(inState(state))] as const);
    const awaited = looked.flatMap(([state, look]) => (look === null ? [] : [{ state, look }]));
    expect(awaited.map(({ state }) => state)).toEqual(["held", "requested", "accepted", "confirmed"]);
    const dueAt = (early: number) => awaited.map(({ state, look }) => dueMove(inState(state), look - early));
    expect(dueAt(0)).toEqual(["expire", "expire", "expire", "miss"]);
    expect(dueAt(MINUTE + 1)).toEqual([null, null, null, null]);
  });
});
