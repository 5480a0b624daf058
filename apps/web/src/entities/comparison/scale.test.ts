import { expect, test } from "vitest";
import { axisMarks, digitsFor } from "./scale.ts";

test("marks of an axis are round, inside it, and no more than asked for", () => {
  expect(axisMarks(1.3, 8.7, 5)).toEqual([2, 4, 6, 8]);
  expect(axisMarks(-0.21, 0.21, 5)).toEqual([-0.2, -0.1, 0, 0.1, 0.2]);
  expect(axisMarks(118, 162, 4)).toEqual([120, 140, 160]);
});

test("an axis without length has one mark", () => {
  expect(axisMarks(5, 5, 4)).toEqual([5]);
});

test("an uncertainty shows two figures, and its value matches", () => {
  expect([0.0312, 0.98, 1.1, 31, 4200].map(digitsFor)).toEqual([3, 2, 1, 0, 0]);
  expect(digitsFor(0)).toBe(2);
});
