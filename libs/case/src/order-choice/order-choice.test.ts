import { expect, test } from "vitest";
import { OrderState } from "@evenhand/shared/http/orders";
import { endsWithVisit, isIndependent, orderOfVisit, orderRefusal } from "./index.ts";
import type { OrderableCar } from "./index.ts";

const car = (more: Partial<OrderableCar> = {}): OrderableCar => ({
  listed: true,
  newestStatement: "s2",
  liveOrder: null,
  ...more,
});

test.each([
  ["the newest statement of a listed car", {}, "s2", null],
  ["a withdrawn car", { listed: false }, "s2", { because: "not-listed" }],
  ["a withdrawn car before all else", { listed: false, liveOrder: "o" }, "s1", { because: "not-listed" }],
  ["an older statement", {}, "s1", { because: "statement-superseded", newest: "s2" }],
  ["a car without one", { newestStatement: null }, "s1", { because: "statement-superseded", newest: null }],
  ["one ordered before", { liveOrder: "o" }, "s2", { because: "ordered-already", order: "o" }],
  ["one read before the newest", { liveOrder: "o" }, "s1", { because: "statement-superseded", newest: "s2" }],
] as const)("%s", (_, more, statement, refusal) => {
  expect(orderRefusal(car(more), statement)).toEqual(refusal);
});

test.each([
  [{}, { of: "new", statement: "s2" }],
  [{ liveOrder: "o" }, { of: "standing", order: "o" }],
  [
    { liveOrder: "o", listed: false, newestStatement: null },
    { of: "standing", order: "o" },
  ],
  [{ listed: false }, { of: "none", because: "not-listed" }],
  [{ newestStatement: null }, { of: "none", because: "not-listed" }],
] as const)("a visit of %j is made under %j", (more, choice) => {
  expect(orderOfVisit(car(more))).toEqual(choice);
});

const ending = (hasReport: boolean): string[] =>
  OrderState.options.filter((state) => endsWithVisit(state, { hasReport }));

test("an order that stands ends with its visit, unless something was found", () => {
  expect(ending(false)).toEqual(["ordered", "accepted"]);
  expect(ending(true)).toEqual([]);
});

test("one shared member ties a firm to either party", () => {
  const judged = [true, false].flatMap((withDealer) =>
    [true, false].map((withBuyer) => isIndependent({ withDealer, withBuyer })),
  );
  expect(judged).toEqual([false, false, false, true]);
});
