import { expect, test } from "vitest";
import { replaced, without } from "./rows.ts";

const rows = [
  { key: 1, name: "north lift" },
  { key: 2, name: "south lift" },
  { key: 3, name: "old hoist" },
];

test("a row is replaced at its place and the others stay themselves", () => {
  const next = replaced(rows, { key: 2, name: "two-post lift" });
  expect(next.map(({ name }) => name)).toEqual(["north lift", "two-post lift", "old hoist"]);
  expect(next[0]).toBe(rows[0]);
});

test("a row that is not there replaces nothing", () => {
  expect(replaced(rows, { key: 9, name: "pit" })).toEqual(rows);
});

test("a row is taken out by its key", () => {
  expect(without(rows, 1).map(({ key }) => key)).toEqual([2, 3]);
  expect(without(rows, 9)).toEqual(rows);
});
