import { expect, test } from "vitest";
import { walkTable, whoEnds } from "../../testing/walk.ts";
import { decideMove } from "../state-table/index.ts";
import { DECISION_STATES, decisionStateOf, isOver } from "./index.ts";

walkTable(DECISION_STATES, [
  ["undecided", "approve", "buyer", "approved"],
  ["undecided", "decline", "buyer", "declined"],
  ["undecided", "counter", "buyer", "countered"],
  ["countered", "accept", "dealer", "counter-accepted"],
  ["countered", "refuse", "dealer", "counter-refused"],
  ["countered", "counter", "dealer", "countered-back"],
  ["countered", "withdraw", "buyer", "counter-withdrawn"],
  ["countered", "lapse", "clock", "counter-lapsed"],
  ["countered-back", "accept", "buyer", "counter-accepted"],
  ["countered-back", "refuse", "buyer", "counter-refused"],
  ["countered-back", "lapse", "clock", "counter-lapsed"],
]);

test("every open state is ended by somebody alone, an offer by the clock too", () => {
  for (const state of DECISION_STATES.states)
    expect([state, whoEnds(DECISION_STATES, state).length > 0]).toEqual([state, true]);
  expect(whoEnds(DECISION_STATES, "countered")).toEqual(["buyer", "dealer", "clock"]);
  expect(whoEnds(DECISION_STATES, "countered-back")).toEqual(["buyer", "clock"]);
});

test.each(["approve", "decline", "counter"] as const)(
  "%s leads to where what is stored of it stands",
  (move) => {
    const decision = decideMove(DECISION_STATES, decisionStateOf(null), move, "buyer");
    expect(decision).toMatchObject({ to: decisionStateOf({ decision: move, answer: null }) });
  },
);

test.each(["accept", "refuse", "counter"] as const)(
  "a counter-offer answered by %s stands there",
  (answer) => {
    const decision = decideMove(DECISION_STATES, "countered", answer, "dealer");
    expect(decision).toMatchObject({ to: decisionStateOf({ decision: "counter", answer }) });
  },
);

test.each(["accept", "refuse"] as const)("a dealer's counter answered by %s stands there", (reply) => {
  const decision = decideMove(DECISION_STATES, "countered-back", reply, "buyer");
  expect(decision).toMatchObject({ to: decisionStateOf({ decision: "counter", answer: "counter", reply }) });
});

test.each([
  ["withdraw", "buyer", "withdrawn"],
  ["lapse", "clock", "lapsed"],
] as const)("an offer ended by %s stands there", (move, by, ended) => {
  const decision = decideMove(DECISION_STATES, "countered", move, by);
  expect(decision).toMatchObject({ to: decisionStateOf({ decision: "counter", answer: null, ended }) });
});

test("an offer stands until its instant, and one without stands on", () => {
  const at = new Date("2027-05-04T22:00:00.000Z");
  expect(isOver("2027-05-04T22:00:00.001Z", at)).toBe(false);
  expect(isOver("2027-05-04T22:00:00Z", at)).toBe(true);
  expect(isOver(null, at)).toBe(false);
});
