import { expect, test } from "vitest";
import type { Grid } from "../grid/index.ts";
import { legendOf, marksOf, scaleInHeading, scaleOfHeadings } from "./index.ts";

const gridOf = (text: string): Grid => ({ name: "", rows: [{ number: 1, cells: [{ text }] }] });
const worstFirst = (text: string) => legendOf([gridOf(text)])?.grades.map(({ id }) => id);

test.each([
  ["A = as new  B = good  C = worn  D = needs work  F = finished", ["f", "d", "c", "b", "a"]],
  ["1 = poor, 5 = like new", ["1", "2", "3", "4", "5"]],
  ["Marks: 1 very good, 2 good, 3 usable, 4 poor, 5 scrap", ["5", "4", "3", "2", "1"]],
  ["nothing of the kind", undefined],
])("the legend “%s” goes, worst first, %j", (text, grades) => {
  expect(worstFirst(text)).toEqual(grades);
});

test("grades that head columns go from worst to best, whichever way they stand", () => {
  expect(scaleOfHeadings(["Excellent", "Good", "Fair", "Poor"])?.grades.map(({ id }) => id)).toEqual([
    "poor",
    "fair",
    "good",
    "excellent",
  ]);
  expect(scaleInHeading("Finish (1-5)")?.grades).toHaveLength(5);
});

test("letters that stand for good and bad are marks, and those of grades are none", () => {
  expect([...marksOf([gridOf("Key: G = good, A = attention soon, R = repair now")])]).toEqual([
    ["g", { says: "good" }],
    ["a", { says: "bad" }],
    ["r", { says: "bad" }],
  ]);
  expect(marksOf([gridOf("A = as new  B = good  C = worn  D = needs work")]).size).toBe(0);
});
