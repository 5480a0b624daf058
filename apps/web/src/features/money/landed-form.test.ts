import type { LandedCostEntries } from "@evenhand/shared/landed-cost";
import { expect, test } from "vitest";
import { landedEntries, typedLanded, wrongLanded } from "./landed-form.ts";

const stored: LandedCostEntries = {
  lines: {
    price: { amount: { minor: 4_100_050, currency: "USD" }, source: "agreed by telephone" },
    duty: { amount: { minor: 0, currency: "JPY" }, source: "sold inside the country" },
  },
  trip: { distance: 740.5, unit: "km", carrier: "enclosed" },
  currency: "EUR",
  rates: [{ from: "USD", to: "EUR", rate: 0.92, on: "2027-05-03", source: "my bank" }],
  limit: { minor: 5_000_000, currency: "USD" },
};

test("what is stored goes through the fields unchanged, nothing due among it", () => {
  const typed = typedLanded(stored, "USD");
  expect(wrongLanded(typed)).toEqual(new Set());
  expect(landedEntries(typed)).toEqual(stored);
});

test("what cannot be taken is named by its place, and an amount needs its source", () => {
  const typed = typedLanded(stored, "USD");
  const { price, duty, broker } = typed.lines;
  const wrong = wrongLanded({
    ...typed,
    lines: {
      ...typed.lines,
      price: { ...price, amount: "much" },
      duty: { ...duty, currency: "YEN" },
      broker: { ...broker, amount: "900" },
    },
    distance: "far",
    rates: [{ from: "USD", rate: "0", on: "2027-05-03", source: "my bank" }],
  });
  expect([...wrong]).toEqual(["amount-price", "amount-duty", "source-broker", "rate-0", "distance"]);
});
