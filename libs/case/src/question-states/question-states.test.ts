import { expect, test } from "vitest";
import { walkTable } from "../../testing/walk.ts";
import { decideMove } from "../state-table/index.ts";
import { movesOfChange, OPEN_QUESTIONS, QUESTION_STATES } from "./index.ts";

walkTable(QUESTION_STATES, [
  ["drafted", "rewrite", "buyer", "drafted"],
  ["drafted", "leave", "buyer", "drafted"],
  ["asked", "leave", "buyer", "asked"],
  ["drafted", "send", "buyer", "asked"],
  ["drafted", "withdraw", "buyer", "withdrawn"],
  ["asked", "withdraw", "buyer", "withdrawn"],
  ["asked", "answer", "dealer", "answered"],
  ["answered", "publish", "dealer", "published"],
]);

test("a question that was asked is taken back as it was asked, not in other words", () => {
  const moves = movesOfChange({ text: "Is it another question now?", move: "withdraw" });
  expect(moves).toEqual(["rewrite", "withdraw"]);
  expect(moves.map((move) => decideMove(QUESTION_STATES, "asked", move, "buyer").kind)).toEqual([
    "refused",
    "moved",
  ]);
});

test("what still waits is what can be withdrawn", () => {
  const withdrawn = QUESTION_STATES.rows.filter(({ move }) => move === "withdraw");
  expect(withdrawn.flatMap(({ from }) => from)).toEqual(OPEN_QUESTIONS);
});
