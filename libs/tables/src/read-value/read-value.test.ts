import { expect, test } from "vitest";
import { readValue } from "./index.ts";

const point = { comma: false };

test.each([
  ['7/32"', [0.21875], "in"],
  ["14 3/8 in", [14.375], "in"],
  ['14-3/8"', [14.375], "in"],
  ["2½ in", [2.5], "in"],
  ["5,5 mm", [5.5], "mm"],
  ["2,438 mm", [2438], "mm"],
  ["54 310 km", [54_310], "km"],
  ["71.203 miles", [71_203], "mi"],
  ["6 6 5 mm", [6, 6, 5], "mm"],
  ["110-130 µm", [110, 130], "um"],
  ["-34 F", [-34], "degF"],
  ["3.91:1", [3.91], "1"],
  ["75 ft-lb", [75], "lbf.ft"],
  ["45%", [45], "%"],
  ["12.4V", [12.4], "V"],
  ['.003"', [0.003], "in"],
  ["An inch of play", [1], "in"],
  ["half an inch", [0.5], "in"],
])("%s is read as %j %s", (text, values, unit) => {
  expect(readValue(text, point).numbers).toMatchObject({ values, unit });
});

test("where decimals have commas, a point parts thousands", () => {
  expect(readValue("98.412", { comma: true }).numbers?.values).toEqual([98_412]);
  expect(readValue("1.234,5", { comma: true }).numbers?.values).toEqual([1234.5]);
});

test("a remark in brackets stands apart", () => {
  expect(readValue("5/32 (inner edge worn)", point)).toMatchObject({
    text: "5/32",
    remark: "inner edge worn",
  });
});

test.each([
  ["✓", "good"],
  ["N/A", "not-applicable"],
  ["not ok", "bad"],
  ["Yes", "yes"],
])("%s says %s", (text, says) => {
  expect(readValue(text, point).outcome).toMatchObject({ says });
});
