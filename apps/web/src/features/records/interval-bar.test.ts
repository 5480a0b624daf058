import { expect, test } from "vitest";
import { intervalBar, topOf } from "./interval-bar";

test("an interval lies where it is on a bar of 0 to 100 %", () => {
  expect(intervalBar({ estimate: 0.56, low: 0.4, high: 0.71 }, 1)).toEqual({
    from: "40%",
    width: "31%",
    at: "56%",
  });
});

test("on a shorter bar it lies farther along, and stays on it", () => {
  expect(intervalBar({ estimate: 0.02, low: 0.01, high: 0.04 }, 0.05)).toEqual({
    from: "20%",
    width: "60%",
    at: "40%",
  });
  expect(intervalBar({ estimate: 1, low: 0.9123, high: 1.0000001 }, 1)).toEqual({
    from: "91.2%",
    width: "8.8%",
    at: "100%",
  });
});

test("bars end where all of them fit", () => {
  expect(topOf([0.01, 0.049])).toBe(0.05);
  expect(topOf([0.01, 0.051])).toBe(0.1);
  expect(topOf([0.6])).toBe(1);
  expect(topOf([])).toBe(0.05);
});
