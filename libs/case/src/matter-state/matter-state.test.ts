import { expect, test } from "vitest";
import { matterState } from "./index.ts";

const laid = (...states: ("released" | "accepted" | "contested")[]) =>
  states.map((state, entry) => ({ entry, state }));

test.each([
  ["open", []],
  ["laid", laid("released")],
  ["accepted", laid("accepted", "accepted")],
  ["laid", laid("accepted", "released")],
  ["contested", laid("accepted", "released", "contested")],
] as const)("is %s for %j", (state, releases) => {
  expect(matterState([0, 1, 2], releases)).toBe(state);
});

test("is none of its business where the lines are another matter's", () => {
  expect(matterState([7], laid("contested"))).toBe("open");
});
