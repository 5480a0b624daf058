import { SettlementState } from "@evenhand/shared/settlement";
import { expect, test } from "vitest";
import { lineState, matterOwed, matterState } from "./index.ts";

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

const due = (entry: number, state: SettlementState, deadline: string | null) => ({ entry, state, deadline });

test("waits for the line that is due first among those it is called after", () => {
  const [sooner, later] = ["2026-12-01T19:00:00.000Z", "2026-12-02T19:00:00.000Z"];
  const releases = [
    due(0, "released", later),
    due(1, "refused", sooner),
    due(2, "released", null),
    due(3, "promised", "2026-11-30T19:00:00.000Z"),
  ];
  expect(matterOwed([0, 1, 2, 3], releases)).toEqual({ of: "dealer", state: "refused", until: sooner });
  expect(matterOwed([2], releases)).toEqual({ of: "dealer", state: "released", until: null });
  expect(matterOwed([3], releases)).toMatchObject({ of: "dealer", state: "promised" });
});

test("waits for nobody where nothing was laid, or all of it has ended", () => {
  expect(matterOwed([7], [due(0, "released", null)])).toBeNull();
  expect(matterOwed([0, 1], [due(0, "accepted", null), due(1, "left-open", null)])).toBeNull();
});
