import { describe, expect, it } from "vitest";
import {
  AppointmentActor,
  AppointmentMove,
  AppointmentState,
  CancellationCause,
} from "@evenhand/shared/booking";
import { COST, GOOD, held, inState, move, NEW_SLOT, NOW, SLOT, START } from "../../testing/appointments.ts";
import { DAY, HOUR, MINUTE } from "../../testing/builders.ts";
import {
  CAUSES,
  type Consequence,
  decide,
  isLive,
  LIVE_STATES,
  type MoveDecision,
  type MoveFacts,
  TRANSITIONS,
} from "./index.ts";

/** Every move there is, written down apart from the table under test: state, move, who, to. */
const MOVES: [AppointmentState, AppointmentMove, AppointmentActor[], AppointmentState][] = [
  ["held", "request", ["buyer"], "requested"],
  ["held", "cancel", ["buyer", "operator"], "cancelled"],
  ["held", "expire", ["clock"], "expired"],
  ["requested", "accept", ["inspector"], "accepted"],
  ["requested", "decline", ["inspector"], "declined"],
  ["requested", "reschedule", ["buyer"], "requested"],
  ["requested", "cancel", ["buyer", "operator"], "cancelled"],
  ["requested", "expire", ["clock"], "expired"],
  ["accepted", "confirm", ["dealer"], "confirmed"],
  ["accepted", "decline", ["dealer"], "declined"],
  ["accepted", "reschedule", ["buyer"], "requested"],
  ["accepted", "cancel", ["buyer", "inspector", "dealer", "operator"], "cancelled"],
  ["accepted", "expire", ["clock"], "expired"],
  ["confirmed", "start", ["inspector"], "under-way"],
  ["confirmed", "reschedule", ["buyer"], "requested"],
  ["confirmed", "cancel", ["buyer", "inspector", "dealer", "operator"], "cancelled"],
  ["confirmed", "miss", ["buyer", "dealer", "operator", "clock"], "missed"],
  ["under-way", "take-to-road", ["inspector"], "under-way"],
  ["under-way", "report", ["inspector"], "reported"],
  ["under-way", "cancel", ["inspector", "operator"], "cancelled"],
];
const expected = new Map(
  MOVES.flatMap(([state, name, actors, to]) => actors.map((actor) => [`${state} ${name} ${actor}`, to])),
);

/** A time at which the move's own hour has come. */
const timeFor = (state: AppointmentState, name: AppointmentMove): number => {
  if (name === "expire") return START;
  if (name === "miss") return START + HOUR;
  return state === "under-way" || name === "start" ? START + MINUTE : NOW + 9 * MINUTE;
};
const causeFor = (state: AppointmentState, actor: AppointmentActor): CancellationCause | undefined =>
  CAUSES.find((rule) => rule.actors.includes(actor) && rule.states.includes(state))?.cause;
const asked = (state: AppointmentState, name: AppointmentMove, actor: AppointmentActor): MoveDecision =>
  decide(inState(state), name, actor, timeFor(state, name), { ...GOOD, cause: causeFor(state, actor) });

const cells = AppointmentState.options.flatMap((state) =>
  AppointmentMove.options.flatMap((name) =>
    AppointmentActor.options.map((actor) => ({ state, name, actor })),
  ),
);

/** The same lists in one order. */
const sorted = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, inner: unknown) =>
      Array.isArray(inner) ? inner.toSorted((a, b) => String(a).localeCompare(String(b))) : inner,
    ),
  );

/** Every state that can come of one. */
function reach(start: AppointmentState): Set<AppointmentState> {
  const reached = new Set([start]);
  for (const state of reached)
    for (const row of TRANSITIONS) if (row.from.includes(state)) reached.add(row.to);
  return reached;
}

describe("every state, move and actor", () => {
  it("are 550", () => expect(cells.length).toBe(10 * 11 * 5));

  it.each(cells.filter(({ state, name, actor }) => expected.has(`${state} ${name} ${actor}`)))(
    "$state: $name by $actor goes on when all is in order",
    ({ state, name, actor }) => {
      const decision = asked(state, name, actor);
      const to = expected.get(`${state} ${name} ${actor}`);
      expect(decision.kind === "moved" && decision.appointment.state).toBe(to);
      const last = decision.kind === "moved" ? decision.appointment.history.at(-1) : undefined;
      expect(last).toMatchObject({ move: name, actor, to, at: timeFor(state, name) });
    },
  );

  it.each(cells.filter(({ state, name, actor }) => !expected.has(`${state} ${name} ${actor}`)))(
    "$state: $name by $actor is refused and told what would work",
    ({ state, name, actor }) => {
      const decision = asked(state, name, actor);
      const here = MOVES.filter(([from]) => from === state);
      const refusal = LIVE_STATES.includes(state)
        ? {
            code: "no-such-move",
            state,
            moves: here.filter(([, , actors]) => actors.includes(actor)).map(([, one]) => one),
            actors: here.filter(([, one]) => one === name).flatMap(([, , actors]) => actors),
            states: MOVES.filter(([, one, actors]) => one === name && actors.includes(actor)).map(
              ([from]) => from,
            ),
          }
        : { code: "ended", state };
      expect(sorted(decision)).toEqual(sorted({ kind: "refused", refusal }));
    },
  );

  it("is in the table at most once", () => {
    const keys = TRANSITIONS.flatMap((row) =>
      row.from.flatMap((from) => row.actors.map((actor) => `${from} ${row.move} ${actor}`)),
    );
    expect(new Set(keys).size).toBe(keys.length);
  });
});

describe("the table", () => {
  it("reaches every state", () =>
    expect([...reach("held")].sort()).toEqual([...AppointmentState.options].sort()));

  it("lets every open state end, and none that has ended go on", () => {
    for (const state of AppointmentState.options) {
      const ends = [...reach(state)].filter((other) => !LIVE_STATES.includes(other));
      expect(ends.length).toBeGreaterThan(0);
      expect(reach(state).size === 1).toBe(!LIVE_STATES.includes(state));
    }
  });

  it("gives whoever may cancel a cause for it in every state, and every cause somebody", () => {
    for (const row of TRANSITIONS.filter(({ conditions }) => conditions.includes("cause"))) {
      for (const state of row.from)
        for (const actor of row.actors) expect(causeFor(state, actor)).toBeDefined();
    }
    expect(CAUSES.map(({ cause }) => cause).sort()).toEqual([...CancellationCause.options].sort());
  });
});

const codesOf = (decision: MoveDecision): string[] =>
  decision.kind === "refused" && decision.refusal.code === "conditions"
    ? decision.refusal.shortfalls.map(({ code }) => code)
    : [];
const shortfallsOf = (decision: MoveDecision): unknown =>
  decision.kind === "refused" && decision.refusal.code === "conditions" ? decision.refusal.shortfalls : [];

describe("a move is refused for each thing wanting, with what would work", () => {
  it("wants everything where nothing is known", () => {
    expect(codesOf(decide(held(), "request", "buyer", NOW, {}))).toEqual([
      "brief-complete",
      "terms-acknowledged",
      "payment-authorized",
      "hour-free",
    ]);
    expect(codesOf(decide(inState("requested"), "accept", "inspector", NOW + MINUTE, {}))).toEqual([
      "declared",
      "independent",
      "hour-free",
    ]);
    expect(codesOf(decide(inState("accepted"), "confirm", "dealer", NOW + 5 * MINUTE, {}))).toEqual([
      "access-agreed",
      "hour-free",
    ]);
    expect(codesOf(decide(inState("confirmed"), "reschedule", "buyer", NOW + DAY, {}))).toEqual([
      "new-hour",
      "hour-free",
    ]);
    expect(codesOf(decide(inState("under-way"), "report", "inspector", START, {}))).toEqual([
      "report-sealed",
    ]);
    expect(codesOf(decide(inState("under-way"), "take-to-road", "inspector", START, {}))).toEqual([
      "road-cleared",
    ]);
  });

  it.each<[string, () => MoveDecision, unknown]>([
    [
      "a hold that has run out",
      () => decide(held(), "request", "buyer", NOW + 10 * MINUTE, GOOD),
      { code: "hold-running", until: NOW + 10 * MINUTE },
    ],
    [
      "a hold still running",
      () => decide(held(), "expire", "clock", NOW + 10 * MINUTE - 1, GOOD),
      { code: "deadline-passed", from: NOW + 10 * MINUTE },
    ],
    [
      "other terms than those shown",
      () => decide(held(), "request", "buyer", NOW, { ...GOOD, termsAcknowledged: "old" }),
      { code: "terms-acknowledged", version: "2026-11" },
    ],
    [
      "an hour that has gone",
      () =>
        decide(held(), "request", "buyer", NOW, { ...GOOD, refusedHour: [{ code: "notice", earliest: 1 }] }),
      { code: "hour-free", reasons: [{ code: "notice", earliest: 1 }] },
    ],
    [
      "an answer too late",
      () => decide(inState("requested"), "accept", "inspector", NOW + MINUTE + DAY, GOOD),
      { code: "answer-in-time", until: NOW + MINUTE + DAY },
    ],
    [
      "a declaration before the request",
      () => decide(inState("requested"), "accept", "inspector", NOW + DAY / 2, { ...GOOD, declaredAt: NOW }),
      { code: "declared" },
    ],
    [
      "a declaration not made yet",
      () => decide(inState("requested"), "accept", "inspector", NOW + 2 * MINUTE, GOOD),
      { code: "declared" },
    ],
    [
      "an interest in the dealer",
      () => {
        const conflicts = [{ code: "interest-in-dealer", kind: "family", holder: "inspector" }] as const;
        return decide(inState("requested"), "accept", "inspector", NOW + DAY / 2, {
          ...GOOD,
          independence: { mayAccept: false, conflicts },
        });
      },
      {
        code: "independent",
        conflicts: [{ code: "interest-in-dealer", kind: "family", holder: "inspector" }],
      },
    ],
    [
      "coming too early",
      () => decide(inState("confirmed"), "start", "inspector", START - 31 * MINUTE, GOOD),
      { code: "near-start", from: START - 30 * MINUTE },
    ],
    [
      "coming when it is over",
      () => decide(inState("confirmed"), "start", "inspector", SLOT.end, GOOD),
      { code: "before-end", until: SLOT.end },
    ],
    [
      "calling it missed too soon",
      () => decide(inState("confirmed"), "miss", "buyer", START + 59 * MINUTE, GOOD),
      { code: "past-grace", from: START + HOUR },
    ],
    [
      "moving it when it has begun",
      () => decide(inState("confirmed"), "reschedule", "buyer", START, GOOD),
      { code: "before-start", until: START },
    ],
    [
      "moving it to where it is",
      () => decide(inState("confirmed"), "reschedule", "buyer", NOW + DAY, { ...GOOD, newHour: SLOT }),
      { code: "new-hour" },
    ],
    [
      "moving it into the past",
      () =>
        decide(inState("confirmed"), "reschedule", "buyer", NOW + DAY, {
          ...GOOD,
          newHour: { start: NOW, end: NOW + HOUR },
        }),
      { code: "new-hour" },
    ],
    [
      "a road without consent",
      () =>
        decide(inState("under-way"), "take-to-road", "inspector", START, {
          ...GOOD,
          road: { ...GOOD.road!, consent: null },
        }),
      { code: "road-cleared", shortfalls: [{ code: "consent-missing" }] },
    ],
    [
      "a cause that is not the dealer's to name",
      () =>
        decide(inState("accepted"), "decline", "dealer", NOW + HOUR, {
          ...GOOD,
          cause: "inspector-unavailable",
        }),
      { code: "cause", allowed: ["dealer-unavailable", "car-sold"] },
    ],
    [
      "a warm engine nobody can have felt yet",
      () => decide(inState("confirmed"), "cancel", "inspector", START - DAY, { ...GOOD, cause: "car-warm" }),
      { code: "cause", allowed: ["inspector-unavailable", "car-sold", "weather"] },
    ],
  ])("%s", (_, decision, shortfall) => expect(shortfallsOf(decision())).toEqual([shortfall]));
});

const consequences = (
  state: AppointmentState,
  name: AppointmentMove,
  actor: AppointmentActor,
  now: number,
  facts: MoveFacts = GOOD,
): readonly Consequence[] => {
  const decision = decide(inState(state), name, actor, now, facts);
  return decision.kind === "moved" ? decision.consequences : [];
};

describe("what follows from a move", () => {
  it("freezes the statement, asks the inspector, hides the answers, asks the dealer", () => {
    expect(consequences("held", "request", "buyer", NOW)).toEqual([
      { code: "freeze-statement" },
      { code: "ask", actor: "inspector", by: NOW + DAY },
    ]);
    const accept = consequences("requested", "accept", "inspector", NOW + HOUR);
    expect(accept).toEqual([
      { code: "hide-statement" },
      { code: "ask", actor: "dealer", by: NOW + HOUR + DAY },
    ]);
  });

  it("takes the money and invites on confirming", () => {
    expect(consequences("accepted", "confirm", "dealer", NOW + HOUR)).toEqual([
      { code: "capture-payment", minor: 44_500, currency: "USD" },
      { code: "invite", method: "REQUEST", sequence: 0, hour: SLOT, tentative: false },
    ]);
  });

  it("never asks for an answer after the start", () => {
    const late = { ...held(), hour: { start: NOW + 5 * HOUR, end: NOW + 6 * HOUR } };
    expect(move(late, "request", "buyer", NOW).deadline).toBe(NOW + 5 * HOUR);
  });

  it("keeps history, raises the sequence and asks anew on moving the hour", () => {
    const moved = move(inState("confirmed"), "reschedule", "buyer", NOW + DAY);
    expect(moved).toMatchObject({
      state: "requested",
      hour: NEW_SLOT,
      sequence: 1,
      paid: true,
      carriedShare: 0,
    });
    expect(moved.history.map((entry) => [entry.move, entry.hour])).toEqual([
      ["hold", SLOT],
      ["request", SLOT],
      ["accept", SLOT],
      ["confirm", SLOT],
      ["reschedule", NEW_SLOT],
    ]);
    expect(consequences("confirmed", "reschedule", "buyer", NOW + DAY)).toEqual([
      { code: "release-hour", hour: SLOT },
      { code: "ask", actor: "inspector", by: NOW + 2 * DAY },
      { code: "invite", method: "REQUEST", sequence: 1, hour: NEW_SLOT, tentative: true },
    ]);
    const again = decide(
      move(moved, "accept", "inspector", NOW + DAY + HOUR, { ...GOOD, declaredAt: NOW + DAY + MINUTE }),
      "confirm",
      "dealer",
      NOW + DAY + 2 * HOUR,
      GOOD,
    );
    expect(again.kind === "moved" && again.consequences).toEqual([
      { code: "invite", method: "REQUEST", sequence: 2, hour: NEW_SLOT, tentative: false },
    ]);
  });

  it("never makes a late withdrawal free by moving the visit first", () => {
    const moved = move(inState("confirmed"), "reschedule", "buyer", START - HOUR, {
      ...GOOD,
      newHour: { start: START + 30 * DAY, end: START + 30 * DAY + HOUR },
    });
    const decision = decide(moved, "cancel", "buyer", START, { ...GOOD, cause: "buyer-withdrew" });
    const settled =
      decision.kind === "moved" ? decision.consequences.find(({ code }) => code === "settle") : undefined;
    expect(settled).toMatchObject({
      cause: "buyer-withdrew",
      settlement: { buyerPays: 43_500, buyerRefunded: 1_000 },
    });
  });

  it("gives the hour back, the money by the terms, and cancels the invitation", () => {
    const facts = {
      ...GOOD,
      cause: "car-absent" as const,
      work: { setOut: true, minutesDone: 0, minutesPlanned: 160 },
    };
    expect(consequences("confirmed", "cancel", "inspector", START, facts)).toEqual([
      { code: "release-hour", hour: SLOT },
      {
        code: "settle",
        cause: "car-absent",
        settlement: {
          currency: "USD",
          buyerPays: 0,
          buyerRefunded: 44_500,
          dealerOwes: 41_000,
          inspectorOwes: 0,
          inspectorGets: 41_000,
          siteGets: 0,
        },
      },
      { code: "invite", method: "CANCEL", sequence: 1, hour: SLOT, tentative: false },
    ]);
  });

  it("releases what was only authorized, and settles what was paid", () => {
    expect(consequences("requested", "decline", "inspector", NOW + HOUR)).toEqual([
      { code: "release-hour", hour: SLOT },
      { code: "release-payment" },
    ]);
    expect(consequences("held", "expire", "clock", NOW + DAY)).toEqual([
      { code: "release-hour", hour: SLOT },
    ]);
    const missed = consequences("confirmed", "miss", "clock", START + HOUR).map(({ code }) => code);
    expect(missed).toEqual(["release-hour", "settle"]);
  });

  it("pays in full for a report, whatever was found", () => {
    expect(consequences("under-way", "report", "inspector", START + HOUR)).toEqual([
      {
        code: "settle",
        cause: null,
        settlement: {
          currency: "USD",
          buyerPays: COST.total,
          buyerRefunded: 0,
          dealerOwes: 0,
          inspectorOwes: 0,
          inspectorGets: 41_000,
          siteGets: 3_500,
        },
      },
    ]);
  });

  it("notes until when the car is held from sale", () => {
    const until = START + 3 * DAY;
    expect(
      move(inState("accepted"), "confirm", "dealer", NOW + HOUR, { ...GOOD, heldFromSaleUntil: until })
        .heldFromSaleUntil,
    ).toBe(until);
    expect(inState("confirmed").heldFromSaleUntil).toBeNull();
  });
});

describe("a live appointment", () => {
  it("takes time until it ends, a hold only while it runs", () => {
    for (const state of AppointmentState.options)
      expect(isLive(inState(state), NOW)).toBe(LIVE_STATES.includes(state));
    expect(isLive(held(), NOW + 10 * MINUTE - 1)).toBe(true);
    expect(isLive(held(), NOW + 10 * MINUTE)).toBe(false);
    expect(isLive(inState("requested"), NOW + 9 * DAY)).toBe(true);
  });
});
