import { expect, test } from "vitest";
import { withLine } from "./use-choosing";

test("a line is chosen and given up again, and what was chosen before stays as it was", () => {
  const chosen: ReadonlySet<number> = new Set([3]);
  expect([...withLine(chosen, 7, true)]).toEqual([3, 7]);
  expect([...withLine(chosen, 3, false)]).toEqual([]);
  expect([...chosen]).toEqual([3]);
});
