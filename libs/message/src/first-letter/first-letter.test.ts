import { expect, test } from "vitest";
import { capital, lowered } from "./index.ts";

test("only the first letter changes, and words of none stay so", () => {
  expect(["both say yes", "VIN", "4 mm", ""].map(capital)).toEqual(["Both say yes", "VIN", "4 mm", ""]);
  expect(["Both say Yes", "both", "4 mm", ""].map(lowered)).toEqual(["both say Yes", "both", "4 mm", ""]);
});
