import { expect, test } from "vitest";
import { DecisionKind } from "@evenhand/shared/http/summaries";
import { isEmptyCounter, wrongUntil } from "./index.ts";

const price = { currency: "USD", minor: 1_950_000 } as const;

test("only a counter-offer without a price and without conditions is empty", () => {
  expect(DecisionKind.options.filter((decision) => isEmptyCounter({ decision }))).toEqual(["counter"]);
  expect(isEmptyCounter({ decision: "counter", conditions: "New brake hoses before delivery." })).toBe(false);
  expect(isEmptyCounter({ decision: "counter", price })).toBe(false);
});

test.each([
  ["2027-05-04T00:00:00.001Z", null],
  ["2027-05-04T00:00:00.000Z", "over"],
  ["2027-10-31T00:00:00.000Z", null],
  ["2027-10-31T00:00:00.001Z", "too-far"],
  [undefined, null],
] as const)("an offer until %s, made on May 4: %s", (until, wrong) => {
  expect(wrongUntil({ until }, new Date("2027-05-04T00:00:00Z"))).toBe(wrong);
});
