import type { TransportRates } from "@evenhand/shared/landed-cost";
import { expect, test } from "vitest";
import { ratesOf, typedRates, type TypedRates } from "./rates-form.ts";

const stored: TransportRates = {
  currency: "USD",
  unit: "mi",
  per: "distance",
  bands: [
    { upTo: 500, open: 120, enclosed: 195 },
    { upTo: 1500, open: 95, enclosed: null },
  ],
  source: "three quotes",
};

test("what is stored goes through the fields unchanged", () => {
  expect(ratesOf(typedRates(stored))).toEqual(stored);
});

test.each<[string, Partial<TypedRates>]>([
  ["nothing typed yet", typedRates(null)],
  ["a band that does not end farther", { bands: [...typedRates(stored).bands].toReversed() }],
  ["a figure that is none", { bands: [{ upTo: "500", open: "cheap", enclosed: "" }] }],
  ["no source", { source: " " }],
  ["no currency", { currency: "YEN" }],
])("%s cannot be saved", (_, more) => {
  expect(ratesOf({ ...typedRates(stored), ...more })).toBeNull();
});
