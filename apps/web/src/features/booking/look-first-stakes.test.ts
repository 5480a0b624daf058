import { expect, test } from "vitest";
import { stakesOf } from "./look-first-stakes";

const look = {
  item: "a.b",
  minutes: 1,
  severity: "worth",
  known: "claimed",
  again: false,
  byWorth: false,
} as const;

test("every item proposed is counted in one of the four", () => {
  expect(
    stakesOf([
      { ...look, severity: "halt", known: "silent" },
      { ...look, severity: "danger", known: "silent", again: true },
      { ...look, byWorth: true },
      look,
    ]),
  ).toEqual({ halt: 1, danger: 1, worth: 1, rest: 1, silent: 1, again: 1 });
});
