import { expect, test } from "vitest";
import { intervalBar } from "./interval-bar";

test("an interval lies where it is on a bar of 0 to 100 %", () => {
  expect(intervalBar({ estimate: 0.56, low: 0.4, high: 0.71 })).toEqual({
    from: "40%",
    width: "31%",
    at: "56%",
  });
});

test("a share of everything stays on the bar", () => {
  expect(intervalBar({ estimate: 1, low: 0.9123, high: 1.0000001 })).toEqual({
    from: "91.2%",
    width: "8.8%",
    at: "100%",
  });
});
