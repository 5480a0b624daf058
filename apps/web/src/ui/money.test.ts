import { expect, test } from "vitest";
import { parseMoney } from "./money.ts";

test("an amount as people type it becomes whole minor units", () => {
  const typed = ["54,500", "$54 500.50", "0.07", "1e3", "-5", "", "12.345"];
  expect(typed.map((text) => parseMoney(text, "USD")?.minor ?? null)).toEqual([
    5_450_000,
    5_450_050,
    7,
    null,
    null,
    null,
    null,
  ]);
});

test("a currency without cents has none", () => {
  expect(parseMoney("54,500", "JPY")).toEqual({ minor: 54_500, currency: "JPY" });
});

test("an amount has as many digits as its currency, and one with more is none", () => {
  expect(parseMoney("1.250", "KWD")).toEqual({ minor: 1250, currency: "KWD" });
  expect(parseMoney("12.50", "JPY")).toBeNull();
  expect(parseMoney("12.500", "USD")).toBeNull();
});
