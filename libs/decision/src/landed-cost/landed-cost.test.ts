import type { LandedCostEntries, TransportRates } from "@evenhand/shared/landed-cost";
import { expect, test } from "vitest";
import { landedCost, type LandedCostInput } from "./index.ts";

const entries = (more: Partial<LandedCostEntries> = {}): LandedCostEntries => ({
  lines: {},
  trip: null,
  currency: null,
  rates: [],
  limit: null,
  ...more,
});
const usd = (minor: number) => ({ minor, currency: "USD" });
const input = (more: Partial<LandedCostInput> = {}): LandedCostInput => ({
  entries: entries(),
  price: { amount: usd(4_150_000), source: { of: "asking" } },
  putRight: {
    currency: "USD",
    amount: { low: 210_000, likely: 480_000, high: 910_000 },
    source: { of: "cost-table", name: "Own", revision: 3, unsetRows: 1 },
  },
  inspection: [{ amount: usd(48_200), source: { of: "booking", visits: 1, shared: false } }],
  rates: null,
  ...more,
});
const bands: TransportRates = {
  currency: "USD",
  unit: "mi",
  per: "distance",
  bands: [
    { upTo: 500, open: 120, enclosed: 190 },
    { upTo: 1500, open: 95, enclosed: null },
  ],
  source: "three carriers' quotes of May",
};
const rates = { revision: 2, table: bands };
const trip = (distance: number, carrier: "open" | "enclosed", unit: "mi" | "km" = "mi") => ({
  distance,
  carrier,
  unit,
});
const lineOf = (kind: string, given: LandedCostInput) =>
  landedCost(given).lines.find(({ line }) => line === kind);

test("lines add up to the total as they are shown, and what is unset is named and never nothing", () => {
  const { lines, totals, without } = landedCost(input());
  // 41,500 + 2,100 to 9,100 + 482
  expect(totals).toEqual([
    {
      currency: "USD",
      amount: { low: 4_408_200, likely: 4_678_200, high: 5_108_200 },
      lines: ["price", "put-right", "inspection"],
    },
  ]);
  expect(without).toEqual(["transport", "sales-tax", "duty", "registration", "broker"]);
  expect(lines.filter((line) => "unset" in line).map((line) => "amount" in line)).not.toContain(true);
});

test("what is entered stands before the record, with its source in words; nothing due is an amount", () => {
  const lines = {
    price: { amount: usd(3_900_000), source: "agreed by telephone on May 3" },
    duty: { amount: usd(0), source: "sold inside the country" },
  };
  const cost = landedCost(input({ entries: entries({ lines }) }));
  expect(cost.lines[0]).toMatchObject({
    amount: { likely: 3_900_000 },
    source: { of: "entry", words: "agreed by telephone on May 3" },
  });
  expect(cost.without).not.toContain("duty");
});

test.each([
  ["inside the first band", trip(400, "enclosed"), { amount: { likely: 76_000 } }],
  ["at its very end", trip(500, "open"), { amount: { likely: 60_000 } }],
  ["in the second", trip(501, "open"), { amount: { likely: 47_595 } }],
  // 800 km are 497.097 miles, at 1.20 a mile.
  ["in kilometers over a table in miles", trip(800, "open", "km"), { amount: { likely: 59_652 } }],
  ["beyond the last band", trip(1501, "open"), { unset: "beyond-rates" }],
  ["where the band has no such carrier", trip(800, "enclosed"), { unset: "beyond-rates" }],
])("transport %s", (_, where, expected) => {
  expect(lineOf("transport", input({ entries: entries({ trip: where }), rates }))).toMatchObject(expected);
});

test("transport by the trip, and without a table", () => {
  const given = entries({ trip: trip(1200, "open") });
  const table = { ...bands, per: "trip" as const };
  expect(lineOf("transport", input({ entries: given, rates: { revision: 1, table } }))).toMatchObject({
    amount: { likely: 95 },
    source: { of: "rates", revision: 1, upTo: 1500, carrier: "open" },
  });
  expect(lineOf("transport", input({ entries: given }))).toEqual({ line: "transport", unset: "no-rates" });
});

const duty = { amount: { minor: 250_000, currency: "JPY" }, source: "the broker's letter" };
const rate = { from: "JPY", to: "USD", on: "2027-05-03", source: "my bank" };

test("another currency has a total of its own until a rate is entered, and then says at which", () => {
  const apart = landedCost(input({ entries: entries({ lines: { duty }, currency: "USD" }) }));
  expect(apart.totals.map(({ currency, amount }) => [currency, amount.likely])).toEqual([
    ["USD", 4_678_200],
    ["JPY", 250_000],
  ]);
  // ¥250,000 at 0.0064 are $1,600.00: yen have no minor unit, dollars have cents.
  const entered = entries({
    lines: { duty },
    currency: "USD",
    rates: [
      { ...rate, rate: 0.0064 },
      { ...rate, rate: 0.0061, on: "2027-04-01" },
      { ...rate, from: "USD", to: "JPY", rate: 150 },
    ],
  });
  const joined = landedCost(input({ entries: entered }));
  expect(joined.totals.map(({ currency, amount }) => [currency, amount.likely])).toEqual([
    ["USD", 4_838_200],
  ]);
  expect(lineOf("duty", input({ entries: entered }))).toMatchObject({
    currency: "JPY",
    converted: { amount: { likely: 160_000 }, rate: { on: "2027-05-03", rate: 0.0064 } },
  });
});

test("a rate the other way round converts nothing", () => {
  const back = [{ ...rate, from: "USD", to: "JPY", rate: 150 }];
  const given = entries({ lines: { duty }, currency: "USD", rates: back });
  expect(landedCost(input({ entries: given })).totals).toHaveLength(2);
});
