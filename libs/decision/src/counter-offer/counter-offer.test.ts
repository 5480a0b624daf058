import { expect, test } from "vitest";
import { DecisionKind } from "@evenhand/shared/http/summaries";
import { isEmptyCounter } from "./index.ts";

const price = { currency: "USD", minor: 1_950_000 } as const;

test("only a counter-offer without a price and without conditions is empty", () => {
  expect(DecisionKind.options.filter((decision) => isEmptyCounter({ decision }))).toEqual(["counter"]);
  expect(isEmptyCounter({ decision: "counter", conditions: "New brake hoses before delivery." })).toBe(false);
  expect(isEmptyCounter({ decision: "counter", price })).toBe(false);
});
