import { SettlementState } from "@evenhand/shared/settlement";
import { expect, test } from "vitest";
import { lineState, matterState } from "./index.ts";

const laid = (...states: SettlementState[]) => states.map((state, entry) => ({ entry, state }));

test.each([
  ["open", []],
  ["laid", laid("released")],
  ["accepted", laid("accepted", "accepted")],
  ["laid", laid("accepted", "released")],
  ["contested", laid("accepted", "released", "contested")],
  ["laid", laid("accepted", "refused")],
  ["with-inspector", laid("accepted", "revising")],
  ["left-open", laid("left-open", "finding-stands", "settled")],
  ["accepted", laid("accepted", "statement-stands")],
] as const)("is %s for %j", (state, releases) => {
  expect(matterState([0, 1, 2], releases)).toBe(state);
});

test("is none of its business where the lines are another matter's", () => {
  expect(matterState([7], laid("contested"))).toBe("open");
});

test("every state of a line is one of a matter, in a place of its own or shared", () => {
  for (const state of SettlementState.options) expect(matterState([0], laid(state))).toBe(lineState(state));
});
