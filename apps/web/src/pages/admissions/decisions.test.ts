import { expect, test } from "vitest";
import { possibleDecisions } from "./decisions";

test("nobody is admitted twice, and only who is admitted is suspended", () => {
  expect(possibleDecisions("applied")).toEqual(["admit", "refuse"]);
  expect(possibleDecisions("admitted")).toEqual(["suspend"]);
  expect(possibleDecisions("refused")).toEqual(["admit"]);
  expect(possibleDecisions("suspended")).toEqual(["admit"]);
});
