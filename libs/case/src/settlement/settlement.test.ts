import { SettlementActor, SettlementMove, SettlementState } from "@evenhand/shared/settlement";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { owedIn } from "../owed-in/index.ts";
import { decide, endOf, lapseOf, movesOf, needsWords, type Settlement } from "./index.ts";

const said = { words: "As the receipt shows.", evidence: [] };
const open = SettlementState.options.filter((state) => endOf(state) === null);

test("whoever owes a step can make one, has hours for it, and is told what silence comes to", () => {
  for (const state of open) {
    const owes = owedIn(state);
    expect(owes?.hours).toBeGreaterThan(0);
    // What is revised or looked at again is moved on by what is sealed.
    const moves = state === "revising" ? movesOf(state, "seal") : movesOf(state, owes?.of ?? "clock");
    expect([state, moves.length > 0]).toEqual([state, true]);
    expect(endOf(lapseOf(state) ?? state)).not.toBeNull();
  }
});

test("at an end nobody owes anything, and nobody moves it", () => {
  for (const state of SettlementState.options.filter((each) => endOf(each) !== null)) {
    expect([owedIn(state), lapseOf(state)]).toEqual([null, null]);
    for (const actor of SettlementActor.options) expect(movesOf(state, actor)).toEqual([]);
  }
});

describe("a deadline", () => {
  test("leaves the last millisecond before it", () => {
    const line: Settlement = { state: "released", deadline: 100 };
    expect(decide(line, "accept", "dealer", 99, said)).toEqual({
      kind: "moved",
      to: "accepted",
      hours: null,
    });
    expect(decide(line, "accept", "dealer", 100, said)).toEqual({
      kind: "refused",
      refusal: { code: "lapsed", state: "finding-stands" },
    });
  });

  test("is the clock's alone, and not before its time", () => {
    const line: Settlement = { state: "contested", deadline: 100 };
    expect(decide(line, "lapse", "clock", 99, said)).toMatchObject({ refusal: { code: "not-due" } });
    expect(decide(line, "lapse", "clock", 100, said)).toMatchObject({ to: "left-open" });
    expect(decide(line, "lapse", "buyer", 99, said)).toMatchObject({ kind: "refused" });
  });

  test("is counted in the hours of the next one's step", () => {
    expect(decide({ state: "contested", deadline: 100 }, "ask", "buyer", 1, said)).toEqual({
      kind: "moved",
      to: "asked",
      hours: 24,
    });
  });
});

test("what is nothing without words is refused without", () => {
  const line: Settlement = { state: "released", deadline: null };
  for (const move of movesOf("released", "dealer")) {
    const refused = decide(line, move, "dealer", 1, { words: "  ", evidence: [] }).kind === "refused";
    expect([move, refused]).toEqual([move, needsWords(move)]);
  }
});

const anything = fc.record({
  move: fc.constantFrom(...SettlementMove.options),
  actor: fc.constantFrom(...SettlementActor.options),
  after: fc.integer({ min: 0, max: 200 }),
});

test("whatever is tried, silence ends it: no line is open once its deadline was noted", () => {
  fc.assert(
    fc.property(fc.array(anything, { maxLength: 30 }), (tries) => {
      let line: Settlement = { state: "released", deadline: 100 };
      let now = 0;
      for (const { move, actor, after } of tries) {
        now += after;
        const decision = decide(line, move, actor, now, said);
        if (decision.kind === "moved")
          line = { state: decision.to, deadline: decision.hours === null ? null : now + decision.hours };
      }
      if (endOf(line.state) !== null) return;
      const last = decide(line, "lapse", "clock", (line.deadline ?? now) + 1, said);
      expect(last.kind === "moved" && endOf(last.to)).toBeTruthy();
    }),
    { numRuns: 1_000 },
  );
});

test("of two moves on one state only the first counts where the second is not open after it", () => {
  fc.assert(
    fc.property(fc.constantFrom(...open), anything, anything, (state, one, other) => {
      const line: Settlement = { state, deadline: 1_000 };
      const first = decide(line, one.move, one.actor, 1, said);
      if (first.kind === "refused") return;
      const after: Settlement = { state: first.to, deadline: first.hours === null ? null : 1_000 };
      const second = decide(after, other.move, other.actor, 1, said);
      expect(second.kind).toBe(
        movesOf(first.to, other.actor).includes(other.move) && other.actor !== "clock" ? "moved" : "refused",
      );
    }),
    { numRuns: 1_000 },
  );
});
