import { expect, test } from "vitest";
import { walkTable } from "../../testing/walk.ts";
import { decideMove } from "../state-table/index.ts";
import { DECISION_STATES, decisionStateOf } from "./index.ts";

walkTable(DECISION_STATES, [
  ["undecided", "approve", "buyer", "approved"],
  ["undecided", "decline", "buyer", "declined"],
  ["undecided", "counter", "buyer", "countered"],
  ["countered", "accept", "dealer", "counter-accepted"],
  ["countered", "refuse", "dealer", "counter-refused"],
]);

test.each(["approve", "decline", "counter"] as const)(
  "%s leads to where what is stored of it stands",
  (move) => {
    const decision = decideMove(DECISION_STATES, decisionStateOf(null), move, "buyer");
    expect(decision).toMatchObject({ to: decisionStateOf({ decision: move, answer: null }) });
  },
);

test.each(["accept", "refuse"] as const)("a counter-offer answered by %s stands there", (answer) => {
  const decision = decideMove(DECISION_STATES, "countered", answer, "dealer");
  expect(decision).toMatchObject({ to: decisionStateOf({ decision: "counter", answer }) });
});
