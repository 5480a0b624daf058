import type { LandedCostEntries } from "@evenhand/shared/landed-cost";
import { describe, expect, it } from "vitest";
import { landedCostChanges } from "./index.ts";

const none: LandedCostEntries = { lines: {}, trip: null, currency: null, rates: [], limit: null };
const usd = (minor: number) => ({ minor, currency: "USD" });
const duty = { amount: usd(120_000), source: "the broker's letter" };
const trip = { distance: 740, unit: "mi", carrier: "open" } as const;
const rate = { from: "EUR", to: "USD", rate: 1.1, on: "2027-05-03", source: "the bank's page" };

describe("what was entered otherwise", () => {
  it("is all of the first entries, and nothing where nothing was entered", () => {
    const all = { lines: { duty }, trip, currency: "USD", rates: [rate], limit: usd(5_000_000) };
    expect(landedCostChanges(null, all)).toEqual([
      { of: "line", line: "duty", before: null, after: duty },
      { of: "trip", before: null, after: trip },
      { of: "limit", before: null, after: usd(5_000_000) },
      { of: "currency", before: null, after: "USD" },
      { of: "rate", from: "EUR", to: "USD", before: null, after: rate },
    ]);
    expect(landedCostChanges(null, none)).toEqual([]);
    expect(landedCostChanges(all, structuredClone(all))).toEqual([]);
  });

  it("is a line put in, changed in amount or source, and taken out", () => {
    const dearer = { ...duty, amount: usd(150_000) };
    const elsewhere = { ...duty, source: "the customs office" };
    for (const [before, after] of [
      [{}, { duty }],
      [{ duty }, { duty: dearer }],
      [{ duty }, { duty: elsewhere }],
      [{ duty }, {}],
    ] as const)
      expect(landedCostChanges({ ...none, lines: before }, { ...none, lines: after })).toEqual([
        {
          of: "line",
          line: "duty",
          before: "duty" in before ? before.duty : null,
          after: "duty" in after ? after.duty : null,
        },
      ]);
  });

  it("is nothing where only the order of keys or of rates between other currencies is another", () => {
    const yen = { ...rate, from: "JPY", rate: 0.007 };
    const turned = { source: duty.source, amount: { currency: "USD", minor: 120_000 } };
    expect(landedCostChanges({ ...none, lines: { duty } }, { ...none, lines: { duty: turned } })).toEqual([]);
    expect(landedCostChanges({ ...none, rates: [rate, yen] }, { ...none, rates: [yen, rate] })).toEqual([]);
  });

  it("sets two rates between the same currencies beside each other", () => {
    const [later, latest] = [
      { ...rate, on: "2027-06-01" },
      { ...rate, on: "2027-07-01" },
    ];
    const changes = landedCostChanges({ ...none, rates: [rate, later] }, { ...none, rates: [rate, latest] });
    expect(changes).toEqual([{ of: "rate", from: "EUR", to: "USD", before: later, after: latest }]);
    expect(landedCostChanges({ ...none, rates: [rate, later] }, { ...none, rates: [rate] })).toEqual([
      { of: "rate", from: "EUR", to: "USD", before: later, after: null },
    ]);
  });
});
