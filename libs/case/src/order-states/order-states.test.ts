import { expect, test } from "vitest";
import { walkTable } from "../../testing/walk.ts";
import { LIVE_ORDERS, ORDER_STATES } from "./index.ts";

walkTable(ORDER_STATES, [
  ["ordered", "accept", "inspector", "accepted"],
  ["ordered", "decline", "inspector", "declined"],
  ["accepted", "decline", "inspector", "declined"],
  ["ordered", "cancel", "buyer", "cancelled"],
  ["accepted", "cancel", "buyer", "cancelled"],
  ["accepted", "report", "inspector", "reported"],
  ["reported", "report", "inspector", "reported"],
]);

test("what still stands can still be called off by the buyer, and nothing else can", () => {
  const { rows } = ORDER_STATES;
  expect(rows.filter(({ move }) => move === "cancel").flatMap(({ from }) => from)).toEqual(LIVE_ORDERS);
});
