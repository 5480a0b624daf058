import { expect, test } from "vitest";
import { groupsOf } from "./project-groups.mjs";

test("what starts no server runs together first, everything else alone and in the order of the configuration", () => {
  expect(groupsOf(["api", "unit", "published", "browser"])).toEqual([
    ["unit", "published"],
    ["api"],
    ["browser"],
  ]);
  expect(groupsOf(["browser"])).toEqual([["browser"]]);
  expect(groupsOf([])).toEqual([]);
});
