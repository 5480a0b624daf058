import { expect, test } from "vitest";
import { labelOf } from "./index.ts";

test.each([
  ["N/S/F tyre", ["left", "front"]],
  ["O/S/R", ["right", "rear"]],
  ["LF", ["left", "front"]],
  ["RR tread", ["right", "rear"]],
  ["Rear L", ["rear", "left"]],
  ["LH door", ["left"]],
  ["driver's side", ["driver"]],
])("%s says where: %j", (text, places) => {
  expect([...labelOf(text).places].sort()).toEqual([...places].sort());
});

test.each([
  ["Tread (32nds)", "1/32in"],
  ["Oil pressure, psi", "psi"],
  ["Temp [°F]", "degF"],
  ["A/C", undefined],
])("%s is in %s", (text, unit) => {
  expect(labelOf(text).unit).toBe(unit);
});

test("cylinders are counted, however they are numbered", () => {
  expect(["Cyl 3", "Cylinder #3", "Compression 3", "cyl. no. 3"].map((text) => labelOf(text).number)).toEqual(
    [3, 3, 3, 3],
  );
});
