import { expect, test } from "vitest";
import { readRight, sameFinding } from "./right-rows.ts";
import { scoredSheet, sheetNames, THIRDS } from "./index.ts";

test("every sheet of the corpus has an answer for every row that holds something", () => {
  for (const third of THIRDS) {
    const names = sheetNames(third);
    expect(names.length).toBeGreaterThanOrEqual(4);
    for (const name of names)
      expect(scoredSheet(third, name).filter(({ read }) => read.length === 0)).toEqual([]);
  }
});

test("a row of an answer may stand over several lines, and worksheets have their own rows", () => {
  expect(readRight("1-2 note\n[Body]\n2 a = 1 mm\n2 b = yes\n")).toEqual([
    { grid: "", row: 1, says: ["note"] },
    { grid: "", row: 2, says: ["note"] },
    { grid: "Body", row: 2, says: ["a = 1 mm", "b = yes"] },
  ]);
});

test("readings are the same in whatever unit, and nothing else is", () => {
  expect(sameFinding("a@b = 7 1/32in", "a@b = 0.21875 in")).toBe(true);
  expect(sameFinding("a@b = 7 1/32in", "a@b = 0.22 in")).toBe(false);
  expect(sameFinding("a@b = 7 1/32in", "a@c = 7 1/32in")).toBe(false);
  expect(sameFinding("a = yes", "a = no")).toBe(false);
});
