import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Agreement, EstimatedAgreement } from "../agreement/index.ts";
import { gwetAgreement, gwetAgreementOfMany } from "./index.ts";

const estimated = (agreement: Agreement): EstimatedAgreement => {
  if (agreement.kind !== "estimated") throw new Error(agreement.kind);
  return agreement;
};

const cell = fc.integer({ min: 0, max: 12 });
const tables = fc
  .tuple(cell, cell, cell, cell, cell, cell, cell, cell, cell)
  .map(([a, b, c, d, e, f, g, h, i]) => [
    [a, b, c],
    [d, e, f],
    [g, h, i],
  ])
  .filter((table) => table.flat().reduce((sum, count) => sum + count, 0) >= 3);

/** A table of two people as items, with how many of the two chose each category. */
const asItems = (table: readonly (readonly number[])[]): number[][] =>
  table.flatMap((row, i) =>
    row.flatMap((count, j) =>
      Array.from({ length: count }, () => table.map((_, k) => Number(k === i) + Number(k === j))),
    ),
  );

/** On Fisher's scale. */
const reachOf = (agreement: Agreement): number => {
  const { low, high } = estimated(agreement);
  return Math.atanh(high) - Math.atanh(low);
};

describe("gwetAgreement", () => {
  it("has the result its example states", () => {
    const { coefficient, expected } = estimated(
      gwetAgreement([
        [40, 5],
        [5, 0],
      ]),
    );
    expect(coefficient).toBeCloseTo((0.8 - 0.18) / 0.82, 12);
    expect(expected).toBeCloseTo(0.18, 12);
  });

  it("is 1 without error where all agree, also on one category alone", () => {
    expect(
      estimated(
        gwetAgreement([
          [12, 0],
          [0, 0],
        ]),
      ),
    ).toMatchObject({ coefficient: 1, standardError: 0, low: 0.025 ** (1 / 12), high: 1 });
  });

  it("says too few below ten items, or below what the caller says", () => {
    expect(
      gwetAgreement([
        [5, 0],
        [0, 4],
      ]),
    ).toEqual({ kind: "tooFew", items: 9, least: 10 });
    expect(
      gwetAgreement([
        [5, 0],
        [0, 5],
      ]).kind,
    ).toBe("estimated");
    expect(
      gwetAgreement(
        [
          [5, 0],
          [0, 5],
        ],
        { least: 11 },
      ).kind,
    ).toBe("tooFew");
  });

  it("refuses one category", () => {
    expect(() => gwetAgreement([[12]])).toThrow(new RangeError("Agreement needs at least two categories."));
  });

  it("has the interval of the confidence asked for", () => {
    const table = [
      [20, 9],
      [9, 12],
    ];
    expect(reachOf(gwetAgreement(table, { confidence: 0.9 }))).toBeCloseTo(
      (reachOf(gwetAgreement(table)) * 1.6448536269514722) / 1.959963984540054,
      12,
    );
  });
});

describe("gwetAgreementOfMany", () => {
  it("has the result its example states", () => {
    const items = [
      [3, 0],
      [2, 1],
      [0, 3],
    ];
    const result = estimated(gwetAgreementOfMany(items, { least: 3 }));
    // Observed (1 + 1/3 + 1)/3; shares 5/9 and 4/9, chance 2·(5/9)(4/9).
    expect(result.observed).toBeCloseTo(7 / 9, 12);
    expect(result.expected).toBeCloseTo(40 / 81, 12);
    expect(result.coefficient).toBeCloseTo((7 / 9 - 40 / 81) / (41 / 81), 12);
    expect(result.items).toBe(3);
  });

  it("is the two-person coefficient for two people", () => {
    const weights = fc.constantFrom("unweighted" as const, "linear" as const, "quadratic" as const);
    fc.assert(
      fc.property(tables, weights, (table, chosen) => {
        const options = { least: 2, weights: chosen };
        const two = estimated(gwetAgreement(table, options));
        const many = estimated(gwetAgreementOfMany(asItems(table), options));
        expect(many.coefficient).toBeCloseTo(two.coefficient, 12);
        // One divides by n, the other by n − 1.
        expect(many.standardError * Math.sqrt((two.items - 1) / two.items)).toBeCloseTo(two.standardError, 7);
      }),
      { numRuns: 1000 },
    );
  });

  it("does not mind the order of items", () => {
    const item = fc.tuple(cell, cell, cell).filter((counts) => counts.some((count) => count > 0));
    fc.assert(
      fc.property(fc.array(item, { minLength: 3, maxLength: 15 }), (items) => {
        fc.pre(items.filter((counts) => counts.reduce((a, b) => a + b, 0) >= 2).length >= 3);
        const result = estimated(gwetAgreementOfMany(items, { least: 3 }));
        const other = estimated(gwetAgreementOfMany(items.toReversed(), { least: 3 }));
        expect(other.coefficient).toBeCloseTo(result.coefficient, 12);
        expect(other.standardError).toBeCloseTo(result.standardError, 12);
        expect(result.coefficient).toBeLessThanOrEqual(1 + 1e-12);
      }),
      { numRuns: 1000 },
    );
  });

  it("lets an item with one answer count toward chance only", () => {
    const items = [
      [2, 0],
      [2, 0],
      [0, 2],
      [1, 1],
    ];
    const [without, withOne] = [items, [...items, [0, 1]]].map((list) =>
      estimated(gwetAgreementOfMany(list, { least: 4 })),
    );
    expect(withOne?.observed).toBe(without?.observed);
    expect(without?.expected).toBeCloseTo(2 * 0.625 * 0.375, 12);
    expect(withOne?.expected).toBeCloseTo(2 * 0.5 * 0.5, 12);
  });

  it("counts only items with two answers when it says too few", () => {
    const items = [...Array.from({ length: 9 }, () => [2, 0]), [1, 0], [0, 1]];
    expect(gwetAgreementOfMany(items)).toEqual({ kind: "tooFew", items: 9, least: 10 });
    expect(gwetAgreementOfMany([...items, [1, 1]]).kind).toBe("estimated");
    expect(gwetAgreementOfMany([[2, 0]], { least: 1 })).toEqual({ kind: "tooFew", items: 1, least: 1 });
    expect(gwetAgreementOfMany([])).toEqual({ kind: "tooFew", items: 0, least: 10 });
  });

  it("refuses rows of unequal length, items nobody answered, and one category", () => {
    const good = Array.from({ length: 10 }, () => [1, 1]);
    expect(() => gwetAgreementOfMany([...good, [1, 1, 1]])).toThrow(
      new RangeError("Rows must be of one length."),
    );
    expect(() => gwetAgreementOfMany([...good, [0, 0]])).toThrow(
      new RangeError("Every item needs an answer."),
    );
    expect(() => gwetAgreementOfMany(good.map(() => [2]))).toThrow(
      new RangeError("Agreement needs at least two categories."),
    );
  });

  it("has the interval of the confidence asked for", () => {
    const items = Array.from(
      { length: 24 },
      (_, i) =>
        [
          [3, 0],
          [0, 3],
          [3, 0],
          [1, 2],
        ][i % 4] ?? [],
    );
    expect(reachOf(gwetAgreementOfMany(items, { confidence: 0.8 }))).toBeCloseTo(
      (reachOf(gwetAgreementOfMany(items)) * 1.2815515655446004) / 1.959963984540054,
      12,
    );
  });
});
