import { expect, test } from "vitest";
import { SettledLines } from "@evenhand/shared/http/readings";
import { LINES_AT_ONCE, lineGroups } from "./line-groups";

const numbered = (count: number) => Array.from({ length: count }, (_, at) => at);

test.each([0, 1, LINES_AT_ONCE, LINES_AT_ONCE + 1, 731])("of %s settled lines none is left out", (count) => {
  const groups = lineGroups(numbered(count));
  expect(groups.flat()).toEqual(numbered(count));
  expect(groups.every((group) => group.length > 0 && group.length <= LINES_AT_ONCE)).toBe(true);
});

test("the service takes a whole group", () => {
  const lines = numbered(LINES_AT_ONCE).map((at) => ({ line: `line ${at}`, item: null }));
  expect(SettledLines.safeParse({ lines }).success).toBe(true);
});
