import { expect, test } from "vitest";
import { stepsOf } from "./project-groups.mjs";

test("what starts no server runs together first, and what mostly waits goes side by side at the end", () => {
  expect(stepsOf(["api", "unit", "hostile", "published", "faults", "demo", "browser"])).toEqual([
    [["unit", "published"]],
    [["api"]],
    [["browser"]],
    [["hostile"], ["faults"], ["demo"]],
  ]);
  expect(stepsOf(["faults"])).toEqual([[["faults"]]]);
  expect(stepsOf([])).toEqual([]);
});
